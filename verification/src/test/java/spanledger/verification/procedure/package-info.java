/** Procedures give the same in Java as in spreadsheet programs. */
@NullMarked
package spanledger.verification.procedure;

import org.jspecify.annotations.NullMarked;
