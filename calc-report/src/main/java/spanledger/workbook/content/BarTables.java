package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import spanledger.analysis.ArmTilt;
import spanledger.analysis.BasicDeformations;
import spanledger.analysis.BeamColumnForces;
import spanledger.analysis.BeamColumnStiffness;
import spanledger.analysis.MeanAxialForce;
import spanledger.analysis.NodeForces;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * Deformations, axial forces, stiffness under them, end forces and node forces of every segment,
 * live from movements; with the terms that count on the moved frame.
 */
final class BarTables implements SegmentForces {

  private static final Set<String> OF_MEMBER =
      Set.of("E", "G", "I_y", "I_z", "A_v_y", "A_v_z", "s_t");

  private final SolvedGroup group;
  private final Frame frame;
  private final SegmentSheets segments;
  private final MovementSheet movements;
  private final ProcedureCells deformations;
  private final ProcedureCells axial;
  private final ProcedureCells stiffness;
  private final ProcedureCells endForces;
  private final ProcedureCells nodeForces;
  private final List<ProcedureCells> tilt = new ArrayList<>();
  private final Map<String, Integer> tiltRows = new TreeMap<>();

  /**
   * Writes the tables.
   *
   * @param sheets gives the sheet for a kind of table by its usual name
   */
  BarTables(
      SolvedGroup group,
      Function<String, LedgerSheet> sheets,
      SegmentSheets segments,
      MovementSheet movements,
      BarRule rule) {
    this.group = group;
    this.frame = segments.frame();
    this.segments = segments;
    this.movements = movements;
    deformations =
        write(
            sheets.apply(SheetNames.DEFORMATIONS),
            "Deformations of the segments",
            BasicDeformations.PROCEDURE.compile(),
            (one, segment) -> symbol -> deformationInput(one, segment, symbol));
    LedgerSheet stiffnesses = sheets.apply(SheetNames.STIFFNESS);
    axial =
        write(
            stiffnesses,
            "Axial forces",
            MeanAxialForce.PROCEDURE.compile(),
            (one, segment) -> symbol -> axialInput(rule, one, segment, symbol));
    stiffness =
        write(
            stiffnesses,
            "Stiffness under axial force",
            BeamColumnStiffness.PROCEDURE.compile(),
            (one, segment) -> symbol -> stiffnessInput(rule, one, segment, symbol));
    BarRule.Loads loads = rule.loads(stiffness, one -> segment -> row(one, segment));
    LedgerSheet ends = sheets.apply(SheetNames.END_FORCES);
    endForces =
        write(
            ends,
            "End forces of the segments",
            BeamColumnForces.PROCEDURE.compile(),
            (one, segment) -> symbol -> forceInput(rule, loads, one, segment, symbol));
    LedgerSheet nodes = sheets.apply(SheetNames.NODE_FORCES);
    nodeForces =
        write(
            nodes,
            "Node forces of the segments",
            NodeForces.PROCEDURE.compile(),
            (one, segment) ->
                symbol ->
                    InputCell.inline(
                        symbol.startsWith("F_") || symbol.startsWith("M_")
                            ? endForces.number(row(one, segment), symbol)
                            : segments.geometry(segment, symbol)));
    writeTilt(nodes);
  }

