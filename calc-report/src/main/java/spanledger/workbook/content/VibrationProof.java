package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.stability.ModeShape;
import spanledger.vibration.ModeFigures;
import spanledger.vibration.Vibration;
import spanledger.vibration.VibrationMode;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * The proof of the natural frequencies that are judged: moved by a mode, every node is in balance
 * under the forces of stiffness and of inertia, K u = λ M u.
 */
final class VibrationProof {

  /** Left over, of the greatest force of inertia on a node: what the search of modes leaves. */
  private static final double SHARE = 1e-5;

  /**
   * Part of the eigenvalue by which Rayleigh's quotient may differ: its error is of second order in
   * that of the shape, and a frequency errs by half of it.
   */
  private static final double QUOTIENT = 1e-6;

  private static final String LAMBDA = "λ";
  private static final String VERDICT = "verdict";

  /** A mode as a solution. */
  private record Mode(Frame frame, int index, String name, ModeShape shape) implements Solved {
    @Override
    public double movement(Node node, Freedom freedom) {
      return shape.movement(6 * frame.indexOf(node) + freedom.ordinal());
    }
  }

  /** The sheets that the proof refers to. */
  record Ground(
      KeptCases kept,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      LoadSheet loads,
      LoadSumSheet sums,
      NodalLoadTable nodal,
      FigureSheet figures) {}

  private final LedgerSheet sheet;
  private final Vibration vibration;
  private final Ground ground;
  private final List<VibrationMode> judged;
  private final SolvedGroup group;
  private final VibrationPieces pieces;
  private final VibrationMasses masses;
  private final VibrationForces forces;
  private final MovementSheet movements;
  private final BalanceSheet balance;
  private final ProcedureCells figures;

  /**
   * Writes the proof.
   *
   * @param sheet on which the modes stand, with a title
   * @param judged the modes to be proved, at least one
   */
  VibrationProof(
      LedgerWorkbook workbook,
      LedgerSheet sheet,
      Vibration vibration,
      List<VibrationMode> judged,
      Ground ground) {
    this.sheet = sheet;
    this.vibration = vibration;
    this.ground = ground;
    this.judged = judged;
    Frame frame = vibration.divided().frame();
    List<Mode> modes = new ArrayList<>();
    for (VibrationMode mode : judged) {
      modes.add(new Mode(frame, modes.size(), name(mode), mode.shape()));
    }
    group = new SolvedGroup("vibration", modes);
    List<NumberAt> lambda = writeEigenvalues();
    LedgerSheet ofPieces = workbook.sheet(group.sheet("Pieces"));
    ofPieces.title(
        "Vibration pieces",
        "Segments are cut into pieces to vibrate; their stiffness, and their masses from the loads.");
    pieces =
        new VibrationPieces(ofPieces, vibration.divided(), ground.segments(), ground.sections());
    masses =
        new VibrationMasses(
            ofPieces,
            vibration,
            ground.kept(),
            pieces,
            ground.loads(),
            ground.nodal(),
            ground.figures());
    movements = MovementSheet.write(workbook, group, frame);
    LedgerSheet ofForces = workbook.sheet(group.sheet("Forces"));
    ofForces.title(
        "Vibration forces",
        "What the pieces, moved by a mode, take from the nodes, and what sets them in motion.");
    forces = new VibrationForces(ofForces, group, ground.sums(), pieces, masses, movements, lambda);
    balance = writeBalance(workbook);
    figures =
        writeFigures(
            SupportSprings.work(ofForces, sheet.name(), group, frame, movements, ground.nodes()),
            lambda);
    writeQuotients();
  }

  private String name(VibrationMode mode) {
    return "mode " + (vibration.modes().indexOf(mode) + 1);
  }

