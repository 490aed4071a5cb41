package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.job.Job;
import spanledger.job.SpringOrigins;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointAxis;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.StiffnessDerivation;
import spanledger.jointdesign.StiffnessDerivation.FaceCarries;
import spanledger.jointdesign.StiffnessDerivation.UnitCase;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;
import spanledger.workbook.layout.ProcedureCells;

/**
 * How springs of member ends come of the parts of described joints: parts, movements of the faces
 * under units of force with their balance, faces, and all faces one behind the other.
 */
final class JointSpringSheet {

  static final String NAME = "Joint springs";

  private static final List<String> OFF = List.of("N", "M_y", "M_z");
  private static final List<String> BOLTS = List.of("F_t", "M_yb", "M_zb");
  private static final List<String> BED = List.of("F_x", "M_yb", "M_zb");
  private static final List<String> IN = List.of("V_y", "V_z", "T");
  private static final List<String> BY_MOVES = List.of("H_y", "H_z", "H_x");
  private static final String ROUNDING = "0.00000001";

  /** Lever by which moments and forces are of one size, mm. */
  private static final double LEVER = 100;

  private final LedgerSheet sheet;
  private final WorkingTables tables;

  private JointSpringSheet(LedgerSheet sheet) {
    this.sheet = sheet;
    this.tables = new WorkingTables(sheet);
  }

  /**
   * Writes the sheet; none if no member end takes its stiffness from a joint.
   *
   * @param springs takes the cells of the springs
   * @param used takes the tables of procedures
   */
  static void write(
      LedgerWorkbook workbook, Job job, SpringCells springs, List<ProcedureCells> used) {
    Map<BracketJoint, List<SpringUse>> uses = new LinkedHashMap<>();
    for (SpringUse use : SpringUse.of(job)) {
      if (use.origin() instanceof SpringOrigins.OfParts of) {
        uses.computeIfAbsent(of.joint(), k -> new ArrayList<>()).add(use);
      }
    }
    if (uses.isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(NAME);
    sheet.title(
        NAME,
        "How springs of member ends come of the parts of their joints: parts, faces under units of"
            + " force, faces one behind the other.");
    sheet.note(
        "Each face moves as one rigid body on the springs of its parts, which press or pull one way."
            + " Its movements under a unit of each force are the solver's; what its parts then carry"
            + " balances that unit, and so proves them. Keys are taken as bearing.");
    JointSpringSheet all = new JointSpringSheet(sheet);
    uses.forEach((joint, own) -> all.write(joint, own, springs));
    used.addAll(all.tables.tables());
  }

  private void write(BracketJoint joint, List<SpringUse> uses, SpringCells springs) {
    StiffnessDerivation derivation = StiffnessDerivation.of(joint);
    sheet.heading(joint.name() + ": " + joint.source().citation());
    List<Working> runs = new ArrayList<>();
    for (UnitCase one : derivation.cases()) {
      for (FaceCarries face : one.faces()) {
        runs.add(face.forces());
        runs.add(face.moves());
        runs.addAll(face.parts());
      }
      if (joint.isShared()) {
        one.brackets().forEach(bracket -> runs.add(bracket.share()));
      }
    }
    derivation.springs().forEach(spring -> spring.ifPresent(runs::add));
    tables.write(runs);
    writeBalance(derivation.cases());
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (SpringUse use : uses) {
      Working spring = derivation.springs().get(use.hold()).orElseThrow();
      NumberAt cell = tables.number(spring, use.bound() == Bound.LOWER ? "k_low" : "k_high");
      springs.add(use.spring(), cell, Optional.empty());
      rows.add(
          List.of(
              LedgerCell.text(use.words()),
              LedgerCell.text(use.bound() == Bound.LOWER ? "lower" : "upper"),
              LedgerCell.linked(cell),
              LedgerCell.text(use.hold() == 0 ? "N/mm" : "N·mm/rad")));
    }
    sheet.add(
        new DataTable(
            joint.name() + ": springs that the analysis of this workbook takes",
            List.of(
                Column.text("member end", 60),
                Column.text("bound", 12),
                Column.mixed("stiffness", "").withWidth(16),
                Column.text("unit", 12)),
            rows));
  }

  private void writeBalance(List<UnitCase> cases) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (UnitCase one : cases) {
      for (FaceCarries face : one.faces()) {
        addFace(face, rows);
      }
      addBrackets(one, rows);
    }
    sheet.add(
        new DataTable(
            "Balance of the faces under units of force",
            List.of(
                Column.text("face and force", 60),
                Column.text("of", 12),
                Column.mixed("found", "carried by bolts, keys and bed, or moved").withWidth(16),
                Column.mixed("wanted", "acts on the face, or moved by the first").withWidth(16),
                Column.text("balance", 16)),
            rows));
  }

