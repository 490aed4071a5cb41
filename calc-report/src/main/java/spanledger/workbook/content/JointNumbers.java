package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.jointdesign.JointFeeds;
import spanledger.procedure.Input;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** Numbers that joint checks are given, each once, with its source. */
final class JointNumbers {

  private static final String VALUE = "value";

  private final Map<Feed.Given, Integer> rows = new LinkedHashMap<>();
  private final List<Dimension> dimensions = new ArrayList<>();
  private final DataCells cells;

  JointNumbers(LedgerSheet sheet, List<Working> workings) {
    workings.forEach(this::collect);
    List<List<LedgerCell>> table = new ArrayList<>();
    for (Feed.Given given : rows.keySet()) {
      table.add(
          List.of(
              LedgerCell.text(given.origin()),
              LedgerCell.given(given.value()),
              LedgerCell.text(dimensions.get(table.size()).coreUnit()),
              LedgerCell.text(given.source().citation()),
              LedgerCell.text(given.source().confidence().words())));
    }
    cells =
        sheet.add(
            new DataTable(
                "Numbers given to the joint checks",
                List.of(
                    Column.wrapped("what", 60),
                    Column.mixed(VALUE, ""),
                    Column.text("unit", 10),
                    Column.wrapped(DataTable.SOURCE_HEADING, 50),
                    Column.text("confidence", 36)),
                table));
  }

  private void collect(Working working) {
    List<Input> inputs = working.procedure().procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      if (working.feeds().get(i) instanceof Feed.Given given
          && !isMarked(given)
          && rows.putIfAbsent(given, rows.size()) == null) {
        dimensions.add(inputs.get(i).symbol().dimension());
      }
    }
  }

  private static boolean isMarked(Feed.Given given) {
    return given.source().equals(JointFeeds.AT_END) || given.source().equals(JointFeeds.SOLVED);
  }

  /** The cell of a given number. */
  InputCell cell(Feed.Given given) {
    return InputCell.shown(cells.number(Required.of(rows.get(given), given.origin()), VALUE));
  }
}
