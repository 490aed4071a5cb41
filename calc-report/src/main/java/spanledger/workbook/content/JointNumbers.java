package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spanledger.jointdesign.JointFeeds;
import spanledger.procedure.Input;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** Numbers that joint checks are given, each once for each kind of joint, with its source. */
final class JointNumbers {

  private static final String VALUE = "value";
  private static final String ALL = "all";

  /** A number of a kind of joint, or of all of them. */
  private record Key(String kind, String words, double value, Source source) {}

  private final JointCases cases;
  private final Map<Key, Integer> rows = new LinkedHashMap<>();
  private final DataCells cells;

  JointNumbers(LedgerSheet sheet, JointCases cases, List<JointRows.Row> wanted) {
    this.cases = cases;
    Map<Key, Dimension> dimensions = new LinkedHashMap<>();
    Map<Key, String> origins = new HashMap<>();
    for (JointRows.Row row : wanted) {
      List<Input> inputs = row.working().procedure().procedure().inputs();
      for (int i = 0; i < inputs.size(); i++) {
        if (row.working().feeds().get(i) instanceof Feed.Given given
            && !JointRows.isOfLoads(given)
            && !given.source().equals(JointFeeds.TESTED)) {
          Key key = key(row.at().kind(), given);
          dimensions.putIfAbsent(key, inputs.get(i).symbol().dimension());
          origins.putIfAbsent(key, given.origin());
        }
      }
    }
    Set<String> kinds = new LinkedHashSet<>(cases.kinds());
    kinds.add(ALL);
    List<List<LedgerCell>> table = new ArrayList<>();
    for (String kind : kinds) {
      for (Key key : dimensions.keySet()) {
        if (key.kind().equals(kind)) {
          rows.put(key, table.size());
          table.add(line(key, dimensions, origins));
        }
      }
    }
    cells =
        sheet.add(
            new DataTable(
                "Numbers given to the joint checks",
                List.of(
                    Column.text("joint", 26),
                    Column.wrapped("what", 60),
                    Column.mixed(VALUE, ""),
                    Column.text("unit", 10),
                    Column.wrapped(DataTable.SOURCE_HEADING, 50),
                    Column.text("confidence", 36)),
                table));
  }

  private static List<LedgerCell> line(
      Key key, Map<Key, Dimension> dimensions, Map<Key, String> origins) {
    long same =
        dimensions.keySet().stream()
            .filter(k -> k.kind().equals(key.kind()) && k.words().equals(key.words()))
            .count();
    // What differs from one member end to another says which end it is of.
    String words = same > 1 ? Required.of(origins.get(key), "A number") : key.words();
    return List.of(
        LedgerCell.text(key.kind()),
        LedgerCell.text(words),
        LedgerCell.given(key.value()),
        LedgerCell.text(Required.of(dimensions.get(key), "A number").coreUnit()),
        LedgerCell.text(key.source().citation()),
        LedgerCell.text(key.source().confidence().words()));
  }

  private Key key(String kind, Feed.Given given) {
    JointCases.Part part = cases.part(given.origin());
    return new Key(part.ofJoint() ? kind : ALL, part.words(), given.value(), given.source());
  }

  /** The cell of a number given to a kind of joint. */
  InputCell cell(String kind, Feed.Given given) {
    return InputCell.shown(
        cells.number(Required.of(rows.get(key(kind, given)), given.origin()), VALUE));
  }
}
