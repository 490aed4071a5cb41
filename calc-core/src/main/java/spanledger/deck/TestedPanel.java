package spanledger.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A panel, grating or tread with a table of what it carries at some spans.
 *
 * @param name its name in the job
 * @param rows in order of increasing span, at least two, each with the same columns
 * @param allowable whether the loads are allowable ones, which loads without factors must keep;
 *     else they are characteristic resistances, which factored loads must keep after division
 * @param divisor of characteristic resistances; 1 for allowable loads
 * @param patch side of the square that the load at one place stood on, mm; empty if the table has
 *     none
 * @param deflectionRatio where the table says it in place of columns: the deflection under the
 *     loads of the table is at most this part of the span
 * @param reference who tested it, and in which document
 * @param weight for treads, MPa (N/mm²)
 * @param opening the widest opening, mm
 */
public record TestedPanel(
    String name,
    List<PanelRow> rows,
    boolean allowable,
    double divisor,
    Optional<Double> patch,
    Optional<Double> deflectionRatio,
    String reference,
    double weight,
    Optional<Double> opening)
    implements Panel {

  /**
   * @throws IllegalArgumentException if rows are out of order, are not alike, or a longer span
   *     carries more than a shorter one; the message has a line for each fault
   */
  public TestedPanel {
    rows = List.copyOf(rows);
    List<String> faults = new ArrayList<>();
    if (rows.size() < 2) {
      faults.add("a capacity table needs at least two rows to read between, found " + rows.size());
    }
    for (int i = 1; i < rows.size(); i++) {
      addFaults(rows.get(i - 1), rows.get(i), faults);
    }
    if (rows.stream().anyMatch(row -> row.point().isPresent()) && patch.isEmpty()) {
      faults.add("loads at one place (point) need the patch that they stood on (patch)");
    }
    if (deflectionRatio.isPresent() && rows.stream().anyMatch(PanelRow::hasDeflection)) {
      faults.add("deflections stand twice: as columns, and as a part of the span (deflection)");
    }
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
  }

  private static void addFaults(PanelRow before, PanelRow after, List<String> faults) {
    String spans =
        String.format(Locale.ROOT, "span %.1f mm after %.1f mm", after.span(), before.span());
    if (!(after.span() > before.span())) {
      faults.add(spans + ": spans must increase from row to row");
    } else if (after.uniform() > before.uniform()
        || after.point().orElse(0.0) > before.point().orElse(0.0)) {
      faults.add(spans + ": the longer span cannot carry more than the shorter one");
    }
    if (!after.isLike(before)) {
      faults.add(spans + ": a cell is empty in one of these rows and not in the other");
    }
  }

  /** Whether the table has a column; deflections may follow from the part of the span. */
  public boolean has(PanelColumn column) {
    return value(0, column).isPresent();
  }

  /** Whether the table gives deflections as a part of the span. */
  public boolean deflectsByRatio() {
    return deflectionRatio.isPresent();
  }

  /** The number in a row, if the table has the column. */
  public Optional<Double> value(int row, PanelColumn column) {
    PanelRow one = rows.get(row);
    Optional<Double> byRatio = deflectionRatio.map(ratio -> ratio * one.span());
    return switch (column) {
      case SPAN -> Optional.of(one.span());
      case UNIFORM -> Optional.of(one.uniform());
      case POINT -> one.point();
      case UNIFORM_DEFLECTION -> one.uniformDeflection().or(() -> byRatio);
      case POINT_DEFLECTION ->
          one.point().isPresent() ? one.pointDeflection().or(() -> byRatio) : Optional.empty();
    };
  }

  /** The row before a span, which the next row follows; empty if the span is not in the table. */
  public Optional<Integer> rowBefore(double span) {
    if (span < rows.get(0).span() || span > rows.get(rows.size() - 1).span()) {
      return Optional.empty();
    }
    int last =
        IntStream.range(0, rows.size()).filter(i -> rows.get(i).span() <= span).max().orElse(0);
    return Optional.of(Math.min(last, rows.size() - 2));
  }
}