  private void addFace(FaceCarries face, List<List<LedgerCell>> rows) {
    String of = face.forces().label();
    String size = size(face.forces());
    double greatest = greatest(face.forces());
    for (int i = 0; i < OFF.size(); i++) {
      Sums sum = new Sums(sheet.name());
      for (Working part : face.parts()) {
        boolean bed = part.procedure().procedure().name().equals("contact-share");
        sum.plus(tables.number(part, bed ? BED.get(i) : BOLTS.get(i)));
      }
      NumberAt acts = tables.number(face.forces(), OFF.get(i));
      rows.add(
          row(
              of,
              OFF.get(i),
              sum.cell(),
              sum.value(),
              acts,
              i == 0 ? size + "/100" : size,
              i == 0 ? greatest / LEVER : greatest));
    }
    for (int i = 0; i < IN.size(); i++) {
      NumberAt carried = tables.number(face.moves(), BY_MOVES.get(i));
      NumberAt acts = tables.number(face.forces(), IN.get(i));
      rows.add(
          row(
              of,
              IN.get(i),
              LedgerCell.linked(carried),
              carried.value(),
              acts,
              i < 2 ? size + "/100" : size,
              i < 2 ? greatest / LEVER : greatest));
    }
  }

  /** Brackets side by side carry all of the unit, and move the member end alike. */
  private void addBrackets(UnitCase one, List<List<LedgerCell>> rows) {
    String size = movement(one.brackets().get(0));
    double greatest = greatest(one.brackets().get(0));
    for (int i = 1; i < one.brackets().size(); i++) {
      for (JointAxis axis : JointAxis.values()) {
        for (boolean turn : new boolean[] {false, true}) {
          Feed.Result own = movement(one.brackets().get(i), axis, turn);
          Feed.Result first = movement(one.brackets().get(0), axis, turn);
          NumberAt moved = tables.number(own.from(), own.symbol());
          NumberAt wanted = tables.number(first.from(), first.symbol());
          rows.add(
              row(
                  one.name() + ", " + one.brackets().get(i).name(),
                  (turn ? "turn " : "shift ") + axis.letter(),
                  LedgerCell.linked(moved),
                  moved.value(),
                  wanted,
                  turn ? size + "/100" : size,
                  turn ? greatest / LEVER : greatest));
        }
      }
    }
  }

  /**
   * The greatest movement of the member end, turns by a lever of 100 mm, as a live formula: what
   * ought to be still moves by the rounding of what moves.
   */
  private String movement(BracketRun bracket) {
    List<String> parts = new ArrayList<>();
    for (JointAxis axis : JointAxis.values()) {
      for (boolean turn : new boolean[] {false, true}) {
        Feed.Result moved = movement(bracket, axis, turn);
        parts.add(
            (turn ? "100*ABS(" : "ABS(")
                + tables.number(moved.from(), moved.symbol()).from(sheet.name())
                + ")");
      }
    }
    return "MAX(" + String.join(",", parts) + ")";
  }

  private double greatest(BracketRun bracket) {
    double greatest = 0;
    for (JointAxis axis : JointAxis.values()) {
      for (boolean turn : new boolean[] {false, true}) {
        Feed.Result moved = movement(bracket, axis, turn);
        double size = Math.abs(tables.number(moved.from(), moved.symbol()).value());
        greatest = Math.max(greatest, turn ? LEVER * size : size);
      }
    }
    return greatest;
  }

  private static Feed.Result movement(BracketRun bracket, JointAxis axis, boolean turn) {
    return turn ? bracket.turn(axis) : bracket.shift(axis);
  }

  private static List<LedgerCell> row(
      String of,
      String what,
      LedgerCell found,
      double value,
      NumberAt wanted,
      String size,
      double greatest) {
    return List.of(
        LedgerCell.text(of),
        LedgerCell.text(what),
        found,
        LedgerCell.linked(wanted),
        LedgerCell.judged(
            "ABS({found}-{wanted})<=" + ROUNDING + "*" + size,
            Math.abs(value - wanted.value()) <= 1e-8 * greatest,
            Outcome.BALANCED,
            Outcome.NOT_BALANCED));
  }

  /** The greatest moment on a face, forces by a lever of 100 mm, as a live formula. */
  private String size(Working forces) {
    List<String> parts = new ArrayList<>();
    for (String force : List.of("N", "V_y", "V_z")) {
      parts.add("100*ABS(" + tables.number(forces, force).from(sheet.name()) + ")");
    }
    for (String moment : List.of("T", "M_y", "M_z")) {
      parts.add("ABS(" + tables.number(forces, moment).from(sheet.name()) + ")");
    }
    return "MAX(" + String.join(",", parts) + ")";
  }

  private static double greatest(Working forces) {
    double greatest = 0;
    for (String force : List.of("N", "V_y", "V_z")) {
      greatest = Math.max(greatest, LEVER * Math.abs(forces.value(force)));
    }
    for (String moment : List.of("T", "M_y", "M_z")) {
      greatest = Math.max(greatest, Math.abs(forces.value(moment)));
    }
    return greatest;
  }
}
