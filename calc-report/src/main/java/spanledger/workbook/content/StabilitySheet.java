package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spanledger.action.RuleSet;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.job.Job;
import spanledger.quantity.Dimension;
import spanledger.stability.CriticalFactor;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** Every combination that was looked at as a state: its critical load factor and what it did. */
final class StabilitySheet {

  private static final String FACTOR = "α_cr";

  private final Map<String, NumberAt> factors = new HashMap<>();

  private StabilitySheet() {}

  static StabilitySheet write(
      LedgerWorkbook workbook, Job job, Behaviour behaviour, FigureSheet figures) {
    LedgerSheet sheet = workbook.sheet(SheetNames.STABILITY);
    sheet.title(
        "Stability",
        "The factor on all loads of a combination at which the frame buckles, and how; what lifts,"
            + " slackens or slips.");
    sheet.note(
        "Moving loads stand where the linear search found that they govern. The least factor of all"
            + " is proved on the sheet "
            + ModeSheet.NAME
            + ", if nodes move when the frame buckles. Where the frame does not buckle, "
            + FACTOR
            + " is how far factors were searched: the true one, if any, is greater.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (CombinationBehaviour one : behaviour.combinations()) {
      rows.add(row(one, job, behaviour, figures, sheet.name()));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Combinations",
                List.of(
                    Column.wrapped("combination", 50),
                    Column.text("for", 16),
                    Column.number(
                        FACTOR, "least factor on all loads, found by search", Dimension.NONE),
                    Column.text("verdict", 10),
                    Column.text("order", 27),
                    Column.wrapped("how it buckles", 36),
                    Column.wrapped("what lifts, slackens or slips", 38)),
                rows));
    StabilitySheet stability = new StabilitySheet();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).get(2) instanceof LedgerCell.Solved) {
        stability.factors.put(
            behaviour.combinations().get(i).instance().words(), cells.number(i, FACTOR));
      }
    }
    return stability;
  }

  /** The critical load factor of a combination, by its words; empty if it has no solution. */
  Optional<NumberAt> factor(String instance) {
    return Optional.ofNullable(factors.get(instance));
  }

  private static List<LedgerCell> row(
      CombinationBehaviour one, Job job, Behaviour behaviour, FigureSheet figures, String sheet) {
    List<LedgerCell> row = new ArrayList<>();
    row.add(LedgerCell.text(one.instance().words()));
    row.add(LedgerCell.text(one.instance().combination().template().limitState().words()));
    if (one.critical().isEmpty() || one.failure().isPresent()) {
      row.add(LedgerCell.blank());
      row.add(LedgerCell.judged(Outcome.FAIL));
      row.add(LedgerCell.text("no solution"));
      row.add(LedgerCell.text(one.failure().orElse("")));
    } else {
      CriticalFactor critical = one.critical().get();
      boolean buckles = critical.buckles();
      row.add(LedgerCell.solved(buckles ? critical.factor() : critical.searchedTo()));
      row.add(
          LedgerCell.judged(
              "{" + FACTOR + "}>1", one.criticalFactor() > 1, Outcome.PASS, Outcome.FAIL));
      row.add(order(one, job, behaviour, figures, sheet));
      row.add(
          LedgerCell.text(buckles ? critical.mode().words() : "does not buckle up to this factor"));
    }
    row.add(LedgerCell.text(holds(one)));
    return row;
  }

  private static LedgerCell order(
      CombinationBehaviour one, Job job, Behaviour behaviour, FigureSheet figures, String sheet) {
    if (one.secondOrder().isPresent()) {
      return LedgerCell.text("second order");
    }
    if (job.rules().find(RuleSet.CRITICAL_FACTOR).isEmpty()) {
      return LedgerCell.text("first order");
    }
    NumberAt limit = figures.number(RuleSet.CRITICAL_FACTOR);
    String enough = "first order suffices";
    String lacking = "SECOND ORDER IS MISSING";
    return new LedgerCell.LiveText(
        "IF({" + FACTOR + "}>=" + limit.from(sheet) + ",\"" + enough + "\",\"" + lacking + "\")",
        one.criticalFactor() >= behaviour.limit() ? enough : lacking);
  }

  /** What no longer acts as it does at first, in words. */
  private static String holds(CombinationBehaviour one) {
    return one.holds().stream()
        .filter(h -> h.condition() != Condition.BEARS)
        .map(HoldReport::words)
        .collect(Collectors.joining("; "));
  }
}