  private List<NumberAt> writeEigenvalues() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (VibrationMode mode : judged) {
      rows.add(
          List.of(
              LedgerCell.text(name(mode)),
              LedgerCell.text(mode.shape().words()),
              LedgerCell.solved(mode.eigenvalue())));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Modes that are judged",
                List.of(
                    Column.text("mode", 34),
                    Column.text("how it moves", 70),
                    Column.number(
                        LAMBDA,
                        "square of the angular frequency, found by search",
                        Dimension.whole(-1, 1, -1, 0))),
                rows));
    List<NumberAt> lambda = new ArrayList<>();
    for (int i = 0; i < judged.size(); i++) {
      lambda.add(cells.number(i, LAMBDA));
    }
    return lambda;
  }

  private BalanceSheet writeBalance(LedgerWorkbook workbook) {
    LedgerSheet of = workbook.sheet(group.sheet(BalanceSheet.NAME));
    of.title(
        "Balance of the modes of vibration",
        "At every node: what the pieces take from it when the mode moves them, less what sets them"
            + " and it in motion, less what a support gives. Nothing may be left over.");
    double greatest = greatest();
    return BalanceSheet.write(
        of,
        group,
        pieces.frame(),
        forces.elastic(),
        forces,
        movements,
        ground.nodes(),
        SupportRule.LINEAR,
        new BalanceSheet.Tolerance(
            SHARE * greatest,
            SHARE * greatest * 1000,
            Source.declared(
                "a hundred-thousandth of the greatest force of inertia on a node in any of the"
                    + " modes; moments with an arm of 1 m")));
  }

  private double greatest() {
    double greatest = 0;
    for (Solved mode : group.solved()) {
      for (Node node : pieces.frame().nodes()) {
        for (Freedom freedom : List.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z)) {
          double sum = 0;
          for (NumberAt force : forces.onNode(mode, node, freedom)) {
            sum += force.value();
          }
          greatest = Math.max(greatest, Math.abs(sum));
        }
      }
    }
    return greatest;
  }

  private ProcedureCells writeFigures(List<Sums> springs, List<NumberAt> lambda) {
    CompiledProcedure procedure = ModeFigures.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved mode : group.solved()) {
      rows.add(
          new ProcedureTable.Row(
              List.of(mode.name()),
              Inputs.of(procedure, symbol -> input(mode, symbol, springs, lambda))));
    }
    return sheet.add(
        new ProcedureTable(
            "Frequencies and what moves",
            procedure,
            List.of(new ProcedureTable.Label("mode", 34)),
            rows));
  }

  private InputCell input(Solved mode, String symbol, List<Sums> springs, List<NumberAt> lambda) {
    String on = sheet.name();
    return switch (symbol) {
      case LAMBDA -> InputCell.inline(lambda.get(mode.index()));
      case "M" -> InputCell.shown(masses.whole());
      case "U" ->
          forces
              .elastic()
              .strainWork(mode, on)
              .plusAll(springs.get(mode.index()))
              .input("forces of the pieces and springs times their deformations");
      case "W" -> forces.work(mode, on).input("sum of W on Vibration forces");
      case "E_o", "E" -> forces.ofPieces(mode, symbol, on).input("sum over the pieces");
      default ->
          forces.along(mode, "XYZ".indexOf(symbol.charAt(2)), on).input("sum over the nodes");
    };
  }

  private void writeQuotients() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Solved mode : group.solved()) {
      NumberAt differs = figures.number(mode.index(), "Δ");
      rows.add(
          List.of(
              LedgerCell.text(mode.name()),
              LedgerCell.linked(differs),
              LedgerCell.given(QUOTIENT),
              LedgerCell.judged(
                  "{Δ}<={allowed}",
                  differs.value() <= QUOTIENT,
                  Outcome.BALANCED,
                  Outcome.NOT_BALANCED)));
    }
    sheet.add(
        new DataTable(
            "Rayleigh's quotient against the eigenvalue",
            List.of(
                Column.text("mode", 34),
                Column.number("Δ", "by how much it differs", Dimension.NONE),
                Column.number("allowed", "a frequency errs by half of it", Dimension.NONE)
                    .withSource(Source.declared("far below what a frequency is asked for")),
                Column.text(VERDICT, 16)),
            rows));
  }

  /** The frequency of a mode. */
  NumberAt frequency(VibrationMode mode) {
    return figures.number(judged.indexOf(mode), "f");
  }

  /** What is left over of forces (row 0), moments (row 1) or held movements (row 2). */
  NumberAt leftOver(int row) {
    return balance.leftOver(row);
  }

  /** The cell that judges it. */
  CellAddress verdict(int row) {
    return balance.verdict(row);
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    List<ProcedureCells> all = new ArrayList<>(pieces.tables());
    all.addAll(masses.tables());
    all.addAll(forces.tables());
    all.add(figures);
    return all;
  }
}
