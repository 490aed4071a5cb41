package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** Equilibrium of every node in every case, and the reactions that supports must give for it. */
final class BalanceSheet {

  static final String NAME = "Balance";

  /**
   * Out-of-balance allowed, N and N·mm: far below any load, above rounding of forces of many kN.
   */
  static final Tolerance USUAL =
      new Tolerance(1e-4, 1e-1, Source.declared("far below any load, above rounding"));

  private static final String HELD = "held";
  private static final String LEFT_OVER = "left over";
  private static final String VERDICT = "verdict";
  private static final String[] LEFT = {"ΔF_X", "ΔF_Y", "ΔF_Z", "ΔM_X", "ΔM_Y", "ΔM_Z"};
  private static final String[] REACTIONS = {"R_X", "R_Y", "R_Z", "S_X", "S_Y", "S_Z"};

  /**
   * What may be left over.
   *
   * @param force N
   * @param moment N·mm
   * @param source why so much
   */
  record Tolerance(double force, double moment, Source source) {}

  private final LedgerSheet sheet;
  private final Frame frame;
  private final SegmentForces forces;
  private final SupportRule supports;
  private final Tolerance tolerance;
  private final SolvedGroup group;
  private final SolvedLoads loads;
  private final MovementSheet movements;
  private final NodeSheet nodes;
  private final Map<String, Integer> supportOf = new HashMap<>();
  private double greatestHeld;
  private final DataCells reactions;
  private final DataCells proof;

  private BalanceSheet(
      LedgerSheet sheet,
      SolvedGroup group,
      Frame frame,
      SegmentForces forces,
      SolvedLoads loads,
      MovementSheet movements,
      NodeSheet nodes,
      SupportRule supports,
      Tolerance tolerance) {
    this.supports = supports;
    this.tolerance = tolerance;
    this.sheet = sheet;
    this.frame = frame;
    this.forces = forces;
    this.group = group;
    this.loads = loads;
    this.movements = movements;
    this.nodes = nodes;
    for (int i = 0; i < frame.supports().size(); i++) {
      supportOf.put(frame.supports().get(i).node().name(), i);
    }
    reactions = writeReactions();
    proof = writeNodes();
  }

  static BalanceSheet write(
      LedgerWorkbook workbook,
      SolvedGroup group,
      Frame frame,
      SegmentForces forces,
      SolvedLoads loads,
      MovementSheet movements,
      NodeSheet nodes) {
    LedgerSheet sheet = workbook.sheet(group.sheet(NAME));
    sheet.title(
        "Balance",
        "At every node: what the segments take from it, less the loads on it, less what a support"
            + " gives. Nothing may be left over.");
    return new BalanceSheet(
        sheet, group, frame, forces, loads, movements, nodes, SupportRule.LINEAR, USUAL);
  }

  /** The same on a sheet that has a title, with supports and a tolerance of their own. */
  static BalanceSheet write(
      LedgerSheet sheet,
      SolvedGroup group,
      Frame frame,
      SegmentForces forces,
      SolvedLoads loads,
      MovementSheet movements,
      NodeSheet nodes,
      SupportRule supports,
      Tolerance tolerance) {
    return new BalanceSheet(
        sheet, group, frame, forces, loads, movements, nodes, supports, tolerance);
  }

