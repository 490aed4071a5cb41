package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

/** The page that shows one row of a table in full. */
class WorkedPageTest {

  private static final int CASES = 12;

  private SampleWorkbook sample;

  private ReadBack written() {
    return ReadBack.of(b -> sample = new SampleWorkbook(b, CASES));
  }

  @Test
  void everySymbolFollowsTheChosenRow() {
    try (ReadBack book = written()) {
      XSSFSheet page = book.workbook().getSheet("Member worked");
      for (int row : new int[] {0, 3, CASES - 1}) {
        choose(book, row);
        for (String symbol : new String[] {"N", "V_z", "A", "W_el_y", "A_τ_z", "γ_M1", "σ", "u"}) {
          double expected = sample.members.value(row, symbol);
          assertThat(lineOf(page, symbol).getCell(WorkedLines.VALUE).getNumericCellValue())
              .as(symbol + " in row " + row)
              .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
        }
        assertThat(texts(page, WorkedLines.FORMULA)).contains("Beam " + (row / 4 + 1));
        assertThat(texts(page, WorkedLines.CHECK))
            .contains("agrees", "in range")
            .doesNotContain("DIFFERS", "OUT OF RANGE");
      }
    }
  }

  @Test
  void theFormulaWithNumbersFollowsToo() {
    try (ReadBack book = written()) {
      choose(book, 2);
      XSSFSheet page = book.workbook().getSheet("Member worked");
      Row below = page.getRow(lineOf(page, "u").getRowNum() + 1);
      assertThat(below.getCell(WorkedLines.FORMULA).getStringCellValue())
          .isEqualTo("= " + RoundedText.of(sample.members.value(2, "σ_eq")) + " · 1.1/250");
    }
  }

  @Test
  void aFormulaChangedInTheTableIsFoundOut() {
    try (ReadBack book = written()) {
      CellAddress tampered = sample.members.number(5, "τ").at();
      book.cell(tampered).setCellFormula("0.99*" + book.cell(tampered).getCellFormula());
      choose(book, 4);
      XSSFSheet page = book.workbook().getSheet("Member worked");
      assertThat(texts(page, WorkedLines.CHECK)).doesNotContain("DIFFERS");
      choose(book, 5);
      assertThat(lineOf(page, "τ").getCell(WorkedLines.CHECK).getStringCellValue())
          .isEqualTo("DIFFERS");
      assertThat(lineOf(page, "σ").getCell(WorkedLines.CHECK).getStringCellValue())
          .isEqualTo("agrees");
      // The judgement over all steps, which stands above them.
      Row above = page.getRow(sample.driver.row() + 1);
      assertThat(above.getCell(WorkedLines.CHECK).getStringCellValue()).isEqualTo("DIFFERS");
    }
  }

  @Test
  void anInputOutOfItsDomainIsFoundOut() {
    try (ReadBack book = written()) {
      CellAddress factor = sample.factors.number("partial factor").at();
      book.cell(factor).setCellValue(-1.1);
      XSSFFormulaEvaluator.evaluateAllFormulaCells(book.workbook());
      XSSFSheet page = book.workbook().getSheet("Member worked");
      assertThat(lineOf(page, "γ_M1").getCell(WorkedLines.CHECK).getStringCellValue())
          .isEqualTo("OUT OF RANGE");
    }
  }

  @Test
  void onlyRowsOfTheTableCanBeChosen() {
    try (ReadBack book = written()) {
      List<? extends DataValidation> validations =
          book.workbook().getSheet("Member worked").getDataValidations();
      assertThat(validations).hasSize(1);
      assertThat(validations.get(0).getValidationConstraint().getFormula1()).isEqualTo("1");
      assertThat(validations.get(0).getValidationConstraint().getFormula2())
          .isEqualTo(Integer.toString(CASES));
    }
  }

  @Test
  void aRowThatIsNotThereCannotBeShownAtFirst() {
    written().close();
    assertThatThrownBy(() -> new WorkedPage(sample.members, CASES))
        .hasMessageContaining("Row 12 cannot be shown, the table has 12 rows");
  }

  private void choose(ReadBack book, int row) {
    book.cell(sample.driver).setCellValue(row + 1);
    XSSFFormulaEvaluator.evaluateAllFormulaCells(book.workbook());
  }

  private static Row lineOf(XSSFSheet page, String symbol) {
    for (Row row : page) {
      Cell cell = row.getCell(WorkedLines.SYMBOL);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(symbol)) {
        return row;
      }
    }
    throw new AssertionError("no line for " + symbol);
  }

  private static List<String> texts(XSSFSheet page, int column) {
    List<String> texts = new ArrayList<>();
    for (Row row : page) {
      Cell cell = row.getCell(column);
      if (cell != null
          && (cell.getCellType() == CellType.STRING
              || (cell.getCellType() == CellType.FORMULA
                  && cell.getCachedFormulaResultType() == CellType.STRING))) {
        texts.add(cell.getStringCellValue());
      }
    }
    return texts;
  }
}
