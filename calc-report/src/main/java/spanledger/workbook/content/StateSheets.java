package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.behaviour.Behaviour;
import spanledger.envelope.Instance;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

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
    StateHoldSheet.write(workbook, states, segments, movements, balance, bars);
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
