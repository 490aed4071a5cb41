package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.StraightEdge;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;
import spanledger.workbook.layout.FormulaRules;

/** The workbook of {@code section}: live, explained, and the same in another program. */
class SectionWorkbookTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"lopsided-sill", "plain-channel"})
  void anotherProgramWorksOutTheSameInEveryFormulaCell(String name) throws IOException {
    CalcEngine engine = CalcEngine.required();
    SectionRun run = SectionRun.of(name, folder);
    Path stripped = folder.resolve("stripped.xlsx");
    int formulas = CachedValues.strip(run.workbook(), stripped);
    Book ours = Book.read(run.workbook());
    Book theirs = Book.read(engine.recalculate(stripped));

    OutlineRecalculation recalculation = new OutlineRecalculation(ours, theirs, sheet -> true);
    assertThat(recalculation.disagreements()).isEmpty();
    assertThat(recalculation.compared()).isEqualTo(formulas).isGreaterThan(500);
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() throws IOException {
    Book book = Book.read(SectionRun.of("lopsided-sill", folder, "--alloy", "6063-T6").workbook());
    Origins origins = new Origins(book);

    assertThat(origins.unexplained()).isEmpty();
    assertThat(origins.count(Origins.Kind.GIVEN)).isGreaterThan(30);
    assertThat(origins.count(Origins.Kind.SOLVED)).isGreaterThan(20);
  }

  @Test
  void formulasUsePlainFunctionsAndNoneIsAnError() throws IOException {
    Book book = Book.read(SectionRun.of("lopsided-sill", folder).workbook());
    TreeSet<String> used = new TreeSet<>();
    book.cells()
        .filter(BookCell::isFormula)
        .forEach(cell -> used.addAll(FormulaRules.functions(cell.formula())));

    assertThat(used).contains("SUM", "MAX", "ATAN").isSubsetOf(FormulaRules.ALLOWED_FUNCTIONS);
    assertThat(book.cells().filter(c -> c.kind() == BookCell.Kind.ERROR).map(BookCell::words))
        .isEmpty();
    assertThat(
            book.cells()
                .filter(c -> c.kind() == BookCell.Kind.WORDS)
                .filter(c -> c.text().matches("(?s).*(\\w+\\[\\w+=|Optional|\\bnull\\b|NaN).*"))
                .map(BookCell::words))
        .isEmpty();
  }

  /** What residuals there are must be zero but for rounding, and the proofs must say so. */
  @Test
  void residualsAreRounding() throws IOException {
    Book book = Book.read(SectionRun.of("lopsided-sill", folder).workbook());
    assertThat(under(book, "ε"))
        .hasSize(4)
        .allSatisfy(c -> assertThat(c.number()).isCloseTo(0, within(1e-12)));
    List<BookCell> off = new ArrayList<>();
    for (String heading :
        List.of("off the axis", "off the edge", "off in radius", "off in y", "off in z")) {
      off.addAll(under(book, heading));
    }
    assertThat(off)
        .hasSizeGreaterThan(10)
        .allSatisfy(c -> assertThat(c.number()).isCloseTo(0, within(1e-9)));
    assertThat(book.sheet("Properties").stream().filter(c -> c.text().equals("agrees")).count())
        .isEqualTo(4);
    assertThat(book.cells().filter(c -> c.text().equals("DIFFERS")).count()).isZero();
  }

  /** The live numbers under a heading. */
  private static List<BookCell> under(Book book, String heading) {
    List<BookCell> found = new ArrayList<>();
    for (String sheet : book.names()) {
      for (List<BookCell> table : book.tables(sheet)) {
        table.stream()
            .filter(head -> head.text().equals(heading))
            .forEach(
                head ->
                    table.stream()
                        .filter(c -> c.column() == head.column() && c.row() > head.row())
                        .filter(c -> c.isFormula() && c.isNumber())
                        .forEach(found::add));
      }
    }
    return found;
  }

  /**
   * A certifier moves a vertex in the sheet: area and second moments must be those of the new
   * outline, and the plastic neutral axis, which belongs to the old one, must be reported.
   */
  @Test
  void aChangedVertexChangesThePropertiesAndIsNoticed() throws IOException {
    CalcEngine engine = CalcEngine.required();
    SectionRun run = SectionRun.of("plain-channel", folder);
    Book before = Book.read(run.workbook());
    BookCell z =
        before.sheet("Outline").stream()
            .filter(c -> c.isNumber() && !c.isFormula() && c.number() == 40)
            .map(c -> before.at("Outline", c.row(), c.column() + 1))
            .filter(c -> c.isNumber() && c.number() == 3)
            .findFirst()
            .orElseThrow();
    Path changed = folder.resolve("changed.xlsx");
    try (InputStream in = Files.newInputStream(run.workbook());
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(changed)) {
      workbook.getSheet("Outline").getRow(z.row()).getCell(z.column()).setCellValue(4);
      workbook.write(out);
    }
    Path stripped = folder.resolve("stripped.xlsx");
    CachedValues.strip(changed, stripped);
    Book after = Book.read(engine.recalculate(stripped));

    PlaneProperties expected = PlaneProperties.of(moved());
    assertThat(summary(after, "A")).isCloseTo(expected.area(), within(1e-9 * expected.area()));
    assertThat(summary(after, "I_y"))
        .isCloseTo(expected.momentY(), within(1e-9 * expected.momentY()));
    assertThat(summary(after, "W_el,z"))
        .isCloseTo(expected.z().elasticModulus(), within(1e-9 * expected.z().elasticModulus()));
    assertThat(after.sheet("Properties").stream().map(BookCell::text)).contains("DIFFERS");
  }

  private static double summary(Book book, String symbol) {
    BookCell name =
        book.sheet("Properties").stream()
            .filter(c -> c.text().equals(symbol))
            .findFirst()
            .orElseThrow();
    return book.at("Properties", name.row(), name.column() + 1).number();
  }

  /** The plain channel with the inner tip of its lower flange 1 mm higher. */
  private static Outline moved() {
    double quarter = Math.tan(Math.PI / 8);
    Point[] at = {
      new Point(5, 0), new Point(40, 0), new Point(40, 4), new Point(5, 3), new Point(3, 5),
      new Point(3, 75), new Point(5, 77), new Point(40, 77), new Point(40, 80), new Point(5, 80),
      new Point(0, 75), new Point(0, 5)
    };
    Map<Integer, Double> bulges = Map.of(3, -quarter, 5, -quarter, 9, quarter, 11, quarter);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      Point end = at[(i + 1) % at.length];
      edges.add(
          bulges.containsKey(i)
              ? new ArcEdge(at[i], end, bulges.getOrDefault(i, 0.0))
              : new StraightEdge(at[i], end));
    }
    return Outline.of(new Ring(edges));
  }

  @Test
  void sameOutlineSameBytes(@TempDir Path other) throws IOException {
    SectionRun one = SectionRun.of("lopsided-sill", folder);
    SectionRun two = SectionRun.of("lopsided-sill", other);
    for (String ending :
        List.of("section.xlsx", "section.json", "outline.svg", "plates.svg", "warping.svg")) {
      byte[] first = Files.readAllBytes(one.result(ending));
      // The workbook names the file as the user did; only the folder differs here.
      if (!ending.endsWith("xlsx")) {
        assertThat(Files.readAllBytes(two.result(ending))).as(ending).isEqualTo(first);
      }
    }
    SectionRun again = SectionRun.of("lopsided-sill", folder);
    byte[] workbook = Files.readAllBytes(again.workbook());
    SectionRun.of("lopsided-sill", folder);
    assertThat(Files.readAllBytes(again.workbook())).isEqualTo(workbook);
  }
}
