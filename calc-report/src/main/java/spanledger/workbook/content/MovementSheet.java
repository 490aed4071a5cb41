package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** The movements of all nodes in all cases: the only numbers that the solver gives. */
final class MovementSheet {

  static final String[] SYMBOLS = {"u_X", "u_Y", "u_Z", "φ_X", "φ_Y", "φ_Z"};

  private final Frame frame;
  private final DataCells cells;

  private MovementSheet(Frame frame, DataCells cells) {
    this.frame = frame;
    this.cells = cells;
  }

  static MovementSheet write(LedgerWorkbook workbook, SolvedGroup group, Frame frame) {
    LedgerSheet sheet = workbook.sheet(group.sheet(SheetNames.MOVEMENTS));
    sheet.title(
        "Movements of the nodes",
        "Found by the solver. The sheet "
            + group.sheet(BalanceSheet.NAME)
            + " proves them: with these movements, and no others, the forces at every node"
            + " balance.");
    return write(sheet, "", group, frame);
  }

  /** The same on a sheet that has a title. */
  static MovementSheet write(LedgerSheet sheet, String title, SolvedGroup group, Frame frame) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text(group.what(), group.width()), Column.text("node", 18)));
    for (Freedom freedom : Freedom.values()) {
      Column column =
          Column.number(
              SYMBOLS[freedom.ordinal()],
              (freedom.isShift() ? "shift " : "turn ") + freedom.words(),
              freedom.isShift() ? Dimension.LENGTH : Dimension.NONE);
      columns.add(freedom.isShift() ? column : column.withUnit("rad"));
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Node node : frame.nodes()) {
        List<LedgerCell> row =
            new ArrayList<>(List.of(LedgerCell.text(one.name()), LedgerCell.text(node.name())));
        for (Freedom freedom : Freedom.values()) {
          row.add(LedgerCell.solved(one.movement(node, freedom)));
        }
        rows.add(row);
      }
    }
    return new MovementSheet(frame, sheet.add(new DataTable(title, columns, rows)));
  }

  /** A movement of a node in a case or state. */
  NumberAt number(Solved solved, Node node, Freedom freedom) {
    int row = solved.index() * frame.nodes().size() + frame.indexOf(node);
    return cells.number(row, SYMBOLS[freedom.ordinal()]);
  }
}
