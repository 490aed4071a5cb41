package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.verification.calc.CachedValues;
import spanledger.verification.calc.CalcEngine;

/** Who changes a number in the workbook of the packing house is found out by its own formulas. */
class ExampleTamperingTest {

  private static final String MOVEMENTS = "Movements";
  private static final String BALANCE = "Balance";
  private static final String SUMMARY = "Summary";
  private static final String FIGURES = "Figures";

  /** A movement that is wrong by this, mm or rad, must show. */
  private static final double NUDGE = 1e-3;

  @TempDir Path folder;
  private Book ours = emptyBook();
  private Path stripped = Path.of("");

  private static Book emptyBook() {
    try {
      return Book.read(PackingHouse.checked().workbook());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @BeforeEach
  void strip() throws IOException {
    stripped = folder.resolve("stripped.xlsx");
    CachedValues.strip(PackingHouse.checked().workbook(), stripped);
  }

  private Book tampered(String sheet, Map<String, Double> numbers) throws IOException {
    CalcEngine engine = CalcEngine.required();
    Path changed = folder.resolve("tampered.xlsx");
    Tampering.change(stripped, changed, sheet, numbers);
    return Book.read(engine.recalculate(changed));
  }

  /**
   * One movement in each case, of another node and in another direction each time: every case must
   * show it, as the balance of a case depends on its own movements only.
   */
  @Test
  void aChangedMovementLeavesItsCaseOutOfBalance() throws IOException {
    Map<String, List<BookCell>> nodesOfCase = new LinkedHashMap<>();
    for (BookCell cell : ours.sheet(MOVEMENTS)) {
      if (cell.column() == 0 && ours.at(MOVEMENTS, cell.row(), 2).isConstant()) {
        nodesOfCase.computeIfAbsent(cell.text(), c -> new ArrayList<>()).add(cell);
      }
    }
    Map<String, Double> changes = new LinkedHashMap<>();
    int turn = 0;
    for (List<BookCell> nodes : nodesOfCase.values()) {
      BookCell node = nodes.get(7 * turn % nodes.size());
      BookCell movement = ours.at(MOVEMENTS, node.row(), 2 + turn % 6);
      changes.put(movement.reference(), movement.number() + NUDGE);
      turn++;
    }

    Book theirs = tampered(MOVEMENTS, changes);

    Map<String, Double> force = leftOver(theirs, 2);
    Map<String, Double> moment = leftOver(theirs, 5);
    assertThat(force).hasSameSizeAs(changes);
    assertThat(changes).hasSizeGreaterThan(20);
    for (String name : nodesOfCase.keySet()) {
      assertThat(force.get(name) > 1e-4 || moment.get(name) > 1e-1)
          .as("%s: left over %s N, %s N·mm", name, force.get(name), moment.get(name))
          .isTrue();
    }
    assertThat(words(theirs, BALANCE)).contains("NOT BALANCED").doesNotContain("balanced");
    assertThat(words(theirs, SUMMARY)).contains("NOT BALANCED");
    // Modes of vibration have movements of their own.
    assertThat(
            theirs.sheet(SUMMARY).stream()
                .filter(cell -> cell.column() == 3 && cell.text().equals("balanced"))
                .map(cell -> theirs.at(SUMMARY, cell.row(), 1).text()))
        .containsOnly("modes of vibration");
  }

  /** The greatest left over by case, in three columns. */
  private static Map<String, Double> leftOver(Book book, int firstColumn) {
    Map<String, Double> greatest = new TreeMap<>();
    List<BookCell> nodes =
        book.tables(BALANCE).stream()
            .filter(t -> t.get(0).text().equals("Left over at the nodes"))
            .findFirst()
            .orElseThrow();
    for (BookCell cell : nodes) {
      boolean inside = cell.column() >= firstColumn && cell.column() < firstColumn + 3;
      if (inside && cell.isFormula() && cell.isNumber()) {
        greatest.merge(book.at(BALANCE, cell.row(), 0).text(), Math.abs(cell.number()), Math::max);
      }
    }
    return greatest;
  }

  /**
   * Ten times the factor on guardrail loads: what such combinations govern must grow, by no more
   * than ten times, and fail where it passes 1; what other combinations govern must stay.
   */
  @Test
  void aChangedFactorChangesWhatItGovernsAndNothingElse() throws IOException {
    String template = "STR 1.2G+1.5R+1.5Q";
    BookCell factor =
        ours.sheet(FIGURES).stream()
            .filter(c -> c.text().equals(template + " / guardrail"))
            .map(c -> ours.at(FIGURES, c.row(), 3))
            .findFirst()
            .orElseThrow();
    assertThat(factor.number()).isEqualTo(1.5);

    Book theirs = tampered(FIGURES, Map.of(factor.reference(), 15.0));

    int grown = 0;
    int stayed = 0;
    int failing = 0;
    for (BookCell cell : ours.sheet(SUMMARY)) {
      String combination = ours.at(SUMMARY, cell.row(), 4).text();
      if (cell.column() != 2 || !cell.isFormula() || combination.isEmpty()) {
        continue;
      }
      double before = cell.number();
      String reference = CellReference.convertNumToColString(2) + (cell.row() + 1);
      double after = theirs.cell(SUMMARY, reference).orElseThrow().number();
      String verdict = theirs.at(SUMMARY, cell.row(), 3).text();
      if (cell.words().contains("Member utilisation")) {
        // The worst over the combinations of a case, whose interactions hold squares: it may grow
        // by more than the factor, or another combination may become the worst.
        assertThat(after).as(cell.words()).isGreaterThanOrEqualTo(before * (1 - 1e-9));
        assertThat(verdict).as(cell.words()).isEqualTo(after <= 1 ? "pass" : "FAIL");
      } else if (combination.startsWith(template + ":")) {
        grown += after > before * 1.5 ? 1 : 0;
        // Load effects are in proportion to the loads, and moments of two directions add up.
        assertThat(after).as(cell.words()).isLessThanOrEqualTo(before * 10 * (1 + 1e-9));
        failing += after > 1 ? 1 : 0;
        assertThat(verdict).as(cell.words()).isEqualTo(after <= 1 ? "pass" : "FAIL");
      } else {
        stayed++;
        assertThat(after).as(cell.words()).isEqualTo(before, within9(before));
      }
    }
    assertThat(grown).isGreaterThan(10);
    assertThat(failing).isGreaterThan(5);
    assertThat(stayed).isGreaterThan(5);
    assertThat(words(theirs, BALANCE)).contains("balanced").doesNotContain("NOT BALANCED");
  }

  private static org.assertj.core.data.Offset<Double> within9(double value) {
    return org.assertj.core.data.Offset.offset(1e-9 * Math.abs(value));
  }

  private static List<String> words(Book book, String sheet) {
    return book.sheet(sheet).stream().map(BookCell::text).toList();
  }
}
