package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spanledger.frame.Freedom;
import spanledger.frame.Support;
import spanledger.jointdesign.FootForces;
import spanledger.jointdesign.FootPlace;
import spanledger.jointdesign.JointFeeds;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * Runs of procedures of joints: a row per run, a table per procedure where the order of calculation
 * allows it.
 */
final class JointTables {

  /** A row of a table. */
  record Place(ProcedureCells table, int row) {}

  /** A table with its rows in order. */
  record Written(ProcedureCells cells, List<JointRows.Row> rows) {}

  private final JointRows rows;
  private final JointNumbers numbers;
  private final JointGroups groups;
  private final CutSheets cuts;
  private final SupportReactions reactions;
  private final SpringCells springs;
  private final IdentityHashMap<Working, Place> places = new IdentityHashMap<>();
  private final List<Written> written = new ArrayList<>();

  /**
   * @param springs what is worked out on sheets before
   */
  JointTables(
      JointRows rows,
      JointNumbers numbers,
      JointGroups groups,
      CutSheets cuts,
      SupportReactions reactions,
      SpringCells springs) {
    this.springs = springs;
    this.rows = rows;
    this.numbers = numbers;
    this.groups = groups;
    this.cuts = cuts;
    this.reactions = reactions;
  }

  /**
   * Writes rows.
   *
   * @param wanted in an order in which each comes after those that feed it
   */
  void write(LedgerSheet sheet, List<JointRows.Row> wanted) {
    Map<String, List<JointRows.Row>> left = new LinkedHashMap<>();
    wanted.forEach(row -> left.computeIfAbsent(row.procedure(), p -> new ArrayList<>()).add(row));
    Set<String> begun = new HashSet<>();
    while (!left.isEmpty()) {
      @Nullable String next = null;
      List<JointRows.Row> ready = List.of();
      for (Map.Entry<String, List<JointRows.Row>> own : left.entrySet()) {
        List<JointRows.Row> now = ready(own.getValue());
        if (now.size() == own.getValue().size()) {
          next = own.getKey();
          ready = now;
          break;
        }
        // No table can be written whole: the first that can be begun.
        if (ready.isEmpty() && !now.isEmpty()) {
          next = own.getKey();
          ready = now;
        }
      }
      String procedure = Required.of(next, "What feeds a run of a joint");
      writeTable(sheet, ready, !begun.add(procedure));
      left.values().forEach(rest -> rest.removeIf(row -> places.containsKey(row.working())));
      left.values().removeIf(List::isEmpty);
    }
  }

  /** Those whose feeds are written, or are ready in the same table. */
  private List<JointRows.Row> ready(List<JointRows.Row> wanted) {
    List<JointRows.Row> ready = new ArrayList<>();
    Set<Working> here = new HashSet<>();
    for (JointRows.Row row : wanted) {
      boolean fed = true;
      for (Feed feed : row.working().feeds()) {
        if (feed instanceof Feed.Result result) {
          Working from = rows.of(result.from()).working();
          fed &= places.containsKey(from) || here.contains(from);
        }
      }
      if (fed) {
        ready.add(row);
        here.add(row.working());
      }
    }
    return ready;
  }

  private void writeTable(LedgerSheet sheet, List<JointRows.Row> own, boolean continued) {
    CompiledProcedure procedure = own.get(0).working().procedure();
    Map<Working, Integer> here = new HashMap<>();
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (JointRows.Row row : own) {
      table.add(
          new ProcedureTable.Row(
              List.of(row.label(), row.combination()), inputs(row, here, sheet.name())));
      here.put(row.working(), here.size());
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title() + (continued ? ", continued" : ""),
                procedure,
                List.of(
                    new ProcedureTable.Label("of", 46),
                    new ProcedureTable.Label("combination", 40)),
                table));
    written.add(new Written(cells, List.copyOf(own)));
    here.forEach((working, row) -> places.put(working, new Place(cells, row)));
  }

  private List<InputCell> inputs(JointRows.Row row, Map<Working, Integer> here, String sheet) {
    List<InputCell> cells = new ArrayList<>();
    List<Input> inputs = row.working().procedure().procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      Feed feed = row.working().feeds().get(i);
      cells.add(input(row, feed, inputs.get(i).symbol().symbol(), here, sheet));
    }
    return cells;
  }

  private InputCell input(
      JointRows.Row row, Feed feed, String symbol, Map<Working, Integer> here, String sheet) {
    if (feed instanceof Feed.Result result) {
      Working from = rows.of(result.from()).working();
      Integer above = here.get(from);
      return above == null
          ? InputCell.shown(number(from, result.symbol()))
          : InputCell.earlierRow(above, result.symbol(), from.value(result.symbol()));
    }
    if (!(feed instanceof Feed.Given given)) {
      throw new IllegalArgumentException("A feed of a joint hangs on a cut.");
    }
    if (given.source().equals(JointFeeds.SOLVED)) {
      return InputCell.solved(given.value(), "balance of the faces, below");
    }
    if (given.source().equals(JointFeeds.AT_END)) {
      return InputCell.shown(cuts.force(groups.cut(row.at().run()), symbol));
    }
    if (given.source().equals(JointFeeds.AT_SUPPORT)) {
      Freedom freedom = Freedom.values()[FootForces.OF_SUPPORT.indexOf(symbol)];
      Support support = ((FootPlace) row.at().run().end()).support();
      return reactions
          .of(sheet, row.at().run().instance(), support, freedom)
          .input("reaction of the support, from its balance");
    }
    if (given.source().equals(JointFeeds.TESTED)) {
      return InputCell.shown(springs.tested(given.origin()));
    }
    return numbers.cell(row.at().kind(), given);
  }

  /** A number of a run. */
  NumberAt number(Working working, String symbol) {
    Place place = place(working);
    return place.table().number(place.row(), symbol);
  }

  /** Where a run stands. */
  Place place(Working working) {
    return Required.of(places.get(rows.of(working).working()), "A run of a joint");
  }

  /** The row of a run. */
  JointRows.Row row(Working working) {
    return rows.of(working);
  }

  /** Whether a run is in the workbook. */
  boolean has(Working working) {
    return rows.find(working).isPresent();
  }

  /**
   * A number of the part that a run is of, under the case that a cell names.
   *
   * @param chosen the cell's address, as a formula refers to it
   * @param sheet the sheet on which the formula stands
   */
  String fetched(Working working, String symbol, String chosen, String sheet) {
    Place place = place(working);
    CellRange column = place.table().column(symbol);
    return "INDEX("
        + column.from(sheet)
        + ",MATCH("
        + key(row(working), chosen)
        + ","
        + place.table().labels(0).from(sheet)
        + ",0))";
  }

  /** A formula for the label of the row of the same part under the case that a cell names. */
  private static String key(JointRows.Row row, String chosen) {
    return chosen + "&\"" + (": " + row.part()).replace("\"", "\"\"") + "\"";
  }

  /** All tables in order. */
  List<Written> written() {
    return written;
  }

  /** All tables in order, without their rows. */
  List<ProcedureCells> tables() {
    return written.stream().map(Written::cells).toList();
  }
}
