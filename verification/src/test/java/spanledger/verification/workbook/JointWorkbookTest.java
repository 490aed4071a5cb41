package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of a job whose joints and feet are described by their parts. */
class JointWorkbookTest {

  /** A partial factor of joints that EN 1999-1-1, 8.1.1 leaves to nations. */
  private static final String ANNEX =
      "\"figures\": {\"gamma.M2\": {\"value\": \"1.4\", \"source\": \"invented annex\"}},";

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    // One bound of the stiffness of the joints is enough: the other has a workbook of the same
    // form.
    String both = Files.readString(CheckedJob.example("packing-house-hoist-frame.json"));
    Path upper =
        Files.writeString(
            folder.resolve("hoist.json"),
            betweenBrackets(both)
                .replace(
                    "\"formatVersion\": 1,",
                    "\"formatVersion\": 1, \"analysis\": {\"bounds\": \"upper\"},")
                .replace(
                    "\"joint\": \"bolted-foot\"",
                    "\"joint\": \"bolted-foot\", \"turn\": \"20 deg\","
                        + " \"ground\": {\"slope\": \"4 deg\", \"falls\": [1, 2, 0]}")
                .replace("\"surroundings\":", ANNEX + " \"surroundings\":"));
    checked = CheckedJob.of(upper, folder);
    assertThat(checked.exit()).as(checked.said()).isEqualTo(1);
    book = checked.book();
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    assertThat(checked.recalculation().disagreements()).isEmpty();
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
  }

  @Test
  void aFigureThatTheJobReplacesSaysInPlaceOfWhat() throws IOException {
    String origin = "en-1999-1-1, gamma.M2, in place of 1.25 of the code";
    BookCell cell = only(book.sheet("Joint inputs"), c -> c.text().equals(origin));
    assertThat(book.at("Joint inputs", cell.row(), cell.column() + 1).number()).isEqualTo(1.4);
    assertThat(book.at("Joint inputs", cell.row(), cell.column() + 3).text())
        .isEqualTo("invented annex");
    JsonNode replaced =
        new ObjectMapper()
            .readTree(folder.resolve("results.json").toFile())
            .required("joints")
            .required("replacedFigures");
    assertThat(replaced).hasSize(1);
    assertThat(replaced.get(0).required("figure").asText()).isEqualTo("gamma.M2");
    assertThat(replaced.get(0).required("inPlaceOf").asText()).isEqualTo("1.25");
    // Figures of the member checks are their own: Figures there still say 1.25.
    assertThat(book.sheet("Member inputs")).noneMatch(c -> c.text().equals(origin));
  }

  private static BookCell only(List<BookCell> cells, Predicate<BookCell> wanted) {
    List<BookCell> found = cells.stream().filter(wanted).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  /** The beam between two brackets at each end, one below and one above, in place of one. */
  private static String betweenBrackets(String job) {
    String pair =
        """
        "pair": {"kind": "brackets", "source": "invented drawing 14", "brackets": [
          {"name": "below", "bracket": "beam-on-bracket"},
          {"name": "above", "bracket": "beam-on-bracket", "mirror": "w"}]},
        """;
    return job.replace("\"fromJoint\": \"beam-on-bracket\"", "\"fromJoint\": \"pair\"")
        .replace("\"joint\": \"beam-on-bracket\"", "\"joint\": \"pair\"")
        .replace("\"bolted-foot\": {", pair + "\"bolted-foot\": {");
  }
}
