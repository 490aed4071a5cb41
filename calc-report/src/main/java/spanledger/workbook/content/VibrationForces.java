package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.analysis.NodeForces;
import spanledger.analysis.SegmentInertia;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The forces that set pieces and masses on nodes in motion: they load the frame of a mode. */
final class VibrationForces implements SolvedLoads {

  private static final List<String> ON_NODES = List.of("F_X", "F_Y", "F_Z");
  private static final String WORK = "W";

  private final SolvedGroup group;
  private final LoadSumSheet sums;
  private final VibrationPieces pieces;
  private final VibrationMasses masses;
  private final MovementSheet movements;
  private final List<NumberAt> lambda;
  private final LedgerSheet sheet;
  private final EndForceSheets elastic;
  private final ProcedureCells inertia;
  private final ProcedureCells nodeForces;
  private final Optional<DataCells> onNodes;
  private final Map<String, Integer> nodeRows = new HashMap<>();

  VibrationForces(
      LedgerSheet sheet,
      SolvedGroup group,
      LoadSumSheet sums,
      VibrationPieces pieces,
      VibrationMasses masses,
      MovementSheet movements,
      List<NumberAt> lambda) {
    this.sheet = sheet;
    this.group = group;
    this.sums = sums;
    this.pieces = pieces;
    this.masses = masses;
    this.movements = movements;
    this.lambda = lambda;
    elastic = EndForceSheets.write(sheet, group, pieces, this, movements);
    inertia = writeInertia();
    nodeForces = writeNodeForces();
    onNodes = writeOnNodes();
  }

  private Frame frame() {
    return pieces.frame();
  }

