package spanledger.workbook.layout;

import java.util.SortedMap;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The widths of the columns of a sheet, in characters of ordinary text. */
final class ColumnWidths {

  private static final int DEFAULT = 10;
  private static final int UNITS_PER_CHARACTER = 256;

  private final SortedMap<Integer, Integer> widths;

  ColumnWidths(SortedMap<Integer, Integer> widths) {
    this.widths = widths;
  }

  void applyTo(XSSFSheet sheet) {
    sheet.setDefaultColumnWidth(DEFAULT);
    widths.forEach((column, width) -> sheet.setColumnWidth(column, width * UNITS_PER_CHARACTER));
  }

  int of(int column) {
    return widths.getOrDefault(column, DEFAULT);
  }

  /** Of the columns from 0 to {@code lastColumn}, both included. */
  int total(int lastColumn) {
    int total = 0;
    for (int column = 0; column <= lastColumn; column++) {
      total += of(column);
    }
    return total;
  }

  /** The last column needed to make up a width; the first one at least. */
  int lastColumnWithin(int characters) {
    int last = 0;
    while (total(last) < characters) {
      last++;
    }
    // A little short reads better than much too wide.
    return last > 0 && total(last) > characters * 1.2 ? last - 1 : last;
  }
}
