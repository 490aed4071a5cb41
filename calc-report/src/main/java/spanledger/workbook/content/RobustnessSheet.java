package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.RuleSet;
import spanledger.quantity.Dimension;
import spanledger.robustness.BraceLoss;
import spanledger.robustness.FrameState;
import spanledger.robustness.RobustnessAnalysis;
import spanledger.robustness.RobustnessResult;
import spanledger.verdict.WholeStructure;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** The frame with its braces left out one by one. */
final class RobustnessSheet {

  private static final String STANDS = "limit per α_cr";
  private static final String USE = "η";

  private final Map<String, NumberAt> used = new HashMap<>();

  private RobustnessSheet() {}

  static RobustnessSheet write(
      LedgerWorkbook workbook, Optional<WholeStructure> whole, FigureSheet figures) {
    RobustnessSheet written = new RobustnessSheet();
    whole
        .flatMap(WholeStructure::robustness)
        .ifPresent(result -> written.write(workbook, result, figures));
    return written;
  }

  private void write(LedgerWorkbook workbook, RobustnessResult result, FigureSheet figures) {
    LedgerSheet sheet = workbook.sheet(SheetNames.ROBUSTNESS);
    sheet.title(
        "Braces left out",
        "What becomes of the frame when one brace is missing: does it still stand, how far does it move,"
            + " how much more do its members bear.");
    sheet.note(
        "Loads: "
            + result.state()
            + " with the share of the imposed loads that the rule set names (sheet "
            + SheetNames.FIGURES
            + "), out of plumb along X and Y, each way; second order. All numbers are solver values: the"
            + " frame without a brace is a frame of its own, and no formula here proves it. Leave the brace"
            + " out in the job to have its full proof.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    rows.add(row("none", "", result.whole(), figures, sheet));
    for (BraceLoss loss : result.losses()) {
      rows.add(
          row(
              loss.member().name(),
              String.join(", ", loss.alike()),
              loss.without(),
              figures,
              sheet));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Frame without one member",
                List.of(
                    Column.text("left out", 44),
                    Column.number(
                        "α_cr",
                        "critical load factor, 100 if more; found by search",
                        Dimension.NONE),
                    Column.number(STANDS, "0 if there is no factor", Dimension.NONE),
                    Column.text("stands", 14),
                    Column.number(
                        "u", "greatest level movement, found by search", Dimension.LENGTH),
                    Column.number(
                        USE,
                        "greatest stress per design strength, found by search",
                        Dimension.NONE),
                    Column.text("stress", 14),
                    Column.text("in", 30),
                    Column.wrapped("how it buckles or falls", 44),
                    Column.wrapped("the worst of these, each left out in its turn", 60)),
                rows));
    for (int i = 0; i < result.losses().size(); i++) {
      String name = result.losses().get(i).member().name();
      if (result.losses().get(i).without().criticalFactor() > 0) {
        used.put("stands without|" + name, cells.number(i + 1, STANDS));
      }
      if (!Double.isNaN(result.losses().get(i).without().use())) {
        used.put("stress without|" + name, cells.number(i + 1, USE));
      }
    }
  }

  private static List<LedgerCell> row(
      String name, String alike, FrameState state, FigureSheet figures, LedgerSheet sheet) {
    boolean falls = state.criticalFactor() <= 0;
    boolean open = Double.isNaN(state.use());
    NumberAt limit = figures.number(RuleSet.ROBUSTNESS_FACTOR);
    return List.of(
        LedgerCell.text(name),
        falls ? LedgerCell.blank() : LedgerCell.solved(state.criticalFactor()),
        falls
            ? LedgerCell.blank()
            : LedgerCell.live(
                limit.from(sheet.name()) + "/{α_cr}", limit.value() / state.criticalFactor()),
        falls
            ? LedgerCell.judged(Outcome.FAIL)
            : LedgerCell.judged(
                "{" + STANDS + "}<1",
                limit.value() / state.criticalFactor() < 1,
                Outcome.PASS,
                Outcome.FAIL),
        open ? LedgerCell.blank() : LedgerCell.solved(state.movement()),
        open ? LedgerCell.blank() : LedgerCell.solved(state.use()),
        open
            ? LedgerCell.blank()
            : LedgerCell.judged("{η}<=1", state.use() <= 1, Outcome.PASS, Outcome.FAIL),
        LedgerCell.text(state.used()),
        LedgerCell.text(state.criticalFactor() < RobustnessAnalysis.FARTHEST ? state.mode() : ""),
        LedgerCell.text(alike));
  }

  /** What each check uses of what it may, by check and subject. */
  Map<String, NumberAt> used() {
    return Map.copyOf(used);
  }
}
