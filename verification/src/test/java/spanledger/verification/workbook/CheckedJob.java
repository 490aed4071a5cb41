package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spanledger.cli.Main;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/**
 * What {@code check} leaves of a job.
 *
 * @param exit the exit code
 * @param said all that was printed
 * @param folder where the files are
 * @param book the workbook as written
 */
record CheckedJob(int exit, String said, Path folder, Book book) {

  /** An example of the documentation. */
  static Path example(String name) {
    return PackingHouse.JOB.resolveSibling(name);
  }

  /**
   * Runs {@code check} on a job that writes a workbook.
   *
   * @param folder where the files go
   * @param options further words of the command
   */
  static CheckedJob of(Path job, Path folder, String... options) throws IOException {
    StringWriter said = new StringWriter();
    List<String> words =
        new ArrayList<>(List.of("check", job.toString(), "--out", folder.toString()));
    words.addAll(List.of(options));
    int exit = Main.run(new PrintWriter(said), new PrintWriter(said), words.toArray(String[]::new));
    Path workbook = folder.resolve("workbook.xlsx");
    assertThat(workbook).as(said.toString()).exists();
    return new CheckedJob(exit, said.toString(), folder, Book.read(workbook));
  }

  /** The workbook as another program works it out, without our values to copy. */
  Book recalculated() throws IOException {
    Path stripped = folder.resolve("stripped.xlsx");
    CachedValues.strip(folder.resolve("workbook.xlsx"), stripped);
    return Book.read(CalcEngine.required().recalculate(stripped));
  }

  /** Every formula cell beside what another program makes of it; none may be left out. */
  Recalculation recalculation() throws IOException {
    return comparedWith(recalculated());
  }

  /** The same, where the other workbook is looked at otherwise, too. */
  Recalculation comparedWith(Book theirs) {
    Recalculation all = new Recalculation(book, theirs);
    long formulas = book.cells().filter(cell -> !cell.formula().isEmpty()).count();
    assertThat((long) all.compared()).as("formula cells compared").isEqualTo(formulas);
    return all;
  }
}
