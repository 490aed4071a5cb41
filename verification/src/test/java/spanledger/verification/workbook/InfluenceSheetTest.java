package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;

/** Influence lines of a beam on two bearings, in its workbook. */
class InfluenceSheetTest {

  private static final String SHEET = "Influence lines";

  /** mm, of the beam in the example. */
  private static final double SPAN = 3000;

  @TempDir private static Path folder;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    Path job = folder.resolve("first-beam.json");
    Files.copy(PackingHouse.JOB.resolveSibling("first-beam.json"), job);
    StringWriter out = new StringWriter();
    Main.run(new PrintWriter(out), new PrintWriter(out), "check", job.toString());
    assertThat(out.toString()).contains("Written");
    book = Book.read(folder.resolve("workbook.xlsx"));
  }

  /**
   * The moment at midspan under a force at s is s/2 up to midspan, then (L-s)/2; sagging is
   * negative.
   */
  @Test
  void momentAtMidspanIsATriangle() {
    List<double[]> points = points("Bending moment");
    assertThat(points).hasSizeGreaterThan(8);
    for (double[] point : points) {
      double expected = -Math.min(point[0], SPAN - point[0]) / 2;
      // mm; the force may stand 1e-6 mm beside the point that its row names.
      assertThat(point[1]).isCloseTo(expected, within(2e-6));
    }
  }

  /** The reaction of the left bearing under a force at s is 1 - s/L. */
  @Test
  void reactionIsAStraightLine() {
    List<double[]> points = points("Reaction");
    assertThat(points).hasSizeGreaterThan(3);
    boolean left = points.get(0)[1] > 0.5;
    for (double[] point : points) {
      double along = left ? point[0] : SPAN - point[0];
      assertThat(point[1]).isCloseTo(1 - along / SPAN, within(1e-9));
    }
  }

  /** By Maxwell's theorem the line of a movement at midspan is symmetric, and greatest there. */
  @Test
  void movementAtMidspanIsSymmetric() {
    List<double[]> points = points("Movement down");
    int last = points.size() - 1;
    for (int i = 0; i <= last; i++) {
      assertThat(points.get(i)[1]).isCloseTo(points.get(last - i)[1], within(1e-9));
      assertThat(points.get(i)[1]).isLessThanOrEqualTo(points.get(last / 2)[1]);
    }
  }

  @Test
  void everyLineIsProvedAndDrawn() throws IOException {
    long lines =
        book.tables(SHEET).stream()
            .filter(table -> table.get(0).text().startsWith("Ordinates"))
            .count();
    assertThat(lines).isEqualTo(3);
    assertThat(
            book.cells()
                .filter(c -> c.sheet().equals(SHEET) && c.text().equals("balanced"))
                .count())
        .isEqualTo(3 * lines);
    try (ZipFile file = new ZipFile(folder.resolve("workbook.xlsx").toFile())) {
      for (int i = 1; i <= lines; i++) {
        String chart =
            new String(
                file.getInputStream(file.getEntry("xl/charts/chart" + i + ".xml")).readAllBytes(),
                StandardCharsets.UTF_8);
        assertThat(chart).contains("scatterChart").contains("'" + SHEET + "'!$B$");
      }
    }
  }

  /** Place and ordinate of every row of the line whose heading begins so. */
  private static List<double[]> points(String heading) {
    boolean here = false;
    for (List<BookCell> table : book.tables(SHEET)) {
      String title = table.get(0).text();
      if (title.matches("\\d: .*")) {
        here = title.contains(heading);
      }
      if (here && table.stream().anyMatch(c -> c.text().startsWith("Ordinates"))) {
        return table.stream()
            .filter(c -> c.column() == 1 && c.isFormula())
            .map(c -> new double[] {c.number(), book.at(SHEET, c.row(), 2).number()})
            .toList();
      }
    }
    throw new AssertionError("No line of " + heading);
  }
}
