package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.verification.behaviour.StateJob;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/**
 * A beam under axial force whose foot lifts, and a braced mast on it, askew so that no force is
 * zero: what is said of members and reactions stands in the workbook as formulas from the movements
 * of the state.
 */
class StateWorkbookTest {

  private static final String SUMMARY = "Summary";
  private static final int USED = 2;
  private static final int VERDICT = 3;

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    Path job = folder.resolve("job.json");
    Files.writeString(
        job,
        StateJob.byCode(
            StateJob.text(
                "0.005",
                "\"A\": [\"0 m\", \"0 m\", \"0 m\"], \"B\": [\"2 m\", \"0.4 m\", \"0.2 m\"],"
                    + " \"C\": [\"3 m\", \"0.6 m\", \"0.3 m\"], \"T\": [\"0.25 m\", \"0.4 m\", \"1 m\"],"
                    + " \"M\": [\"1 m\", \"0.2 m\", \"0.1 m\"]",
                StateJob.member("beam", "other", "\"A\", \"M\", \"B\", \"C\"")
                    + ", "
                    + StateJob.member("mast", "leg", "\"A\", \"T\"")
                    + ", "
                    + StateJob.member("brace", "brace", "\"T\", \"B\""),
                "\"a\": {\"node\": \"A\", \"shiftX\": \"fixed\", \"shiftY\": \"fixed\","
                    + " \"shiftZ\": \"fixed\", \"turnX\": \"fixed\", \"turnZ\": \"fixed\"},"
                    + " \"b\": {\"node\": \"B\", \"shiftY\": \"fixed\", \"shiftZ\": \"fixed\","
                    + " \"turnX\": \"fixed\"},"
                    + " \"c\": {\"node\": \"C\", \"shiftZ\": \"fixed\", \"lifts\": true}",
                StateJob.force("T", 300, -20_000)
                    + ", "
                    + StateJob.force("M", 0, -2_000)
                    + ", "
                    + StateJob.force("B", -10_000, 0)
                    + ", {\"member\": \"beam\", \"at\": \"0.7 m\", \"direction\": \"-Z\","
                    + " \"force\": \"300 N\"}, {\"member\": \"beam\", \"from\": \"0.2 m\","
                    + " \"to\": \"0.9 m\", \"direction\": \"-Z\","
                    + " \"intensity\": [\"0.1 kN/m\", \"0.3 kN/m\"]}",
                "always")));
    checked = CheckedJob.of(job, folder);
    book = checked.book();
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    assertThat(checked.recalculation().disagreements()).isEmpty();
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
    assertThat(book.cells().map(BookCell::text)).doesNotContain("NOT BALANCED", "DIFFERS");
    assertThat(book.sheet("State holds").stream().map(BookCell::text)).contains("open", "agrees");
  }

  /** Tolerance: the file has the demand and the capacity, the sheet the ratio by formula. */
  @Test
  void theSheetUsesWhatTheResultsFileSays() throws IOException {
    List<JsonNode> verdicts =
        new ObjectMapper()
            .readTree(folder.resolve("results.json").toFile())
            .required("verdicts")
            .valueStream()
            .toList();
    int compared = 0;
    for (BookCell check : book.sheet(SUMMARY)) {
      String outcome = book.at(SUMMARY, check.row(), VERDICT).text();
      if (check.column() == 0 && List.of("pass", "FAIL").contains(outcome)) {
        double used = book.at(SUMMARY, check.row(), USED).number();
        String subject = book.at(SUMMARY, check.row(), 1).text();
        JsonNode same =
            verdicts.stream()
                .filter(v -> v.required("check").asText().equals(check.text()))
                .filter(v -> v.required("subject").asText().equals(subject))
                .findFirst()
                .orElseThrow();
        assertThat(same.required("utilisation").asDouble())
            .as(check.text())
            .isCloseTo(used, within(1e-7 * used + 1e-9));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(15);
    assertThat(book.names()).contains("State cuts", "State cut loads");
  }

  /**
   * A ten-thousandth more, and a node of the shape moved by a thousandth: both lie far within what
   * a frequency is asked for, and both leave nodes out of balance.
   */
  @Test
  void aChangedEigenvalueOrShapeLeavesTheVibrationOutOfBalance() throws IOException {
    CalcEngine engine = CalcEngine.required();
    assertThat(words(book, "Vibration balance")).contains("balanced");
    BookCell eigenvalue = firstConstant("Vibration", 2);
    BookCell shift = firstConstant("Vibration movements", 4);
    Path stripped = folder.resolve("stripped-vibration.xlsx");
    CachedValues.strip(checked.folder().resolve("workbook.xlsx"), stripped);

    Book slower =
        tampered(engine, stripped, "Vibration", eigenvalue, eigenvalue.number() * (1 + 1e-4));
    Book bent = tampered(engine, stripped, "Vibration movements", shift, shift.number() + 1e-3);

    for (Book other : List.of(slower, bent)) {
      assertThat(words(other, "Vibration balance")).contains("NOT BALANCED");
      assertThat(words(other, SUMMARY)).contains("NOT BALANCED");
    }
  }

  private static BookCell firstConstant(String sheet, int column) {
    return book.sheet(sheet).stream()
        .filter(c -> c.column() == column && c.isConstant() && c.number() != 0)
        .findFirst()
        .orElseThrow();
  }

  private static Book tampered(
      CalcEngine engine, Path stripped, String sheet, BookCell cell, double number)
      throws IOException {
    Path changed = folder.resolve("tampered.xlsx");
    Tampering.change(stripped, changed, sheet, Map.of(cell.reference(), number));
    return Book.read(engine.recalculate(changed));
  }

  private static List<String> words(Book of, String sheet) {
    return of.sheet(sheet).stream().map(BookCell::text).toList();
  }
}
