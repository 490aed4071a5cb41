package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The stand that is not anchored: its states, with feet in the air, slack braces and slipped
 * joints, in second order.
 */
class SortingStandTest {

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    checked = CheckedJob.of(CheckedJob.example("packing-house-sorting-stand.json"), folder);
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

  /** The balance holds on the moved frame, and feet and ties do what their forces ask for. */
  @Test
  void statesAreInBalanceAndHoldsAgree() {
    List<String> words = book.cells().map(BookCell::text).toList();

    assertThat(words).contains("balanced", "agrees").doesNotContain("NOT BALANCED", "DIFFERS");
    List<String> holds = book.sheet("State holds").stream().map(BookCell::text).toList();
    assertThat(holds).contains("bears", "open", "in its free play", "play taken up");
  }
}
