package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** What a member code works out without loads: a row per run, a table per procedure and stage. */
final class MemberWorkings {

  private record Place(ProcedureCells table, int row) {}

  private record Run(MemberGroups.Group group, Working working) {}

  private final LedgerSheet sheet;
  private final MemberNumbers numbers;
  private final IdentityHashMap<Working, Place> places = new IdentityHashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  MemberWorkings(LedgerSheet sheet, List<MemberGroups.Group> groups, MemberNumbers numbers) {
    this.sheet = sheet;
    this.numbers = numbers;
    stages(groups).forEach(stage -> stage.values().forEach(this::write));
  }

  /** Runs by stage: each needs only those of earlier ones; within a stage by procedure. */
  private static List<Map<String, List<Run>>> stages(List<MemberGroups.Group> groups) {
    List<Map<String, List<Run>>> stages = new ArrayList<>();
    IdentityHashMap<Working, Integer> stageOf = new IdentityHashMap<>();
    for (MemberGroups.Group group : groups) {
      for (Working working : group.prepared().workings()) {
        int stage = 0;
        for (Feed feed : working.feeds()) {
          if (feed instanceof Feed.Result result) {
            stage = Math.max(stage, Required.of(stageOf.get(result.from()), "A run") + 1);
          }
        }
        stageOf.put(working, stage);
        while (stages.size() <= stage) {
          stages.add(new LinkedHashMap<>());
        }
        stages
            .get(stage)
            .computeIfAbsent(working.procedure().procedure().name(), n -> new ArrayList<>())
            .add(new Run(group, working));
      }
    }
    return stages;
  }

  private void write(List<Run> runs) {
    CompiledProcedure procedure = runs.get(0).working().procedure();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Run run : runs) {
      rows.add(
          new ProcedureTable.Row(
              List.of(run.group().name(), run.working().label()),
              run.working().feeds().stream().map(this::input).toList()));
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(new ProcedureTable.Label("case", 20), new ProcedureTable.Label("of", 36)),
                rows));
    tables.add(cells);
    for (int i = 0; i < runs.size(); i++) {
      places.put(runs.get(i).working(), new Place(cells, i));
    }
  }

  /** The cell of a feed that does not hang on the cut. */
  InputCell input(Feed feed) {
    if (feed instanceof Feed.Given given) {
      return numbers.cell(given);
    }
    if (feed instanceof Feed.Result result) {
      Place place = Required.of(places.get(result.from()), "A run");
      return InputCell.shown(place.table().number(place.row(), result.symbol()));
    }
    throw new IllegalArgumentException("A feed hangs on the cut.");
  }

  /** Every table with its first row of a group, in order. */
  List<MemberCodeSheets.Row> rowsOf(MemberGroups.Group group) {
    IdentityHashMap<ProcedureCells, Integer> first = new IdentityHashMap<>();
    for (Working working : group.prepared().workings()) {
      Place place = Required.of(places.get(working), "A run");
      first.merge(place.table(), place.row(), Math::min);
    }
    return tables.stream()
        .filter(first::containsKey)
        .map(table -> new MemberCodeSheets.Row(table, Required.of(first.get(table), "A row")))
        .toList();
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
