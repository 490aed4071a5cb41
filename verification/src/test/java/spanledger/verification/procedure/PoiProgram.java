package spanledger.verification.procedure;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Works samples out with the formula evaluator of Apache POI. */
final class PoiProgram implements AutoCloseable {

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Row row = workbook.createSheet().createRow(0);
  private final FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();

  /** The result; NaN for an error value. */
  double value(Sample sample) {
    Cell cell = sample.write(row);
    evaluator.clearAllCachedResultValues();
    CellValue value = evaluator.evaluate(cell);
    return switch (value.getCellType()) {
      case NUMERIC -> value.getNumberValue();
      case ERROR -> Double.NaN;
      default -> throw new AssertionError("Neither number nor error: " + value.formatAsString());
    };
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
