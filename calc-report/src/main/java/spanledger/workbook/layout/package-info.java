/**
 * How a workbook is laid out: sheets, blocks, tables of procedures, worked pages, styles and the
 * package written to disk.
 *
 * <p>Sheets with content are built from these blocks and never touch the spreadsheet library. Every
 * number in a cell is a given value with its source, a live formula with its result, or a solver
 * value.
 */
@NullMarked
package spanledger.workbook.layout;

import org.jspecify.annotations.NullMarked;
