package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.overturning.PlacedForce;
import spanledger.overturning.SlidingCase;
import spanledger.overturning.StandingResult;
import spanledger.overturning.VariableLoad;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** The level and upward forces that slide, with their factors. */
final class StandingLevels {

  private static final Source FOUND =
      Source.declared("load of the rule set or of the job where it is worst, found by search");

  private final String sheet;
  private final Optional<DataCells> cells;
  private final List<int[]> spans = new ArrayList<>();

  StandingLevels(LedgerSheet sheet, StandingFactors factors, StandingResult result) {
    this.sheet = sheet.name();
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (SlidingCase one : result.sliding()) {
      int first = rows.size();
      for (PlacedForce force : one.permanentLevel()) {
        rows.add(row(one, force, factors.overturning(one.rule()), false));
      }
      for (VariableLoad load : one.variable()) {
        if (load.acting() instanceof PlacedForce force) {
          rows.add(row(one, force, factors.variable(one.rule(), load.factor()), true));
        }
      }
      spans.add(new int[] {first, rows.size() - first});
    }
    cells =
        rows.isEmpty()
            ? Optional.empty()
            : Optional.of(
                sheet.add(
                    new DataTable(
                        "Level and upward forces",
                        List.of(
                            Column.wrapped("rule", 14),
                            Column.text("force", 28),
                            force("F_X", "along X"),
                            force("F_Y", "along Y"),
                            force("F_Z", "along Z"),
                            Column.number("γ", "factor", Dimension.NONE),
                            Column.number("H_X", "with factor", Dimension.FORCE),
                            Column.number("H_Y", "with factor", Dimension.FORCE),
                            Column.number("U", "upward, with factor", Dimension.FORCE)),
                        rows)));
  }

  private static Column force(String heading, String words) {
    return Column.number(heading, words, Dimension.FORCE).withSource(FOUND);
  }

  private static List<LedgerCell> row(
      SlidingCase of, PlacedForce force, NumberAt factor, boolean variable) {
    double g = factor.value();
    return List.of(
        LedgerCell.text(of.rule().name()),
        LedgerCell.text(force.name()),
        LedgerCell.given(force.force().x()),
        LedgerCell.given(force.force().y()),
        LedgerCell.given(force.force().z()),
        LedgerCell.linked(factor),
        LedgerCell.live("{γ}*{F_X}", g * force.force().x()),
        LedgerCell.live("{γ}*{F_Y}", g * force.force().y()),
        variable
            ? LedgerCell.live("{γ}*MAX(0,{F_Z})", g * Math.max(0, force.force().z()))
            : LedgerCell.live("0*{F_Z}", 0));
  }

  /** A sum over the forces of a case: H_X, H_Y or U. */
  InputCell sum(int slidingCase, String heading) {
    RangeSums sums = new RangeSums(sheet);
    int[] span = spans.get(slidingCase);
    cells.ifPresent(c -> sums.plus(c, span[0], span[1], heading));
    return InputCell.live(sums.formula(), sums.value(), "sum of the forces above");
  }
}