  private ProcedureCells writeInertia() {
    CompiledProcedure procedure = SegmentInertia.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Segment piece : frame().segments()) {
        rows.add(
            new ProcedureTable.Row(
                List.of(one.name(), piece.name()),
                Inputs.of(procedure, symbol -> input(one, piece, symbol))));
      }
    }
    return sheet.add(
        new ProcedureTable("Forces that set the pieces in motion", procedure, labels(), rows));
  }

  private InputCell input(Solved one, Segment piece, String symbol) {
    for (Freedom freedom : Freedom.values()) {
      String movement = MovementSheet.SYMBOLS[freedom.ordinal()];
      if (symbol.equals(movement + "1")) {
        return InputCell.inline(movements.number(one, piece.first(), freedom));
      } else if (symbol.equals(movement + "2")) {
        return InputCell.inline(movements.number(one, piece.second(), freedom));
      }
    }
    return InputCell.inline(
        switch (symbol) {
          case "m" -> masses.ofPiece(piece);
          case "λ" -> lambda.get(one.index());
          case "o" -> pieces.floor(piece);
          case "e", "φ" -> elastic.deformation(one, piece, symbol);
          case "M_y1", "M_y2", "M_z1", "M_z2" -> elastic.endForce(one, piece, symbol);
          case "c_a1", "c_a2", "c_x1", "c_x2", "Θ" -> pieces.bar(piece, symbol);
          default ->
              symbol.startsWith("f_") || symbol.startsWith("s_")
                  ? pieces.stiffness(piece, symbol)
                  : pieces.geometry(piece, symbol);
        });
  }

  private ProcedureCells writeNodeForces() {
    CompiledProcedure procedure = NodeForces.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Segment piece : frame().segments()) {
        rows.add(
            new ProcedureTable.Row(
                List.of(one.name(), piece.name()),
                Inputs.of(
                    procedure,
                    symbol ->
                        InputCell.inline(
                            symbol.startsWith("F_") || symbol.startsWith("M_")
                                ? inertia.number(row(one, piece), symbolOf(symbol))
                                : pieces.geometry(piece, symbol)))));
      }
    }
    return sheet.add(new ProcedureTable("The same on the nodes", procedure, labels(), rows));
  }

  private static String symbolOf(String endForce) {
    return (endForce.charAt(0) == 'F' ? "i" : "j") + endForce.substring(1);
  }

  private List<ProcedureTable.Label> labels() {
    return List.of(
        new ProcedureTable.Label(group.what(), group.width()),
        new ProcedureTable.Label("piece", 34));
  }

  private Optional<DataCells> writeOnNodes() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Node node : frame().nodes()) {
        NumberAt mass = masses.onNodes().get(node.name());
        if (mass != null) {
          nodeRows.put(key(one, node), rows.size());
          rows.add(nodeRow(one, node, mass));
        }
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    List<Column> columns =
        new ArrayList<>(List.of(Column.text(group.what(), group.width()), Column.text("node", 34)));
    for (String symbol : ON_NODES) {
      columns.add(Column.number(symbol, "λ times mass times shift", Dimension.FORCE));
    }
    columns.add(Column.number(WORK, "their work on the shifts", Dimension.MOMENT));
    return Optional.of(
        sheet.add(new DataTable("Forces that set masses on nodes in motion", columns, rows)));
  }

  private List<LedgerCell> nodeRow(Solved one, Node node, NumberAt mass) {
    List<LedgerCell> row =
        new ArrayList<>(List.of(LedgerCell.text(one.name()), LedgerCell.text(node.name())));
    NumberAt factor = lambda.get(one.index());
    Sums work = new Sums(sheet.name());
    for (int axis = 0; axis < 3; axis++) {
      NumberAt shift = movements.number(one, node, Freedom.values()[axis]);
      row.add(new Sums(sheet.name()).plusProduct(factor, mass, shift).cell());
      work.plusProduct(factor, mass, shift, shift);
    }
    row.add(work.cell());
    return row;
  }

  private static String key(Solved one, Node node) {
    return one.index() + "/" + node.name();
  }

  private int row(Solved one, Segment piece) {
    return one.index() * frame().segments().size() + piece.index();
  }

  @Override
  public NumberAt sum(Solved solved, Segment segment, String symbol) {
    // No case has a mode's name, so this is the row of zeros: nothing acts between the nodes.
    return sums.number(solved, segment, symbol);
  }

  @Override
  public List<NumberAt> onNode(Solved one, Node node, Freedom freedom) {
    String symbol = (freedom.isShift() ? "R_" : "S_") + "XYZ".charAt(freedom.ordinal() % 3);
    List<NumberAt> found = new ArrayList<>();
    for (Segment piece : frame().segments()) {
      if (piece.first().name().equals(node.name())) {
        found.add(nodeForces.number(row(one, piece), symbol + "1"));
      }
      if (piece.second().name().equals(node.name())) {
        found.add(nodeForces.number(row(one, piece), symbol + "2"));
      }
    }
    Integer row = nodeRows.get(key(one, node));
    if (row != null && freedom.isShift()) {
      found.add(onNodes.orElseThrow().number(row, ON_NODES.get(freedom.ordinal())));
    }
    return found;
  }

  /** The forces of the unloaded pieces. */
  EndForceSheets elastic() {
    return elastic;
  }

  /** The work of inertia on a mode: λ uᵀMu. */
  Sums work(Solved one, String formulaSheet) {
    Sums sum = pieceSum(inertia, one, WORK, new Sums(formulaSheet));
    return nodeSum(one, WORK, sum);
  }

  /** Inertia of all along X, Y or Z (0 to 2). */
  Sums along(Solved one, int axis, String formulaSheet) {
    String symbol = "R_" + "XYZ".charAt(axis);
    Sums sum = pieceSum(nodeForces, one, symbol + "1", new Sums(formulaSheet));
    pieceSum(nodeForces, one, symbol + "2", sum);
    return nodeSum(one, ON_NODES.get(axis), sum);
  }

  /** A step of the inertia, summed over the pieces. */
  Sums ofPieces(Solved one, String symbol, String formulaSheet) {
    return pieceSum(inertia, one, symbol, new Sums(formulaSheet));
  }

  private Sums pieceSum(ProcedureCells cells, Solved one, String symbol, Sums into) {
    int count = frame().segments().size();
    int first = one.index() * count;
    double total = 0;
    for (int i = 0; i < count; i++) {
      total += cells.value(first + i, symbol);
    }
    CellRange range =
        cells.number(first, symbol).at().to(cells.number(first + count - 1, symbol).at());
    return into.plusSum(range, total);
  }

  private Sums nodeSum(Solved one, String heading, Sums into) {
    onNodes.ifPresent(
        cells -> {
          int count = masses.onNodes().size();
          int first = one.index() * count;
          double total = 0;
          for (int i = 0; i < count; i++) {
            total += cells.number(first + i, heading).value();
          }
          into.plusSum(
              cells.address(first, heading).to(cells.address(first + count - 1, heading)), total);
        });
    return into;
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    List<ProcedureCells> all = new ArrayList<>(elastic.tables());
    all.add(inertia);
    all.add(nodeForces);
    return all;
  }
}
