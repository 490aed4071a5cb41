/** Cross-section outlines and the properties computed from them. */
@NullMarked
package spanledger.section;

import org.jspecify.annotations.NullMarked;
