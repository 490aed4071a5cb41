/** Structures described in the words of the trade and the frames that come of them. */
@NullMarked
package spanledger.verification.assembly;

import org.jspecify.annotations.NullMarked;
