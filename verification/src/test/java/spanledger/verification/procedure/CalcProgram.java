package spanledger.verification.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/** Works samples out with LibreOffice Calc, all of them in one workbook. */
final class CalcProgram {

  private final CalcEngine engine;
  private final Path folder;

  /**
   * @param folder where workbooks are written
   */
  CalcProgram(CalcEngine engine, Path folder) {
    this.engine = engine;
    this.folder = folder;
  }

  /** The results in order; NaN for error values. */
  List<Double> values(List<Sample> samples) throws IOException {
    Path file = folder.resolve("samples.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = workbook.createSheet();
      for (int i = 0; i < samples.size(); i++) {
        samples.get(i).write(sheet.createRow(i));
      }
      workbook.write(out);
    }
    Path stripped = folder.resolve("stripped.xlsx");
    assertThat(CachedValues.strip(file, stripped)).isEqualTo(samples.size());
    List<Double> results = new ArrayList<>();
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(Files.newInputStream(engine.recalculate(stripped)))) {
      for (int i = 0; i < samples.size(); i++) {
        Row row = workbook.getSheetAt(0).getRow(i);
        results.add(number(row.getCell(samples.get(i).inputs().size())));
      }
    }
    return results;
  }

  private static double number(Cell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> cell.getNumericCellValue();
      case ERROR -> Double.NaN;
      default -> throw new AssertionError("Neither number nor error: " + cell);
    };
  }
}
