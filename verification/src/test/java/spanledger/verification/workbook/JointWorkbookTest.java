package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of a job whose joints and feet are described by their parts. */
class JointWorkbookTest {

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
            both.replace(
                    "\"formatVersion\": 1,",
                    "\"formatVersion\": 1, \"analysis\": {\"bounds\": \"upper\"},")
                .replace(
                    "\"joint\": \"bolted-foot\"",
                    "\"joint\": \"bolted-foot\", \"turn\": \"20 deg\","
                        + " \"ground\": {\"slope\": \"4 deg\", \"falls\": [1, 2, 0]}"));
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
}
