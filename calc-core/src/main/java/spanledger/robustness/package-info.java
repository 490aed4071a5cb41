/** What becomes of a frame when one of its braces is missing. */
@NullMarked
package spanledger.robustness;

import org.jspecify.annotations.NullMarked;
