package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/**
 * The stand that is not anchored: its states, with feet in the air, slack braces and slipped
 * joints, in second order.
 */
class SortingStandTest {

  @TempDir static Path folder;
  private static Book book;
  private static Path workbook;

  @BeforeAll
  static void check() throws IOException {
    Path job = PackingHouse.JOB.resolveSibling("packing-house-sorting-stand.json");
    StringWriter err = new StringWriter();
    Main.run(
        new PrintWriter(new StringWriter()),
        new PrintWriter(err),
        "check",
        job.toString(),
        "--out",
        folder.toString());
    workbook = folder.resolve("workbook.xlsx");
    assertThat(workbook).as(err.toString()).exists();
    book = Book.read(workbook);
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path stripped = folder.resolve("stripped.xlsx");
    int formulas = CachedValues.strip(workbook, stripped);

    Recalculation recalculation = new Recalculation(book, Book.read(engine.recalculate(stripped)));

    assertThat(recalculation.disagreements()).isEmpty();
    assertThat(recalculation.compared()).isEqualTo(formulas);
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
