package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.behaviour.Behaviour;
import spanledger.envelope.Instance;
import spanledger.frame.Freedom;
import spanledger.frame.Support;
import spanledger.state.HoldReport;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** The proof of the states: balance of the moved frame with what lifts, slackens and slips. */
final class StateSheets {

  private static final String WHAT = "state";

  private final Map<String, StateSolved> byInstance = new HashMap<>();
  private final StateLoadSheet loads;
  private final MovementSheet movements;
  private final BalanceSheet balance;
  private final BarTables bars;

  private StateSheets(
      List<StateSolved> states,
      StateLoadSheet loads,
      MovementSheet movements,
      BalanceSheet balance,
      BarTables bars) {
    states.forEach(s -> byInstance.put(KeptCases.key(s.combination().instance()), s));
    this.loads = loads;
    this.movements = movements;
    this.balance = balance;
    this.bars = bars;
  }

  /** Writes the sheets; nothing if no governing combination was solved as a state. */
  static Optional<StateSheets> write(
      LedgerWorkbook workbook,
      Behaviour behaviour,
      KeptCases kept,
      SegmentSheets segments,
      NodeSheet nodes,
      CombinationSheet combinations,
      LoadSheet loads,
      LoadSumSheet sums,
      NodalLoadTable nodal) {
    List<StateSolved> states = new ArrayList<>();
    for (Instance instance : kept.instances()) {
      behaviour
          .stateOf(instance)
          .ifPresent(
              r ->
                  states.add(
                      new StateSolved(states.size(), behaviour.of(instance).orElseThrow(), r)));
    }
    if (states.isEmpty()) {
      return Optional.empty();
    }
    SolvedGroup group = new SolvedGroup(WHAT, states);
    writeList(workbook, states);
    StateLoadSheet stateLoads =
        new StateLoadSheet(workbook, states, segments, combinations, loads, sums, nodal);
    MovementSheet movements = MovementSheet.write(workbook, group, segments.frame());
    StateRule rule = new StateRule(segments, nodes, stateLoads, group.sheet(SheetNames.STIFFNESS));
    Map<String, LedgerSheet> made = new HashMap<>();
    BarTables bars =
        new BarTables(
            group,
            usual ->
                made.computeIfAbsent(
                    usual,
                    name -> {
                      LedgerSheet sheet = workbook.sheet(group.sheet(name));
                      sheet.title(
                          group.sheet(name),
                          "Of every governing combination that was solved as a state; live from"
                              + " State movements.");
                      return sheet;
                    }),
            segments,
            movements,
            rule);
    LedgerSheet sheet = workbook.sheet(group.sheet(BalanceSheet.NAME));
    sheet.title(
        "Balance of the states",
        "At every node of the moved frame: what the segments take from it, less the loads on it,"
            + " less what a support gives. Nothing may be left over.");
    BalanceSheet balance =
        BalanceSheet.write(
            sheet,
            group,
            segments.frame(),
            bars,
            stateLoads,
            movements,
            nodes,
            rule,
            BalanceSheet.USUAL);
    writeHolds(workbook, states, segments, movements, balance);
    return Optional.of(new StateSheets(states, stateLoads, movements, balance, bars));
  }

  private static void writeList(LedgerWorkbook workbook, List<StateSolved> states) {
    LedgerSheet sheet = workbook.sheet("State list");
    sheet.title(
        "States",
        "A state is the frame under one governing combination as a whole, with what lifts, slackens"
            + " or slips under it. The sheets that follow name states by these numbers.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (StateSolved state : states) {
      boolean moved = state.combination().secondOrder().isPresent();
      rows.add(
          List.of(
              LedgerCell.text(state.name()),
              LedgerCell.text(state.combination().instance().words()),
              LedgerCell.text(
                  moved
                      ? "second order, on the moved frame"
                      : "first order, on the frame at rest")));
    }
    sheet.add(
        new DataTable(
            "",
            List.of(
                Column.text(WHAT, 12),
                Column.wrapped("combination", 90),
                Column.text("equilibrium", 36)),
            rows));
  }

  private static void writeHolds(
      LedgerWorkbook workbook,
      List<StateSolved> states,
      SegmentSheets segments,
      MovementSheet movements,
      BalanceSheet balance) {
    LedgerSheet sheet = workbook.sheet("State holds");
    sheet.title(
        "What lifts, slackens or slips",
        "What every foot, one-way member and joint with play does in each state. A foot that bears"
            + " must press up, one that has lifted must be above the ground.");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (StateSolved state : states) {
      for (HoldReport report : state.result().holds()) {
        rows.add(
            List.of(
                LedgerCell.text(state.name()),
                LedgerCell.text(report.name()),
                LedgerCell.text(report.condition().words()),
                LedgerCell.solved(report.movement()),
                LedgerCell.solved(report.force()),
                foot(state, report, segments, movements, balance, sheet.name())));
      }
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "",
              List.of(
                  Column.text(WHAT, 12),
                  Column.wrapped("hold", 60),
                  Column.text("what it does", 22),
                  Column.mixed("movement", "mm or rad, found by search").withWidth(18),
                  Column.mixed("force", "N or N·mm, found by search").withWidth(18),
                  Column.text("verdict", 16)),
              rows));
    }
  }

  /** A foot that bears must not pull, one in the air must not be in the ground. */
  private static LedgerCell foot(
      StateSolved state,
      HoldReport report,
      SegmentSheets segments,
      MovementSheet movements,
      BalanceSheet balance,
      String sheet) {
    for (Support support : segments.frame().supports()) {
      boolean own =
          state
              .hold(support, Freedom.SHIFT_Z)
              .map(h -> h.name().equals(report.name()))
              .orElse(false);
      if (own) {
        NumberAt up =
            state.isLifted(support)
                ? movements.number(state, support.node(), Freedom.SHIFT_Z)
                : balance.reaction(state, support.node(), Freedom.SHIFT_Z);
        double gap =
            support.restraint(Freedom.SHIFT_Z) instanceof spanledger.frame.Restraint.OneWay one
                    && state.isLifted(support)
                ? one.gap()
                : 0;
        return LedgerCell.judged(
            up.from(sheet) + ">=-" + (gap + 1e-4),
            up.value() >= -(gap + 1e-4),
            Outcome.AGREES,
            Outcome.DIFFERS);
      }
    }
    return LedgerCell.blank();
  }

  /** The state of a combination, if it was solved as one. */
  Optional<StateSolved> of(Instance instance) {
    return Optional.ofNullable(byInstance.get(KeptCases.key(instance)));
  }

  /** The loads of the states. */
  StateLoadSheet loads() {
    return loads;
  }

  /** The movements of the states. */
  MovementSheet movements() {
    return movements;
  }

  /** The balance of the states, with their reactions. */
  BalanceSheet balance() {
    return balance;
  }

  /** What is left over of forces (row 0), moments (row 1) or held movements (row 2). */
  NumberAt leftOver(int row) {
    return balance.leftOver(row);
  }

  /** The cell that judges it. */
  CellAddress verdict(int row) {
    return balance.verdict(row);
  }

  /** The tables of segments. */
  BarTables bars() {
    return bars;
  }
}
