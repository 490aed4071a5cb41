package spanledger.workbook.layout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A written workbook as the spreadsheet library reads it. */
final class ReadBack implements AutoCloseable {

  private final XSSFWorkbook workbook;

  private ReadBack(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  static ReadBack of(byte[] file) {
    try {
      return new ReadBack(new XSSFWorkbook(new ByteArrayInputStream(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the content writes, with every formula parsed. */
  static ReadBack of(Consumer<LedgerWorkbook> content) {
    try (LedgerWorkbook book = LedgerWorkbook.parsingFormulas(SampleWorkbook.IDENTITY)) {
      content.accept(book);
      return of(book.toBytes());
    }
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  XSSFCell cell(CellAddress at) {
    return workbook.getSheet(at.sheet()).getRow(at.row()).getCell(at.column());
  }

  List<XSSFCell> cells() {
    List<XSSFCell> cells = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          cells.add((XSSFCell) cell);
        }
      }
    }
    return cells;
  }

  List<XSSFCell> formulas() {
    return cells().stream().filter(cell -> cell.getCellType() == CellType.FORMULA).toList();
  }

  static String name(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
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
