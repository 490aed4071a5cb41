package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of a job whose sections are outlines and catalogue sections. */
class OutlineWorkbookTest {

  /** Sheets that work out an outline begin with S1, S2, ... */
  private static final String OUTLINE_SHEET = "(?s)S\\d+ .*";

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    checked = CheckedJob.of(CheckedJob.example("walkway-of-extrusions.json"), folder);
    assertThat(checked.exit()).as(checked.said()).isEqualTo(1);
    book = checked.book();
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    Book theirs = checked.recalculated();
    Recalculation all = checked.comparedWith(theirs);
    // Sums over vertices that are zero but for rounding have a measure of their own.
    OutlineRecalculation outlines =
        new OutlineRecalculation(book, theirs, sheet -> sheet.matches(OUTLINE_SHEET));

    assertThat(all.disagreements()).allMatch(words -> words.matches(OUTLINE_SHEET));
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
