/** The workbook that proves itself: sheets, live formulas and cached results. */
@NullMarked
package spanledger.workbook;

import org.jspecify.annotations.NullMarked;
