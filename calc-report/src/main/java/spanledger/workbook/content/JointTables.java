package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.jointdesign.JointFeeds;
import spanledger.jointdesign.JointRun;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Runs of procedures of joints: a row per run, a table per procedure and stage. */
final class JointTables {

  /**
   * A run of a procedure for a joint under a combination.
   *
   * @param joint the joint
   * @param working the run
   */
  record Run(JointRun joint, Working working) {}

  /** A row of a table. */
  record Place(ProcedureCells table, int row) {}

  private final JointNumbers numbers;
  private final JointGroups groups;
  private final CutSheets cuts;
  private final IdentityHashMap<Working, Place> places = new IdentityHashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  JointTables(JointNumbers numbers, JointGroups groups, CutSheets cuts) {
    this.numbers = numbers;
    this.groups = groups;
    this.cuts = cuts;
  }

  /** Writes runs, those that feed others before them; runs written already are left out. */
  void write(LedgerSheet sheet, List<Run> runs) {
    IdentityHashMap<Working, Integer> stages = new IdentityHashMap<>();
    List<Map<String, List<Run>>> byStage = new ArrayList<>();
    for (Run run : runs) {
      stage(run, stages, byStage);
    }
    byStage.forEach(stage -> stage.values().forEach(own -> writeTable(sheet, own)));
  }

  private int stage(
      Run run, IdentityHashMap<Working, Integer> stages, List<Map<String, List<Run>>> byStage) {
    Working working = run.working();
    if (places.containsKey(working)) {
      return -1;
    }
    Integer known = stages.get(working);
    if (known != null) {
      return known;
    }
    int stage = 0;
    for (Feed feed : working.feeds()) {
      if (feed instanceof Feed.Result result) {
        stage = Math.max(stage, stage(new Run(run.joint(), result.from()), stages, byStage) + 1);
      }
    }
    stages.put(working, stage);
    while (byStage.size() <= stage) {
      byStage.add(new LinkedHashMap<>());
    }
    byStage
        .get(stage)
        .computeIfAbsent(working.procedure().procedure().name(), n -> new ArrayList<>())
        .add(run);
    return stage;
  }

  private void writeTable(LedgerSheet sheet, List<Run> runs) {
    CompiledProcedure procedure = runs.get(0).working().procedure();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    Map<String, Integer> rowOf = new LinkedHashMap<>();
    List<Integer> rowOfRun = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      boolean loaded = isLoaded(run.working());
      Integer known = rowOf.putIfAbsent(loaded ? "run " + i : unloaded(run), rows.size());
      rowOfRun.add(known == null ? rows.size() : known);
      if (known == null) {
        String combination = combination(run);
        rows.add(new ProcedureTable.Row(List.of(run.working().label(), combination), inputs(run)));
      }
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(
                    new ProcedureTable.Label("of", 40),
                    new ProcedureTable.Label("combination", 40)),
                rows));
    tables.add(cells);
    for (int i = 0; i < runs.size(); i++) {
      places.put(runs.get(i).working(), new Place(cells, rowOfRun.get(i)));
    }
  }

  /** The combination of a run, in words. */
  static String combination(Run run) {
    return isLoaded(run.working()) ? run.joint().instance().words() : "whatever the loads";
  }

  /** Whether a run hangs on loads; strengths of an alloy, for example, do not. */
  private static boolean isLoaded(Working working) {
    for (Feed feed : working.feeds()) {
      boolean plain =
          feed instanceof Feed.Given given
              && !given.source().equals(JointFeeds.AT_END)
              && !given.source().equals(JointFeeds.SOLVED);
      if (!plain) {
        return true;
      }
    }
    return false;
  }

  /** What runs without loads have in common if they are the same. */
  private static String unloaded(Run run) {
    StringBuilder key = new StringBuilder(run.working().label());
    for (Feed feed : run.working().feeds()) {
      if (feed instanceof Feed.Given given) {
        key.append('|').append(given.origin()).append('=').append(given.value());
      }
    }
    return key.toString();
  }

  private List<InputCell> inputs(Run run) {
    List<InputCell> cells = new ArrayList<>();
    List<Input> inputs = run.working().procedure().procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      cells.add(input(run.joint(), run.working().feeds().get(i), inputs.get(i).symbol().symbol()));
    }
    return cells;
  }

  private InputCell input(JointRun joint, Feed feed, String symbol) {
    if (feed instanceof Feed.Result result) {
      return InputCell.shown(number(result.from(), result.symbol()));
    }
    if (!(feed instanceof Feed.Given given)) {
      throw new IllegalArgumentException("A feed of a joint hangs on a cut.");
    }
    if (given.source().equals(JointFeeds.SOLVED)) {
      return InputCell.solved(given.value(), "balance of the faces, below");
    }
    if (given.source().equals(JointFeeds.AT_END)) {
      return InputCell.shown(cuts.force(groups.cut(joint), symbol));
    }
    return numbers.cell(given);
  }

  /** A number of a run. */
  NumberAt number(Working working, String symbol) {
    Place place = place(working);
    return place.table().number(place.row(), symbol);
  }

  /** Where a run stands. */
  Place place(Working working) {
    return Required.of(places.get(working), "A run of a joint");
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
