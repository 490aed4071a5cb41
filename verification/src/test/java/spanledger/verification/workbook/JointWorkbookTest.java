package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
    checked = CheckedJob.of(CheckedJob.example("packing-house-hoist-frame.json"), folder);
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
