package spanledger.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A bare program that writes as many formula cells with the spreadsheet library, and nothing else:
 * what a cold {@code check} is measured against. Run both from the command line, see
 * docs/benchmarks.md.
 */
public final class BareWorkbook {

  private static final int COLUMNS = 40;
  private static final int ROWS_PER_SHEET = 1500;

  private BareWorkbook() {}

  /**
   * Writes the workbook.
   *
   * @param args the file, the number of formula cells, the length of each formula
   */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    int cells = Integer.parseInt(args[1]);
    String formula = formula(Integer.parseInt(args[2]));
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      // Formulas are not parsed by the program measured either.
      workbook.setCellFormulaValidation(false);
      XSSFSheet sheet = workbook.createSheet();
      XSSFRow row = sheet.createRow(0);
      for (int i = 0; i < cells; i++) {
        if (i % COLUMNS == 0) {
          int number = i / COLUMNS;
          sheet = number % ROWS_PER_SHEET == 0 ? workbook.createSheet() : sheet;
          row = sheet.createRow(number % ROWS_PER_SHEET);
        }
        XSSFCell cell = row.createCell(i % COLUMNS);
        cell.setCellFormula(formula);
        cell.setCellValue(i / 7.0);
      }
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
        workbook.write(out);
      }
    }
  }

  /** A sum of references that is as long as asked for, or a little longer. */
  private static String formula(int length) {
    StringBuilder text = new StringBuilder("$AZ$1");
    while (text.length() < length) {
      text.append("+$AZ$").append(text.length());
    }
    return text.toString();
  }
}
