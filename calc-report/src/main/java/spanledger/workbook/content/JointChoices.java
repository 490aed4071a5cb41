package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** What worked pages of joints can show: the calculations of a kind, and of which parts. */
final class JointChoices {

  /**
   * A calculation of a kind of joint.
   *
   * @param kind of joint
   * @param table where it stands
   * @param rows those of the kind, either all under load or none
   */
  record Block(String kind, JointTables.Written table, List<JointRows.Row> rows) {

    String title() {
      return table.cells().procedure().procedure().title();
    }

    /** The parts, each once. */
    List<String> parts() {
      Set<String> parts = new LinkedHashSet<>();
      rows.forEach(row -> parts.add(row.part()));
      return List.copyOf(parts);
    }
  }

  private static final String PART = "part";

  private final List<Block> blocks = new ArrayList<>();
  private final IdentityHashMap<Block, Integer> firstRow = new IdentityHashMap<>();
  private final DataCells cells;

  JointChoices(LedgerSheet sheet, JointCases cases, JointTables joints) {
    for (String kind : cases.kinds()) {
      Set<JointRows.Row> own = Collections.newSetFromMap(new IdentityHashMap<>());
      for (JointCases.Case one : cases.of(kind)) {
        one.run().shares().forEach(w -> collect(joints, w, own));
        one.run()
            .faces()
            .forEach(
                face -> {
                  face.sharing().forEach(w -> collect(joints, w, own));
                  face.checks().forEach(c -> collect(joints, c.working(), own));
                });
      }
      for (JointTables.Written table : joints.written()) {
        for (boolean loaded : new boolean[] {true, false}) {
          List<JointRows.Row> rows =
              table.rows().stream()
                  .filter(row -> row.loaded() == loaded && own.contains(row))
                  .toList();
          for (List<JointRows.Row> alike : byScope(rows, loaded)) {
            blocks.add(new Block(kind, table, alike));
          }
        }
      }
    }
    List<List<LedgerCell>> lines = new ArrayList<>();
    for (Block block : blocks) {
      firstRow.put(block, lines.size());
      for (String part : block.parts()) {
        lines.add(
            List.of(
                LedgerCell.text(block.kind()),
                LedgerCell.text(block.title()),
                LedgerCell.text(part)));
      }
    }
    cells =
        sheet.add(
            new DataTable(
                "Parts that each calculation can be shown of",
                List.of(
                    Column.text("kind of joint", 30),
                    Column.text("calculation", 56),
                    Column.text(PART, 60)),
                lines));
  }

  /** Rows under load follow the case; others are found by what their labels begin with. */
  private static List<List<JointRows.Row>> byScope(List<JointRows.Row> rows, boolean loaded) {
    Map<String, List<JointRows.Row>> byScope = new LinkedHashMap<>();
    rows.forEach(
        row -> byScope.computeIfAbsent(loaded ? "" : row.scope(), s -> new ArrayList<>()).add(row));
    return List.copyOf(byScope.values());
  }

  private static void collect(JointTables joints, Working working, Set<JointRows.Row> into) {
    JointRows.Row row = joints.row(working);
    if (into.add(row)) {
      for (Feed feed : row.working().feeds()) {
        if (feed instanceof Feed.Result result) {
          collect(joints, result.from(), into);
        }
      }
    }
  }

  /** The calculations of a kind of joint, in their order. */
  List<Block> of(String kind) {
    return blocks.stream().filter(block -> block.kind().equals(kind)).toList();
  }

  /** The cells that name the parts of a calculation. */
  CellRange parts(Block block) {
    int first = Required.of(firstRow.get(block), block.title());
    return cells.address(first, PART).to(cells.address(first + block.parts().size() - 1, PART));
  }
}
