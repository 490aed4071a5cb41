/** Recalculation of workbooks by an independent spreadsheet program. */
@NullMarked
package spanledger.verification.calc;

import org.jspecify.annotations.NullMarked;
