/** Aluminium alloys, tempers and fastener materials with their strengths and sources. */
@NullMarked
package spanledger.material;

import org.jspecify.annotations.NullMarked;
