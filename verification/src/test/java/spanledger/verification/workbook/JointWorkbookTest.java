package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/** The workbook of a job whose joints and feet are described by their parts. */
class JointWorkbookTest {

  private static final Path JOB =
      Path.of(System.getProperty("spanledger.root", ".."))
          .resolve("docs/examples/packing-house-hoist-frame.json");

  @TempDir static Path folder;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        Main.run(
            new PrintWriter(out),
            new PrintWriter(err),
            "check",
            JOB.toString(),
            "--out",
            folder.toString());
    assertThat(exit).as(out.toString() + err).isEqualTo(1);
    book = Book.read(folder.resolve("workbook.xlsx"));
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path stripped = folder.resolve("stripped.xlsx");
    int formulas = CachedValues.strip(folder.resolve("workbook.xlsx"), stripped);

    Recalculation all = new Recalculation(book, Book.read(engine.recalculate(stripped)));

    assertThat(all.disagreements()).isEmpty();
    assertThat(all.compared()).isEqualTo(formulas);
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
  }
}
