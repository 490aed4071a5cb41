/** Named features of an extrusion that joints use: slots, their lips, keyed faces and webs. */
@NullMarked
package spanledger.section.feature;

import org.jspecify.annotations.NullMarked;
