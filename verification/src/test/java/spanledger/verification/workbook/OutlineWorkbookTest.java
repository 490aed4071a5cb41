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

/** The workbook of a job whose sections are outlines and catalogue sections. */
class OutlineWorkbookTest {

  private static final Path JOB =
      Path.of(System.getProperty("spanledger.root", ".."))
          .resolve("docs/examples/walkway-of-extrusions.json");

  /** Sheets that work out an outline begin with S1, S2, ... */
  private static final String OUTLINE_SHEET = "(?s)S\\d+ .*";

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

    Book theirs = Book.read(engine.recalculate(stripped));
    Recalculation all = new Recalculation(book, theirs);
    // Sums over vertices that are zero but for rounding have a measure of their own.
    OutlineRecalculation outlines =
        new OutlineRecalculation(book, theirs, sheet -> sheet.matches(OUTLINE_SHEET));

    assertThat(all.disagreements()).allMatch(words -> words.matches(OUTLINE_SHEET));
    assertThat(all.compared()).isEqualTo(formulas);
    assertThat(outlines.disagreements()).isEmpty();
    assertThat(outlines.compared()).isGreaterThan(1000);
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
  }

  /** Each outline says its file, that file's check sum and where the drawing comes from. */
  @Test
  void outlinesSayWhereTheyComeFrom() {
    for (String file : new String[] {"deck-edge-beam", "light-cross-bearer", "keyed-bracket-bar"}) {
      assertThat(book.cells().map(BookCell::text))
          .anyMatch(
              text ->
                  text.contains("outlines/" + file + ".json (SHA-256 ")
                      && text.contains("invented for the demonstration"));
    }
    assertThat(book.cells().map(BookCell::text))
        .anyMatch(text -> text.contains("Part V Table 4, standard channels"));
  }
}
