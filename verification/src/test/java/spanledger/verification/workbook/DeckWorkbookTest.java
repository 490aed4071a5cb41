package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/** Decks in the results and the workbook of a small job: one grating by a table, one of planks. */
class DeckWorkbookTest {

  private static final String SHEET = "Deck and treads";

  @TempDir private static Path folder;

  private static String said = "";

  @BeforeAll
  static void check() throws IOException {
    for (String name : List.of("decked-strips.json", "grating.csv")) {
      try (InputStream stream = DeckWorkbookTest.class.getResourceAsStream(name)) {
        if (stream == null) {
          throw new IOException("There is no test file " + name + ".");
        }
        Files.write(folder.resolve(name), stream.readAllBytes());
      }
    }
    StringWriter out = new StringWriter();
    Main.run(
        new PrintWriter(out),
        new PrintWriter(out),
        "check",
        folder.resolve("decked-strips.json").toString());
    said = out.toString();
  }

  private static Path workbook() {
    return folder.resolve("workbook.xlsx");
  }

  private static JsonNode verdict(String check, String subject) throws IOException {
    for (JsonNode one :
        new ObjectMapper().readTree(folder.resolve("results.json").toFile()).path("verdicts")) {
      if (one.path("check").asText().equals(check)
          && one.path("subject").asText().equals(subject)) {
        return one;
      }
    }
    throw new AssertionError("There is no verdict " + check + " on " + subject + ". " + said);
  }

  /**
   * By hand: 700 mm is half way from 600 to 800 mm; q L² are 5.4 and 5.76 kN, 5.58/0.49 = 11.388
   * kN/m² against the chord of 12; P L are 2.52 and 2.64 kNm, 2.58/0.7 = 3.686 kN. Divided by 1.3;
   * EN 1990.
   */
  @Test
  void resultsAreThoseByHand() throws IOException {
    double uniform = (5.4 + 5.76) / 2 / 0.49 / 1.3;
    double point = (2.52 + 2.64) / 2 / 0.7 / 1.3;

    JsonNode area = verdict("load on all of it", "grated");
    JsonNode place = verdict("load at one place", "grated");

    assertThat(area.path("group").asText()).isEqualTo("Deck and treads");
    assertThat(area.path("status").asText()).isEqualTo("passed");
    assertThat(area.path("capacity").asDouble()).isCloseTo(uniform / 1000, within(1e-12));
    assertThat(area.path("utilisation").asDouble())
        .isCloseTo((1.35 * 0.2 + 1.5 * 2) / uniform, within(1e-9));
    assertThat(place.path("utilisation").asDouble())
        .isCloseTo(1.5 * 1.5 / point + 1.35 * 0.2 / uniform, within(1e-9));
    assertThat(
            verdict("walls in compression under load at one place", "planked")
                .path("status")
                .asText())
        .isIn("passed", "notChecked");
    assertThat(said).doesNotContain("no panel is named");
  }

  @Test
  void anotherProgramWorksOutTheSame() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path stripped = folder.resolve("stripped.xlsx");
    CachedValues.strip(workbook(), stripped);

    OutlineRecalculation recalculation =
        new OutlineRecalculation(
            Book.read(workbook()),
            Book.read(engine.recalculate(stripped)),
            sheet -> sheet.equals(SHEET) || sheet.equals("Loads"));

    assertThat(recalculation.compared()).isGreaterThan(400);
    assertThat(recalculation.disagreements()).isEmpty();
  }

  @Test
  void everyNumberSaysWhereItComesFrom() throws IOException {
    assertThat(new Origins(Book.read(workbook())).unexplained()).isEmpty();
  }

  /** A reviewer changes the span: rows are looked up anew, and beyond the table nothing is read. */
  @Test
  void theTableIsReadLive() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook()))) {
      Sheet sheet = book.getSheet(SHEET);
      Cell span = spanOf(sheet, "grated");
      assertThat(span.getNumericCellValue()).isEqualTo(700);

      span.setCellValue(1000);
      assertThat(utilisations(book, sheet)).contains(3.27 / (6 / 1.3));
      span.setCellValue(400);
      assertThat(utilisations(book, sheet)).contains(3.27 / (30 / 1.3));
      span.setCellValue(1000.5);
      assertThat(utilisations(book, sheet)).contains(Double.NaN);
      span.setCellValue(399);
      assertThat(utilisations(book, sheet)).contains(Double.NaN);
    }
  }

  private static Cell spanOf(Sheet sheet, String subject) {
    for (Row row : sheet) {
      Cell first = row.getCell(0);
      Cell third = row.getCell(2);
      if (first != null
          && third != null
          && first.getCellType() == CellType.STRING
          && first.getStringCellValue().equals(subject)
          && third.getCellType() == CellType.NUMERIC) {
        return third;
      }
    }
    throw new AssertionError("There is no span of " + subject + ".");
  }

  /** All results of formulas, to nine decimals; NaN for those without a value. */
  private static Set<Double> utilisations(XSSFWorkbook book, Sheet sheet) {
    FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
    TreeSet<Double> values =
        new TreeSet<>((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b));
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          var value = evaluator.evaluate(cell);
          values.add(
              value.getCellType() == CellType.NUMERIC
                  ? value.getNumberValue()
                  : value.getCellType() == CellType.ERROR ? Double.NaN : 0);
        }
      }
    }
    return values;
  }
}