  private ProcedureCells write(
      LedgerSheet sheet,
      String title,
      CompiledProcedure procedure,
      BiFunction<Solved, Segment, Function<String, InputCell>> inputs) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Segment segment : frame.segments()) {
        rows.add(
            new ProcedureTable.Row(
                List.of(one.name(), segment.name()),
                Inputs.of(procedure, inputs.apply(one, segment))));
      }
    }
    return sheet.add(new ProcedureTable(title, procedure, labels(), rows));
  }

  private List<ProcedureTable.Label> labels() {
    return List.of(
        new ProcedureTable.Label(group.what(), group.width()),
        new ProcedureTable.Label("segment", 22));
  }

  private InputCell deformationInput(Solved one, Segment segment, String symbol) {
    for (Freedom freedom : Freedom.values()) {
      String movement = MovementSheet.SYMBOLS[freedom.ordinal()];
      if (symbol.equals(movement + "1")) {
        return InputCell.inline(movements.number(one, segment.first(), freedom));
      }
      if (symbol.equals(movement + "2")) {
        return InputCell.inline(movements.number(one, segment.second(), freedom));
      }
    }
    return InputCell.inline(segments.geometry(segment, symbol));
  }

  private InputCell axialInput(BarRule rule, Solved one, Segment segment, String symbol) {
    NumberAt stretch = deformations.number(row(one, segment), "e");
    return switch (symbol) {
      case "s_a" -> rule.stretchingStiffness(one, segment, stretch);
      case "j_a" -> rule.stretchPlay(one, segment, stretch);
      default -> InputCell.inline(stretch);
    };
  }

  private InputCell stiffnessInput(BarRule rule, Solved one, Segment segment, String symbol) {
    if (symbol.equals("L")) {
      return InputCell.inline(segments.geometry(segment, symbol));
    } else if (OF_MEMBER.contains(symbol)) {
      return InputCell.inline(segments.stiffness(segment, symbol));
    } else if (symbol.equals("N")) {
      return rule.bendingForce(one, segment, axial.number(row(one, segment), symbol));
    }
    return rule.joint(one, segment, symbol);
  }

  private InputCell forceInput(
      BarRule rule, BarRule.Loads loads, Solved one, Segment segment, String symbol) {
    int row = row(one, segment);
    if (symbol.startsWith("m_")) {
      return InputCell.inline(loads.moment(one, segment, symbol));
    } else if (symbol.startsWith("t_")) {
      return InputCell.inline(loads.turn(one, segment, symbol));
    } else if (symbol.startsWith("j_")) {
      return rule.jointPlay(one, segment, symbol);
    } else if (symbol.equals("L")) {
      return InputCell.inline(segments.geometry(segment, symbol));
    } else if (OF_MEMBER.contains(symbol)) {
      return InputCell.inline(segments.stiffness(segment, symbol));
    } else if (symbol.equals("N")) {
      return InputCell.inline(axial.number(row, symbol));
    } else if (symbol.equals("N_m")) {
      return InputCell.inline(stiffness.number(row, "N"));
    } else if (symbol.startsWith("s_") || symbol.startsWith("β_")) {
      return InputCell.inline(stiffness.number(row, symbol));
    }
    return InputCell.inline(deformations.number(row, symbol));
  }

  /** Arms turn with their nodes; only segments that have arms need it. */
  private void writeTilt(LedgerSheet sheet) {
    CompiledProcedure procedure = ArmTilt.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Solved one : group.solved()) {
      for (Segment segment : frame.segments()) {
        if (hasArm(segment)) {
          tiltRows.put(key(one, segment), rows.size());
          rows.add(
              new ProcedureTable.Row(
                  List.of(one.name(), segment.name()),
                  Inputs.of(
                      procedure,
                      symbol ->
                          symbol.equals("N")
                              ? InputCell.inline(stiffness.number(row(one, segment), symbol))
                              : deformationInput(one, segment, symbol))));
        }
      }
    }
    if (!rows.isEmpty()) {
      tilt.add(
          sheet.add(new ProcedureTable("Axial forces on turned arms", procedure, labels(), rows)));
    }
  }

  private static boolean hasArm(Segment segment) {
    return !segment.start().offset().equals(Vector.ZERO)
        || !segment.end().offset().equals(Vector.ZERO);
  }

  private int row(Solved one, Segment segment) {
    return one.index() * frame.segments().size() + segment.index();
  }

  private static String key(Solved one, Segment segment) {
    return one.index() + "/" + segment.index();
  }

  @Override
  public NumberAt endForce(Solved one, Segment segment, String symbol) {
    return endForces.number(row(one, segment), symbol);
  }

  /** A value of the stiffness under axial force. */
  NumberAt stiffness(Solved one, Segment segment, String symbol) {
    return stiffness.number(row(one, segment), symbol);
  }

  /** A deformation. */
  NumberAt deformation(Solved one, Segment segment, String symbol) {
    return deformations.number(row(one, segment), symbol);
  }

  /**
   * The turn of a joint, node against member end: that of the node less that of the member's end by
   * its loads and moments.
   *
   * @param axis y or z
   * @param end 1 or 2
   */
  Sums jointTurn(Solved one, Segment segment, char axis, int end, String sheet) {
    int row = row(one, segment);
    int other = 3 - end;
    return new Sums(sheet)
        .plus(deformations.number(row, "θ_" + axis + end))
        .minus(endForces.number(row, "θ0_" + axis + end))
        .minusProduct(
            stiffness.number(row, "f_" + axis + "11"), endForces.number(row, "M_" + axis + end))
        .minusProduct(
            stiffness.number(row, "f_" + axis + "12"), endForces.number(row, "M_" + axis + other));
  }

  /** The mean axial force. */
  NumberAt axialForce(Solved one, Segment segment) {
    return axial.number(row(one, segment), "N");
  }

  @Override
  public List<NumberAt> takenFrom(Solved one, Node node, Freedom freedom) {
    String axis = "XYZ".substring(freedom.ordinal() % 3, freedom.ordinal() % 3 + 1);
    String symbol = (freedom.isShift() ? "R_" : "S_") + axis;
    List<NumberAt> taken = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      if (segment.first().name().equals(node.name())) {
        add(taken, one, segment, symbol, "A_" + axis, "1");
      }
      if (segment.second().name().equals(node.name())) {
        add(taken, one, segment, symbol, "A_" + axis, "2");
      }
    }
    return taken;
  }

  private void add(
      List<NumberAt> taken, Solved one, Segment segment, String symbol, String arm, String end) {
    taken.add(nodeForces.number(row(one, segment), symbol + end));
    Integer tilted = tiltRows.get(key(one, segment));
    if (tilted != null && symbol.startsWith("S_")) {
      taken.add(tilt.get(0).number(tilted, arm + end));
    }
  }

  /** The tables that show a segment under axial force in full. */
  List<ProcedureCells> worked() {
    return List.of(axial, stiffness, endForces);
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return List.of(deformations, axial, stiffness, endForces, nodeForces);
  }
}
