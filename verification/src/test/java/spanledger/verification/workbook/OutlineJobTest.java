package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/** The workbook of a job whose members have an outline: the outline is worked out in it, live. */
class OutlineJobTest {

  private static final int MOST_PAGES = 60;

  @TempDir private Path folder;

  private Path checked() throws IOException {
    for (String name : List.of("sill-job.json", "lopsided-sill.json")) {
      try (InputStream stream = OutlineJobTest.class.getResourceAsStream(name)) {
        if (stream == null) {
          throw new IOException("There is no test file " + name + ".");
        }
        Files.write(folder.resolve(name), stream.readAllBytes());
      }
    }
    StringWriter out = new StringWriter();
    Main.run(
        new PrintWriter(out),
        new PrintWriter(out),
        "check",
        folder.resolve("sill-job.json").toString());
    assertThat(out.toString()).contains("combined stress");
    return folder.resolve("workbook.xlsx");
  }

  @Test
  void anotherProgramWorksOutTheSame() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path workbook = checked();
    Path stripped = folder.resolve("stripped.xlsx");
    CachedValues.strip(workbook, stripped);

    OutlineRecalculation recalculation =
        new OutlineRecalculation(
            Book.read(workbook),
            Book.read(engine.recalculate(stripped)),
            sheet -> sheet.startsWith("S1 ") || sheet.equals("Sections and alloys"));

    assertThat(recalculation.compared()).isGreaterThan(300);
    assertThat(recalculation.disagreements()).isEmpty();
  }

  /**
   * Given: a job with one kind of member and a drawn section, more than 30 sheets. Expected: those
   * that are read on paper, with totals in place of long tables; about a page each.
   */
  @Test
  void whatIsPrintedIsShort() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path workbook = checked();

    try (PDDocument pages = Loader.loadPDF(engine.print(workbook).toFile())) {
      String text = new PDFTextStripper().getText(pages);
      assertThat(pages.getNumberOfPages()).isBetween(20, MOST_PAGES);
      assertThat(text)
          .contains("page 1 of " + pages.getNumberOfPages(), "file SHA-256 ")
          .contains("Structural calculation", "Not checked", "Worked page", "To be confirmed")
          // Of Balance its totals and no nodes.
          .contains("Balance, in part", "Greatest left over")
          .doesNotContain("Left over at the nodes", "Movements of the nodes");
    }
  }

  /** Area and moments of the section are links to sums over the vertices, not numbers. */
  @Test
  void propertiesFollowFromTheVertices() throws IOException {
    Book book = Book.read(checked());

    assertThat(book.names()).contains("S1 Outline", "S1 Axis 1", "S1 Axis 2", "S1 Pictures");
    List<BookCell> row =
        book.sheet("Sections and alloys").stream()
            .filter(c -> c.isFormula() && c.formula().contains("S1 Outline"))
            .toList();
    assertThat(row).hasSize(6);
    assertThat(new Origins(book).unexplained()).isEmpty();
  }
}
