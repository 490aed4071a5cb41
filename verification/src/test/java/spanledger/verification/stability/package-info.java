/** Buckling of frames and the lengths that follow from it. */
@NullMarked
package spanledger.verification.stability;

import org.jspecify.annotations.NullMarked;
