package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.job.Job;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** Nodes with their coordinates, and supports with their springs. */
final class NodeSheet {

  private static final Source JOB = Source.declared("job file");
  private static final String[] AXES = {"X", "Y", "Z"};
  private static final String[] HOLDS = {"k_X", "k_Y", "k_Z", "k_φX", "k_φY", "k_φZ"};

  private static final String GAP = "gap";

  private final Frame frame;
  private final DataCells places;
  private final DataCells supports;

  private NodeSheet(Frame frame, DataCells places, DataCells supports) {
    this.frame = frame;
    this.places = places;
    this.supports = supports;
  }

  static NodeSheet write(LedgerWorkbook workbook, Job job) {
    Frame frame = job.frame();
    LedgerSheet sheet = workbook.sheet(SheetNames.NODES);
    sheet.title("Nodes and supports", "Global axes: X and Y level, Z up. Given in the job file.");
    List<Column> columns = new ArrayList<>(List.of(Column.text("node", 20)));
    for (String axis : AXES) {
      columns.add(Column.number(axis, "place along " + axis, Dimension.LENGTH).withSource(JOB));
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Node node : frame.nodes()) {
      rows.add(
          List.of(
              LedgerCell.text(node.name()),
              LedgerCell.given(node.place().x()),
              LedgerCell.given(node.place().y()),
              LedgerCell.given(node.place().z())));
    }
    DataCells supports = writeSupports(sheet, frame);
    DataCells places = sheet.add(new DataTable("Nodes", columns, rows));
    return new NodeSheet(frame, places, supports);
  }

  private static DataCells writeSupports(LedgerSheet sheet, Frame frame) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("node", 20)));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Freedom freedom : Freedom.values()) {
      columns.add(
          Column.number(
                  HOLDS[freedom.ordinal()],
                  "hold " + freedom.words(),
                  freedom.isShift() ? Dimension.LINE_LOAD : Dimension.MOMENT)
              .withSource(JOB));
    }
    columns.add(Column.number(GAP, "under a foot that lifts", Dimension.LENGTH).withSource(JOB));
    columns.add(Column.text("along Z", 26));
    for (Support support : frame.supports()) {
      List<LedgerCell> row = new ArrayList<>(List.of(LedgerCell.text(support.node().name())));
      for (Restraint restraint : support.restraints()) {
        row.add(cell(restraint));
      }
      if (support.restraint(Freedom.SHIFT_Z) instanceof Restraint.OneWay foot) {
        row.add(LedgerCell.given(foot.gap()));
        row.add(LedgerCell.text("lifts, then holds nothing"));
      } else {
        row.add(LedgerCell.blank());
        row.add(LedgerCell.blank());
      }
      rows.add(row);
    }
    return sheet.add(
        new DataTable("Supports (words, or the stiffness of a spring)", columns, rows));
  }

  private static LedgerCell cell(Restraint restraint) {
    if (restraint instanceof Restraint.Spring spring) {
      return LedgerCell.given(spring.stiffness());
    }
    if (restraint instanceof Restraint.OneWay oneWay) {
      return Double.isInfinite(oneWay.stiffness())
          ? LedgerCell.text("one way")
          : LedgerCell.given(oneWay.stiffness());
    }
    return LedgerCell.text(restraint instanceof Restraint.Fixed ? "fixed" : "free");
  }

  /** A coordinate of a node; axis 0 to 2. */
  NumberAt place(Node node, int axis) {
    return places.number(frame.indexOf(node), AXES[axis]);
  }

  /** The gap under a foot that lifts. */
  NumberAt gap(int support) {
    return supports.number(support, GAP);
  }

  /** The stiffness of a spring support. */
  NumberAt spring(int support, Freedom freedom) {
    return supports.number(support, HOLDS[freedom.ordinal()]);
  }
}
