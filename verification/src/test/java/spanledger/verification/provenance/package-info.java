/** Whether the documentation lists every figure that is recalled from memory. */
@NullMarked
package spanledger.verification.provenance;

import org.jspecify.annotations.NullMarked;
