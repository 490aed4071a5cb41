package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.SpreadsheetFormula;
import spanledger.procedure.Step;

/** What a certifier would do cell by cell, on a workbook with one of each block. */
class WorkbookAuditTest {

  private static SampleWorkbook sample;
  private static ReadBack book;

  @BeforeAll
  static void write() {
    book = ReadBack.of(b -> sample = new SampleWorkbook(b, 24));
  }

  @AfterAll
  static void close() {
    book.close();
  }

  /** Tolerance: two engines may round differently in the last digits. */
  @Test
  void everyCachedResultIsWhatAnIndependentEngineCalculates() {
    FormulaEvaluator engine = book.workbook().getCreationHelper().createFormulaEvaluator();
    List<XSSFCell> formulas = book.formulas();
    assertThat(formulas).hasSizeGreaterThan(300);
    for (XSSFCell cell : formulas) {
      CellValue value = engine.evaluate(cell);
      assertThat(value.getCellType())
          .as(ReadBack.name(cell))
          .isEqualTo(cell.getCachedFormulaResultType());
      if (value.getCellType() == CellType.NUMERIC) {
        double cached = cell.getNumericCellValue();
        assertThat(value.getNumberValue())
            .as(ReadBack.name(cell))
            .isCloseTo(cached, within(1e-12 * Math.abs(cached) + 1e-12));
      } else {
        assertThat(value.getStringValue())
            .as(ReadBack.name(cell))
            .isEqualTo(cell.getStringCellValue());
      }
    }
  }

  @Test
  void noCellShowsAnError() {
    for (XSSFCell cell : book.cells()) {
      assertThat(cell.getCellType()).as(ReadBack.name(cell)).isNotEqualTo(CellType.ERROR);
      if (cell.getCellType() == CellType.FORMULA) {
        assertThat(cell.getCachedFormulaResultType())
            .as(ReadBack.name(cell))
            .isNotEqualTo(CellType.ERROR);
      }
    }
  }

  @Test
  void formulasUseAllowedFunctionsOnly() {
    TreeSet<String> used = new TreeSet<>();
    book.formulas().forEach(cell -> used.addAll(FormulaRules.functions(cell.getCellFormula())));
    assertThat(used).contains("INDEX", "IF", "SQRT").isSubsetOf(FormulaRules.ALLOWED_FUNCTIONS);
  }

  @Test
  void noFormulaReachesOutsideTheFile() throws InvalidFormatException {
    assertThat(book.workbook().getPackage().getParts())
        .noneMatch(part -> part.getPartName().getName().contains("externalLink"));
    assertThat(book.workbook().isMacroEnabled()).isFalse();
    assertThat(book.formulas())
        .noneMatch(cell -> cell.getCellFormula().replaceAll("\"[^\"]*\"", "").contains("["));
  }

  @Test
  void everyStepIsTheProceduresFormulaOnTheCellsOfItsRow() {
    CompiledProcedure procedure = sample.members.procedure();
    for (int row = 0; row < sample.members.rows(); row++) {
      int r = row;
      for (Step step : procedure.procedure().steps()) {
        CellAddress at = sample.members.number(row, step.symbol().symbol()).at();
        String expected =
            SpreadsheetFormula.of(
                step.expression(),
                reference -> {
                  CellAddress used = sample.members.number(r, reference.symbol()).at();
                  return used.sheet().equals(at.sheet()) ? used.relative() : used.absolute();
                });
        assertThat(book.cell(at).getCellFormula()).as(at.toString()).isEqualTo(expected);
      }
    }
  }

  @Test
  void everyNumberIsAFormulaOrMarkedAsGivenSolvedOrChosen() {
    for (XSSFCell cell : book.cells()) {
      boolean counter = cell.getColumnIndex() == 0;
      if (cell.getCellType() == CellType.NUMERIC && !counter) {
        CellStyle style = cell.getCellStyle();
        assertThat(style.getBorderLeft())
            .as(ReadBack.name(cell))
            .isIn(BorderStyle.THIN, BorderStyle.DOTTED, BorderStyle.THICK);
      }
    }
  }

