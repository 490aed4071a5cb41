/** Proof of the whole: architecture, published cases, recalculated workbooks. */
@NullMarked
package spanledger.verification;

import org.jspecify.annotations.NullMarked;
