package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spanledger.joint.JointAxis;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/**
 * Brackets that share: their shares make up the forces of the member end, the springs of each face
 * give what is shared by its movement, and the member end moves alike by every bracket.
 */
final class BracketBalance {

  /**
   * By how much they may differ, as a part of the greatest. The sharing settles to 1e-13 of the
   * load; springs that differ by up to a factor of 1e5 multiply its rounding.
   */
  private static final double ROUNDING = 1e-8;

  /** By which forces and shifts are beside moments and turns, mm. */
  private static final int ARM = 100;

  private static final int WIDTH = 20;

  private static final String[] AXES = {"u", "v", "w"};

  private final JointTables joints;
  private final List<List<LedgerCell>> rows = new ArrayList<>();

  BracketBalance(JointTables joints) {
    this.joints = joints;
  }

  /** Writes the balance; nothing if no joint has several brackets. */
  void write(LedgerSheet sheet, List<JointRun> runs) {
    runs.forEach(run -> add(sheet, run));
    if (rows.isEmpty()) {
      return;
    }
    sheet.add(
        new DataTable(
            "Balance of brackets that share",
            List.of(
                Column.text("what", 60),
                Column.text("under", 40),
                Column.text("of", 12),
                Column.mixed("found", "N, N·mm, mm or rad").withWidth(WIDTH),
                Column.mixed("must be", "N, N·mm, mm or rad").withWidth(WIDTH),
                Column.text("balance", 16)),
            rows));
  }

  private void add(LedgerSheet sheet, JointRun run) {
    List<BracketRun> brackets = run.brackets();
    if (brackets.isEmpty()) {
      return;
    }
    String size = run.end().name() + ", all brackets";
    for (int i = 0; i < 6; i++) {
      boolean moment = i >= 3;
      String symbol = (moment ? "C_" : "P_") + AXES[i % 3];
      Sums sum = new Sums(sheet.name());
      brackets.forEach(bracket -> sum.plus(joints.number(bracket.share(), symbol)));
      balance(
          sheet,
          run,
          new Row(size, symbol, sum.cell(), sum.value()),
          joints.number(run.forces(), symbol),
          greatest(run.forces(), List.of("P_u", "P_v", "P_w"), List.of("C_u", "C_v", "C_w")),
          moment);
    }
    int at = 0;
    for (BracketRun bracket : brackets) {
      for (Working move : bracket.moves()) {
        springs(sheet, run, move, run.faces().get(at));
        at++;
      }
    }
    for (BracketRun bracket : brackets.subList(1, brackets.size())) {
      movement(sheet, run, brackets.get(0), bracket);
    }
  }

  private void springs(LedgerSheet sheet, JointRun run, Working move, FaceRun face) {
    String[][] same = {{"H_y", "V_y"}, {"H_z", "V_z"}, {"H_x", "T"}};
    List<Part> size =
        greatest(face.forces(), List.of("N", "V_y", "V_z"), List.of("T", "M_y", "M_z"));
    for (String[] pair : same) {
      NumberAt found = joints.number(move, pair[0]);
      balance(
          sheet,
          run,
          new Row(
              move.label() + ", springs in the face",
              pair[1],
              LedgerCell.linked(found),
              found.value()),
          joints.number(face.forces(), pair[1]),
          size,
          pair[1].equals("T"));
    }
  }

  private void movement(LedgerSheet sheet, JointRun run, BracketRun first, BracketRun other) {
    List<Part> size = new ArrayList<>();
    for (JointAxis axis : JointAxis.values()) {
      size.add(new Part(number(first.shift(axis)), false));
      size.add(new Part(number(first.turn(axis)), true));
    }
    for (boolean turn : new boolean[] {false, true}) {
      for (JointAxis axis : JointAxis.values()) {
        NumberAt found = number(turn ? other.turn(axis) : other.shift(axis));
        balance(
            sheet,
            run,
            new Row(
                run.end().name() + ", moved by " + other.name() + " as by " + first.name(),
                (turn ? "turn " : "shift ") + axis.letter(),
                LedgerCell.linked(found),
                found.value()),
            number(turn ? first.turn(axis) : first.shift(axis)),
            size,
            turn);
      }
    }
  }

  private NumberAt number(Feed.Result of) {
    return joints.number(of.from(), of.symbol());
  }

  private record Row(String what, String of, LedgerCell cell, double value) {}

  /** A number that counts for the size of others; of a moment, or a turn. */
  private record Part(NumberAt number, boolean turning) {}

  private List<Part> greatest(Working of, List<String> forces, List<String> moments) {
    List<Part> parts = new ArrayList<>();
    forces.forEach(symbol -> parts.add(new Part(joints.number(of, symbol), false)));
    moments.forEach(symbol -> parts.add(new Part(joints.number(of, symbol), true)));
    return parts;
  }

  private void balance(
      LedgerSheet sheet, JointRun run, Row row, NumberAt must, List<Part> size, boolean turning) {
    List<String> formulas = new ArrayList<>();
    double greatest = 0;
    for (Part part : size) {
      double by = 1;
      String cell = "ABS(" + part.number().from(sheet.name()) + ")";
      if (part.turning() != turning) {
        boolean times = isForce(row.of()) == turning;
        by = times ? ARM : 1.0 / ARM;
        cell = times ? ARM + "*" + cell : cell + "/" + ARM;
      }
      formulas.add(cell);
      greatest = Math.max(greatest, by * Math.abs(part.number().value()));
    }
    rows.add(
        List.of(
            LedgerCell.text(row.what()),
            LedgerCell.text(run.words()),
            LedgerCell.text(row.of()),
            row.cell(),
            LedgerCell.linked(must),
            LedgerCell.judged(
                "ABS({found}-{must be})<="
                    + String.format(Locale.ROOT, "%.8f", ROUNDING)
                    + "*MAX("
                    + String.join(",", formulas)
                    + ")",
                Math.abs(row.value() - must.value()) <= ROUNDING * greatest,
                Outcome.BALANCED,
                Outcome.NOT_BALANCED)));
  }

  /** A moment is a force times an arm, but a shift is a turn times an arm. */
  private static boolean isForce(String of) {
    return !of.startsWith("shift") && !of.startsWith("turn");
  }
}
