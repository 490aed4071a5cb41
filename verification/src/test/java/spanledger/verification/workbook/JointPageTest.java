package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked page of a kind of joint follows the case and the part that its reader chooses. */
class JointPageTest {

  private static final String PAGE = "Joint 1 beam-on-bracket";
  private static final String USES = "beam-on-bracket: the greatest use of each check in each case";

  @TempDir static Path folder;
  private static XSSFWorkbook workbook;
  private static XSSFSheet page;

  @BeforeAll
  static void check() throws IOException {
    Path job =
        Files.writeString(
            folder.resolve("hoist.json"),
            Files.readString(CheckedJob.example("packing-house-hoist-frame.json"))
                .replace(
                    "\"formatVersion\": 1,",
                    "\"formatVersion\": 1, \"analysis\": {\"bounds\": \"upper\"},"));
    CheckedJob.of(job, folder, "--no-pictures");
    workbook = new XSSFWorkbook(Files.newInputStream(folder.resolve("workbook.xlsx")));
    page = workbook.getSheet(PAGE);
  }

  @AfterAll
  static void close() throws IOException {
    workbook.close();
  }

  @Test
  void everythingFollowsTheCaseThatIsChosen() {
    for (String offered : offered(choices().get(0))) {
      choose(choices().get(0), offered);
      showsTheUsesOfItsColumn(offered);
      showsCalculationsOfItsOwn(offered);
    }
  }

  private static void showsTheUsesOfItsColumn(String offered) {
    Map<String, Double> expected = uses("case " + offered.substring(0, offered.indexOf(':')));
    assertThat(expected).as(offered).isNotEmpty();
    Map<String, Double> shown = new TreeMap<>();
    for (Row row : page) {
      String check = words(row, 1) + "|" + words(row, 2);
      if (expected.containsKey(check)) {
        shown.put(check, row.getCell(3).getNumericCellValue());
      }
    }
    assertThat(shown).as(offered).hasSameSizeAs(expected);
    // The page fetches what the table has: nothing is worked out between them.
    shown.forEach(
        (check, use) -> assertThat(use).as(check).isCloseTo(expected.get(check), within(1e-12)));
  }

  private static void showsCalculationsOfItsOwn(String offered) {
    List<String> said = rows(page).map(row -> words(row, 5)).toList();
    assertThat(said).as(offered).contains("agrees").doesNotContain("DIFFERS");
    // In use, only slip is checked: the other calculations say that the case has none.
    boolean inUse = offered.contains("SLS");
    assertThat(said.contains("OUT OF RANGE")).as(offered).isEqualTo(inUse);
    String name = "beam-on-bracket, case " + offered.substring(0, offered.indexOf(':')) + ": ";
    assertThat(rows(page).filter(row -> words(row, 1).equals("of")).map(row -> words(row, 2)))
        .as(offered)
        .allMatch(label -> inUse || label.startsWith(name) || !label.contains(", case "));
  }

  @Test
  void aCalculationIsShownOfThePartThatIsChosen() {
    Cell part =
        choices().stream()
            .filter(c -> offered(c).contains("beam, bolt 1"))
            .findFirst()
            .orElseThrow();
    for (String wanted : List.of("beam, bolt 1", "beam, bolt 2")) {
      choose(part, wanted);
      String label = "";
      for (int row = part.getRowIndex(); !words(page.getRow(row), 1).equals("of"); row++) {
        label = words(page.getRow(row + 1), 2);
      }
      assertThat(label).endsWith(": " + wanted);
    }
  }

  /** Cells in which something is chosen from a list, from the top. */
  private static List<Cell> choices() {
    List<Cell> cells = new ArrayList<>();
    for (DataValidation one : page.getDataValidations()) {
      CellRangeAddress at = one.getRegions().getCellRangeAddresses()[0];
      cells.add(page.getRow(at.getFirstRow()).getCell(at.getFirstColumn()));
    }
    assertThat(cells).isNotEmpty();
    return cells;
  }

  private static List<String> offered(Cell choice) {
    for (DataValidation one : page.getDataValidations()) {
      CellRangeAddress at = one.getRegions().getCellRangeAddresses()[0];
      if (at.getFirstRow() == choice.getRowIndex()) {
        AreaReference area =
            new AreaReference(
                one.getValidationConstraint().getFormula1(), workbook.getSpreadsheetVersion());
        List<String> words = new ArrayList<>();
        for (CellReference cell : area.getAllReferencedCells()) {
          words.add(
              workbook
                  .getSheet(cell.getSheetName())
                  .getRow(cell.getRow())
                  .getCell(cell.getCol())
                  .getStringCellValue());
        }
        return words;
      }
    }
    return List.of();
  }

  private static void choose(Cell choice, String words) {
    choice.setCellValue(words);
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
    rows(page)
        .forEach(
            row ->
                row.forEach(
                    cell -> {
                      if (cell.getCellType() == CellType.FORMULA) {
                        evaluator.evaluateFormulaCell(cell);
                      }
                    }));
  }

  /**
   * Uses of all checks of the kind in a case, from the table over all cases; 0 where it has none.
   */
  private static Map<String, Double> uses(String heading) {
    XSSFSheet checks = workbook.getSheet("Joint checks");
    Map<String, Double> uses = new TreeMap<>();
    int row =
        rows(checks).filter(r -> words(r, 0).equals(USES)).findFirst().orElseThrow().getRowNum()
            + 1;
    int column = 3;
    while (!words(checks.getRow(row), column).equals(heading)) {
      column++;
    }
    for (row++; checks.getRow(row) != null; row++) {
      Row line = checks.getRow(row);
      if (line.getCell(0) != null && line.getCell(0).getCellType() == CellType.NUMERIC) {
        Cell use = line.getCell(column);
        uses.put(
            words(line, 1) + "|" + words(line, 2),
            use.getCellType() == CellType.BLANK ? 0 : use.getNumericCellValue());
      }
    }
    return uses;
  }

  private static Stream<Row> rows(XSSFSheet sheet) {
    return StreamSupport.stream(sheet.spliterator(), false);
  }

  private static String words(Row row, int column) {
    Cell cell = row == null ? null : row.getCell(column);
    if (cell == null) {
      return "";
    }
    boolean text =
        cell.getCellType() == CellType.STRING
            || (cell.getCellType() == CellType.FORMULA
                && cell.getCachedFormulaResultType() == CellType.STRING);
    return text ? cell.getStringCellValue() : "";
  }
}
