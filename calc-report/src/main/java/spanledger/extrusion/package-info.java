/** What is reported on one extrusion. */
@NullMarked
package spanledger.extrusion;

import org.jspecify.annotations.NullMarked;
