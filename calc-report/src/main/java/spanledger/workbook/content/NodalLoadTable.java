package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.RuleSet;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/**
 * Loads on nodes: first those given in the job, then the notional level forces that belong to them.
 */
final class NodalLoadTable {

  private static final Source JOB = Source.declared("job file");
  private static final String[] SYMBOLS = {"F_X", "F_Y", "F_Z", "M_X", "M_Y", "M_Z"};

  private final Map<String, List<NumberAt[]>> byCaseAndNode = new HashMap<>();

  private NodalLoadTable() {}

  static NodalLoadTable write(
      LedgerSheet sheet, KeptCases kept, Actions actions, FigureSheet figures) {
    NodalLoadTable table = new NodalLoadTable();
    Map<String, Optional<LoadCase>> vertical = new HashMap<>();
    for (CategorisedCase one : actions.cases()) {
      vertical.put(one.loads().name(), one.vertical());
    }
    table.writeGiven(sheet, kept, vertical);
    table.writeNotional(sheet, kept, vertical, figures);
    return table;
  }

  private void writeGiven(
      LedgerSheet sheet, KeptCases kept, Map<String, Optional<LoadCase>> vertical) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (KeptCases.Kept one : kept.cases()) {
      if (vertical.getOrDefault(one.name(), Optional.empty()).isPresent()) {
        continue;
      }
      for (NodalLoad load : one.loads().nodalLoads()) {
        List<LedgerCell> row = labels(one, load);
        for (double component : components(load)) {
          row.add(LedgerCell.given(component));
        }
        rows.add(row);
        keys.add(key(one, load.node()));
      }
    }
    add(sheet, "Loads on nodes", rows, keys, true);
  }

  private void writeNotional(
      LedgerSheet sheet,
      KeptCases kept,
      Map<String, Optional<LoadCase>> vertical,
      FigureSheet figures) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (KeptCases.Kept one : kept.cases()) {
      Optional<LoadCase> of = vertical.getOrDefault(one.name(), Optional.empty());
      if (of.isEmpty()) {
        continue;
      }
      KeptCases.Kept base = kept.caseNamed(of.get().name());
      Map<String, Integer> seen = new HashMap<>();
      for (NodalLoad load : one.loads().nodalLoads()) {
        int which = seen.merge(load.node().name(), 1, Integer::sum) - 1;
        NumberAt down = loadedDown(base, load.node(), which);
        NumberAt fraction = figures.number(RuleSet.NOTIONAL_SWAY);
        List<LedgerCell> row = labels(one, load);
        for (double component : components(load)) {
          row.add(
              component == 0
                  ? LedgerCell.blank()
                  : LedgerCell.live(
                      "-" + down.from(sheet.name()) + "*" + fraction.from(sheet.name()),
                      -down.value() * fraction.value()));
        }
        rows.add(row);
        keys.add(key(one, load.node()));
      }
    }
    add(sheet, "Notional level forces on nodes", rows, keys, false);
  }

  /** The vertical component of the base case's load on a node that has one. */
  private NumberAt loadedDown(KeptCases.Kept base, Node node, int which) {
    List<NumberAt> vertical = new ArrayList<>();
    for (NumberAt[] numbers : byCaseAndNode.getOrDefault(key(base, node), List.of())) {
      if (numbers[2].value() != 0) {
        vertical.add(numbers[2]);
      }
    }
    return vertical.get(which);
  }

  private void add(
      LedgerSheet sheet,
      String title,
      List<List<LedgerCell>> rows,
      List<String> keys,
      boolean given) {
    if (rows.isEmpty()) {
      return;
    }
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("case", 34), Column.text("node", 22)));
    for (Freedom freedom : Freedom.values()) {
      Column column =
          Column.number(
              SYMBOLS[freedom.ordinal()],
              freedom.words(),
              freedom.isShift() ? Dimension.FORCE : Dimension.MOMENT);
      columns.add(given ? column.withSource(JOB) : column);
    }
    DataCells cells = sheet.add(new DataTable(title, columns, rows));
    for (int i = 0; i < rows.size(); i++) {
      NumberAt[] numbers = new NumberAt[SYMBOLS.length];
      for (int k = 0; k < SYMBOLS.length; k++) {
        boolean blank = rows.get(i).get(2 + k) instanceof LedgerCell.Blank;
        numbers[k] =
            blank ? new NumberAt(cells.address(i, SYMBOLS[k]), 0) : cells.number(i, SYMBOLS[k]);
      }
      byCaseAndNode.computeIfAbsent(keys.get(i), n -> new ArrayList<>()).add(numbers);
    }
  }

  private static List<LedgerCell> labels(KeptCases.Kept kept, NodalLoad load) {
    return new ArrayList<>(
        List.of(LedgerCell.text(kept.name()), LedgerCell.text(load.node().name())));
  }

  private static double[] components(NodalLoad load) {
    Vector f = load.force();
    Vector m = load.moment();
    return new double[] {f.x(), f.y(), f.z(), m.x(), m.y(), m.z()};
  }

  private static String key(Solved solved, Node node) {
    return solved.name() + "/" + node.name();
  }

  /** The loads on a node in a case, along one freedom; those that are 0 left out. */
  List<NumberAt> on(Solved solved, Node node, Freedom freedom) {
    List<NumberAt> found = new ArrayList<>();
    for (NumberAt[] numbers : byCaseAndNode.getOrDefault(key(solved, node), List.of())) {
      if (numbers[freedom.ordinal()].value() != 0) {
        found.add(numbers[freedom.ordinal()]);
      }
    }
    return found;
  }

  /** The force along Z of a load of the job, which must not be 0. */
  NumberAt vertical(KeptCases.Kept one, NodalLoad load) {
    int before = 0;
    for (NodalLoad other : one.loads().nodalLoads()) {
      if (other.equals(load)) {
        break;
      }
      boolean counts = other.node().name().equals(load.node().name()) && other.force().z() != 0;
      before += counts ? 1 : 0;
    }
    return on(one, load.node(), Freedom.SHIFT_Z).get(before);
  }
}
