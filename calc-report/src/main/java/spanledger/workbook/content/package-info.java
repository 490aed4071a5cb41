/** The sheets of a job's workbook, in the order in which one audits. */
@NullMarked
package spanledger.workbook.content;

import org.jspecify.annotations.NullMarked;
