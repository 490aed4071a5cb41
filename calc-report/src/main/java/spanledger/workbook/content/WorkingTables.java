package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spanledger.jointdesign.JointFeeds;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Runs that hang on no combination: a row per run, those that feed others before them. */
final class WorkingTables {

  private record Place(ProcedureCells table, int row) {}

  private final LedgerSheet sheet;
  private final IdentityHashMap<Working, Place> places = new IdentityHashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  WorkingTables(LedgerSheet sheet) {
    this.sheet = sheet;
  }

  /** Writes runs and those that feed them; what is written already is left out. */
  void write(List<Working> runs) {
    Set<Working> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
    Map<String, List<Working>> left = new LinkedHashMap<>();
    runs.forEach(run -> collect(run, wanted, left));
    while (!left.isEmpty()) {
      List<Working> next = List.of();
      for (List<Working> own : left.values()) {
        List<Working> now = ready(own);
        if (now.size() == own.size() || (next.isEmpty() && !now.isEmpty())) {
          next = now;
        }
        if (now.size() == own.size()) {
          break;
        }
      }
      if (next.isEmpty()) {
        throw new IllegalStateException("Runs of a joint feed each other in a ring.");
      }
      writeTable(next);
      left.values().forEach(rest -> rest.removeIf(places::containsKey));
      left.values().removeIf(List::isEmpty);
    }
  }

  /** Those that feed a run come before it. */
  private void collect(Working run, Set<Working> wanted, Map<String, List<Working>> left) {
    if (places.containsKey(run) || !wanted.add(run)) {
      return;
    }
    for (Feed feed : run.feeds()) {
      if (feed instanceof Feed.Result result) {
        collect(result.from(), wanted, left);
      }
    }
    left.computeIfAbsent(run.procedure().procedure().name(), n -> new ArrayList<>()).add(run);
  }

  /** Those whose feeds are written, or stand above them in the same table. */
  private List<Working> ready(List<Working> wanted) {
    Set<Working> here = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Working> ready = new ArrayList<>();
    for (Working run : wanted) {
      boolean fed = true;
      for (Feed feed : run.feeds()) {
        fed &=
            !(feed instanceof Feed.Result result)
                || places.containsKey(result.from())
                || here.contains(result.from());
      }
      if (fed) {
        ready.add(run);
        here.add(run);
      }
    }
    return ready;
  }

  private void writeTable(List<Working> runs) {
    CompiledProcedure procedure = runs.get(0).procedure();
    IdentityHashMap<Working, Integer> here = new IdentityHashMap<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Working run : runs) {
      List<InputCell> inputs = new ArrayList<>();
      run.feeds().forEach(feed -> inputs.add(input(feed, here)));
      rows.add(new ProcedureTable.Row(List.of(run.label()), inputs));
      here.put(run, here.size());
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(new ProcedureTable.Label("of", 60)),
                rows));
    tables.add(cells);
    for (int i = 0; i < runs.size(); i++) {
      places.put(runs.get(i), new Place(cells, i));
    }
  }

  private InputCell input(Feed feed, IdentityHashMap<Working, Integer> here) {
    if (feed instanceof Feed.Result result) {
      Integer above = here.get(result.from());
      return above == null
          ? InputCell.shown(number(result.from(), result.symbol()))
          : InputCell.earlierRow(above, result.symbol(), result.from().value(result.symbol()));
    }
    Feed.Given given = (Feed.Given) feed;
    return given.source().equals(JointFeeds.SOLVED)
        ? InputCell.solved(given.value(), "balance of the faces, below")
        : InputCell.literal(given.value(), given.source());
  }

  /** A number of a run. */
  NumberAt number(Working run, String symbol) {
    Place place = Required.of(places.get(run), "A run");
    return place.table().number(place.row(), symbol);
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
