/** The workbook of a whole job, audited and recalculated cell by cell. */
@NullMarked
package spanledger.verification.workbook;

import org.jspecify.annotations.NullMarked;
