package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;
import spanledger.workbook.layout.FormulaRules;

/** The workbook of the packing house, every cell of it. */
class ExampleWorkbookTest {

  /** Functions whose results change without any input changing, or that hide where they point. */
  private static final Set<String> VOLATILE =
      Set.of("NOW", "TODAY", "RAND", "RANDBETWEEN", "OFFSET", "INDIRECT", "INFO", "CELL");

  /** The issue asks for a whole job; fewer cells would mean that something is no longer proved. */
  private static final int ENOUGH = 100_000;

  @TempDir static Path folder;
  private static Book book;

  @BeforeAll
  static void read() throws IOException {
    book = Book.read(PackingHouse.checked().workbook());
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path stripped = folder.resolve("stripped.xlsx");
    int formulas = CachedValues.strip(PackingHouse.checked().workbook(), stripped);

    Recalculation recalculation = new Recalculation(book, Book.read(engine.recalculate(stripped)));

    assertThat(recalculation.disagreements()).isEmpty();
    assertThat(recalculation.compared()).isEqualTo(formulas).isGreaterThan(ENOUGH);
    // Otherwise the measure of the column would be what decides.
    assertThat(recalculation.nearZero()).isLessThan(formulas / 5);
  }

  @Test
  void everyFormulaHasAResultAndNoneIsAnError() {
    assertThat(book.cells().filter(BookCell::isFormula).count()).isGreaterThan(ENOUGH);
    assertThat(
            book.cells()
                .filter(c -> c.kind() == BookCell.Kind.ERROR || c.text().startsWith("#"))
                .map(BookCell::words))
        .isEmpty();
    assertThat(
            book.cells()
                .filter(c -> c.isFormula() && c.kind() == BookCell.Kind.NOTHING)
                // Words that a formula takes over from an empty cell are empty.
                .filter(c -> !c.formula().endsWith("&\"\""))
                .map(BookCell::words))
        .isEmpty();
  }

  @Test
  void formulasUsePlainFunctionsOfThisFileOnly() throws IOException {
    TreeSet<String> used = new TreeSet<>();
    for (BookCell cell : book.cells().filter(BookCell::isFormula).toList()) {
      String bare = cell.formula().replaceAll("\"[^\"]*\"", "");
      assertThat(bare).as(cell.words()).doesNotContain("[", "#", "{", "://");
      used.addAll(FormulaRules.functions(cell.formula()));
    }
    assertThat(used)
        .contains("INDEX", "IF", "SQRT", "MAX")
        .isSubsetOf(FormulaRules.ALLOWED_FUNCTIONS)
        .doesNotContainAnyElementsOf(VOLATILE);
    try (ZipFile parts = new ZipFile(PackingHouse.checked().workbook().toFile())) {
      assertThat(parts.stream().map(ZipEntry::getName))
          .noneMatch(
              n -> n.matches("(?i).*(vba|macro|externalLink|connection|embedding|activeX).*"));
    }
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    Origins origins = new Origins(book);

    assertThat(origins.unexplained()).isEmpty();
    assertThat(origins.count(Origins.Kind.GIVEN)).isGreaterThan(300);
    assertThat(origins.count(Origins.Kind.SOLVED)).isGreaterThan(10_000);
    assertThat(origins.count(Origins.Kind.CHOSEN)).isPositive();
  }

  /** Records and the like printed as the programming language prints them. */
  @Test
  void wordsAreWordsOfTheTrade() {
    List<String> raw =
        book.cells()
            .filter(c -> c.kind() == BookCell.Kind.WORDS)
            .filter(
                c ->
                    c.text()
                        .matches("(?s).*(\\w+\\[\\w+=|Optional|@[0-9a-f]{5,}|\\bnull\\b|NaN).*"))
            .map(BookCell::words)
            .toList();
    assertThat(raw).isEmpty();
  }
}
