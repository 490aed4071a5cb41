package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The workbook of a frame of which one bar is held by a joint known by tests, another by a joint as
 * stiff as its parts: end plate and keyed slot.
 */
class SpringWorkbookTest {

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    Path job =
        Path.of(System.getProperty("spanledger.root", ".."))
            .resolve("verification/src/test/resources/spanledger/verification/workbook/springs")
            .resolve("springs.json");
    checked = CheckedJob.of(job, folder, "--no-pictures");
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

  /** Four springs of the joint of parts and one of tests; none is typed into the sheet. */
  @Test
  void theAnalysisTakesItsSpringsFromTheSheetsThatDeriveThem() {
    assertThat(book.sheet("Stiffness"))
        .extracting(BookCell::formula)
        .filteredOn(formula -> formula.matches("'Joint (springs|tests)'!\\$[A-Z]+\\$[0-9]+"))
        .hasSize(5);
    assertThat(book.sheet("Joint springs"))
        .extracting(BookCell::text)
        .contains("balanced")
        .doesNotContain("NOT BALANCED");
  }
}
