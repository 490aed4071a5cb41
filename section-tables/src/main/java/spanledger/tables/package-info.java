/** Published sections, alloys, bolts and rule sets as data files, and their readers. */
@NullMarked
package spanledger.tables;

import org.jspecify.annotations.NullMarked;