  @Test
  void wordsThatLookLikeFormulasStayWords() {
    List<XSSFCell> risky =
        book.cells().stream()
            .filter(cell -> cell.getCellType() == CellType.STRING)
            .filter(cell -> cell.getStringCellValue().matches("(?s)[=+@-].*"))
            .toList();
    assertThat(risky)
        .extracting(XSSFCell::getStringCellValue)
        .contains(
            "=1+1 is text here and stays text", "@SUM(A1) is text, and so is -1; _x0041_ too");
    assertThat(risky).allMatch(cell -> cell.getCellStyle().getQuotePrefixed());
  }

  @Test
  void definedNamesBearThePrefixInOrderAndLeadSomewhere() {
    List<String> names =
        book.workbook().getAllNames().stream()
            .map(Name::getNameName)
            .filter(name -> !name.startsWith("_xlnm."))
            .toList();
    assertThat(names)
        .containsExactly("sl_f_o", "sl_gamma_M1", "sl_sections_A")
        .isSortedAccordingTo(
            (a, b) -> a.toLowerCase(Locale.ROOT).compareTo(b.toLowerCase(Locale.ROOT)));
    assertThat(book.workbook().getName("sl_f_o").getRefersToFormula())
        .isEqualTo(sample.factors.number("proof strength").at().absolute());
  }

  @Test
  void judgementsFollowTheirNumbers() {
    for (int row = 0; row < sample.members.rows(); row++) {
      boolean passes = sample.members.value(row, "u") <= 1;
      assertThat(book.cell(sample.members.verdict(row)).getStringCellValue())
          .isEqualTo(passes ? "pass" : "FAIL");
    }
    assertThat(
            book.workbook()
                .getSheet("Member stresses")
                .getSheetConditionalFormatting()
                .getNumConditionalFormattings())
        .isPositive();
  }

  @Test
  void picturesSayWhatTheyShow() {
    XSSFPicture picture =
        (XSSFPicture) book.workbook().getSheet("Basis").getDrawingPatriarch().getShapes().get(0);
    assertThat(picture.getCTPicture().getNvPicPr().getCNvPr().getDescr())
        .isEqualTo("Elevation of the platform with three bays and a stair");
    // 900 x 220 pixels shown 90 characters wide: 630 x 154, that is 9 rows of 16 and 10 pixels
    // high.
    assertThat(picture.getClientAnchor().getRow2() - picture.getClientAnchor().getRow1())
        .isEqualTo(9);
  }

  @Test
  void everySheetPrintsWithTitlesPageNumbersAndJob() {
    for (Sheet sheet : book.workbook()) {
      // Either fitted to the page or at a scale of its own, so that no column is lost.
      assertThat(sheet.getFitToPage() || sheet.getPrintSetup().getScale() <= 100).isTrue();
      assertThat(sheet.getHeader().getLeft()).contains("12 bays && stair, citrus packing house");
      assertThat(sheet.getHeader().getRight()).contains(sheet.getSheetName());
      assertThat(sheet.getFooter().getRight()).contains("&P of &N", "SHA-256 0123456789abcdef");
      assertThat(book.workbook().getPrintArea(book.workbook().getSheetIndex(sheet))).isNotNull();
    }
    Sheet members = book.workbook().getSheet("Member stresses");
    int symbols = sample.members.number(0, "σ").at().row() - 5;
    assertThat(members.getRepeatingRows().formatAsString())
        .isEqualTo((symbols + 1) + ":" + (symbols + 2));
    assertThat(members.getPaneInformation().getHorizontalSplitPosition())
        .isEqualTo((short) (symbols + 2));
  }

  @Test
  void theProgramThatOpensTheFileCalculatesItself() {
    assertThat(book.workbook().getForceFormulaRecalculation()).isTrue();
  }
}