  private DataCells writeReactions() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Support support : frame.supports()) {
        List<LedgerCell> row =
            new ArrayList<>(
                List.of(LedgerCell.text(one.name()), LedgerCell.text(support.node().name())));
        for (Freedom freedom : Freedom.values()) {
          row.add(reaction(one, support, freedom));
        }
        row.add(held(one, support));
        rows.add(row);
      }
    }
    return sheet.add(new DataTable("Reactions", withHeld(columns(REACTIONS)), rows));
  }

  private static List<Column> withHeld(List<Column> columns) {
    List<Column> all = new ArrayList<>(columns);
    all.add(Column.number(HELD, "movement of what is held, summed up", Dimension.NONE));
    return all;
  }

  /** What is held must not move. */
  private LedgerCell held(Solved one, Support support) {
    List<String> terms = new ArrayList<>();
    double value = 0;
    for (Freedom freedom : Freedom.values()) {
      if (supports.inEffect(one, support, freedom) instanceof Restraint.Fixed) {
        Sums moved = moved(one, support, freedom);
        terms.add("ABS(" + moved.formula() + ")");
        value += Math.abs(moved.value());
      }
    }
    greatestHeld = Math.max(greatestHeld, value);
    return terms.isEmpty()
        ? LedgerCell.blank()
        : LedgerCell.residual(String.join("+", terms), value);
  }

  /** The movement of a support beyond its gap, which closes downwards. */
  private Sums moved(Solved one, Support support, Freedom freedom) {
    Sums moved = new Sums(sheet.name()).plus(movements.number(one, support.node(), freedom));
    supports.gap(one, support, freedom).ifPresent(moved::plus);
    return moved;
  }

  private LedgerCell reaction(Solved one, Support support, Freedom freedom) {
    Restraint restraint = supports.inEffect(one, support, freedom);
    if (restraint instanceof Restraint.Free) {
      return LedgerCell.blank();
    }
    if (restraint instanceof Restraint.Spring) {
      int index = supportOf(support.node());
      NumberAt stiffness = nodes.spring(index, freedom);
      Sums moved = moved(one, support, freedom);
      return LedgerCell.live(
          "-" + stiffness.from(sheet.name()) + "*(" + moved.formula() + ")",
          -stiffness.value() * moved.value());
    }
    return taken(one, support.node(), freedom).cell();
  }

  /** What the segments take from a node, less the loads on it. */
  private Sums taken(Solved one, Node node, Freedom freedom) {
    Sums sum = new Sums(sheet.name());
    forces.takenFrom(one, node, freedom).forEach(sum::plus);
    loads.onNode(one, node, freedom).forEach(sum::minus);
    return sum;
  }

  private DataCells writeNodes() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Node node : frame.nodes()) {
        List<LedgerCell> row =
            new ArrayList<>(List.of(LedgerCell.text(one.name()), LedgerCell.text(node.name())));
        for (Freedom freedom : Freedom.values()) {
          row.add(leftOver(one, node, freedom));
        }
        rows.add(row);
      }
    }
    DataCells cells = sheet.add(new DataTable("Left over at the nodes", columns(LEFT), rows));
    return writeWorst(cells, rows);
  }

  private LedgerCell leftOver(Solved one, Node node, Freedom freedom) {
    Integer support = supportOf.get(node.name());
    if (support != null) {
      Restraint restraint = supports.inEffect(one, frame.supports().get(support), freedom);
      if (restraint instanceof Restraint.Fixed) {
        return LedgerCell.text("held");
      }
      if (restraint instanceof Restraint.Spring) {
        Sums sum = taken(one, node, freedom);
        sum.minus(reactionCell(one, support, freedom));
        return sum.residual();
      }
    }
    return taken(one, node, freedom).residual();
  }

  private DataCells writeWorst(DataCells cells, List<List<LedgerCell>> rows) {
    List<List<LedgerCell>> worst = new ArrayList<>();
    for (boolean shift : new boolean[] {true, false}) {
      int first = shift ? 0 : 3;
      String range =
          cells
              .address(0, LEFT[first])
              .to(cells.address(rows.size() - 1, LEFT[first + 2]))
              .from(sheet.name());
      double value = 0;
      for (List<LedgerCell> row : rows) {
        for (int k = 0; k < 3; k++) {
          if (row.get(2 + first + k) instanceof LedgerCell.Residual residual) {
            value = Math.max(value, Math.abs(residual.value()));
          }
        }
      }
      double allowed = shift ? tolerance.force() : tolerance.moment();
      worst.add(
          List.of(
              LedgerCell.text(shift ? "forces, N" : "moments, N·mm"),
              LedgerCell.live("MAX(MAX(" + range + "),-MIN(" + range + "))", value),
              LedgerCell.given(allowed),
              LedgerCell.judged(
                  "{" + LEFT_OVER + "}<={allowed}",
                  value <= allowed,
                  Outcome.BALANCED,
                  Outcome.NOT_BALANCED)));
    }
    worst.add(heldRow(greatestHeld));
    int top = sheet.nextRow();
    DataCells judged =
        sheet.add(
            new DataTable(
                "Greatest left over",
                List.of(
                    Column.text("kind", 34),
                    Column.number(LEFT_OVER, "greatest of all nodes and cases", Dimension.NONE),
                    Column.number("allowed", "rounding", Dimension.NONE)
                        .withSource(tolerance.source()),
                    Column.text(VERDICT, 16)),
                worst));
    sheet.printFrom(top);
    return judged;
  }

  private List<LedgerCell> heldRow(double greatest) {
    String range = reactions.column(HELD).from(sheet.name());
    return List.of(
        LedgerCell.text("movements of held nodes, mm and rad"),
        LedgerCell.live("MAX(" + range + ")", greatest),
        LedgerCell.given(0),
        LedgerCell.judged(
            "{" + LEFT_OVER + "}<={allowed}",
            greatest <= 0,
            Outcome.BALANCED,
            Outcome.NOT_BALANCED));
  }

  private List<Column> columns(String[] symbols) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text(group.what(), group.width()), Column.text("node", 18)));
    for (Freedom freedom : Freedom.values()) {
      columns.add(
          Column.number(
              symbols[freedom.ordinal()],
              freedom.words(),
              freedom.isShift() ? Dimension.FORCE : Dimension.MOMENT));
    }
    return columns;
  }

  private int supportOf(Node node) {
    return Required.of(supportOf.get(node.name()), "The support of " + node.name());
  }

  private NumberAt reactionCell(Solved one, int support, Freedom freedom) {
    int row = one.index() * frame.supports().size() + support;
    return reactions.number(row, REACTIONS[freedom.ordinal()]);
  }

  /** The greatest force (row 0) or moment (row 1) left over, and the cell that judges it. */
  NumberAt leftOver(int row) {
    return proof.number(row, LEFT_OVER);
  }

  /** The cell that judges what is left over. */
  CellAddress verdict(int row) {
    return proof.address(row, VERDICT);
  }

  /** Whether a support bears along a freedom at all in a case or state. */
  boolean gives(Solved one, Support support, Freedom freedom) {
    return !(supports.inEffect(one, support, freedom) instanceof Restraint.Free);
  }

  /** A reaction of a support in a case, as the support acts on the structure. */
  NumberAt reaction(Solved one, Node node, Freedom freedom) {
    return reactionCell(one, supportOf(node), freedom);
  }
}
