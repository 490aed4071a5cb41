package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** What bolts, keys and bed of each face carry together beside the forces on the face. */
final class JointBalance {

  /** By how much they may differ, as a part of the greatest force or moment on the face. */
  private static final double ROUNDING = 1e-8;

  /** For moments with all the digits that the balance asks for. */
  private static final int WIDTH = 20;

  private static final List<String> FORCES = List.of("N", "V_y", "V_z");
  private static final List<String> MOMENTS = List.of("T", "M_y", "M_z");

  private final JointTables joints;
  private final List<List<LedgerCell>> rows = new ArrayList<>();

  JointBalance(JointTables joints) {
    this.joints = joints;
  }

  void write(LedgerSheet sheet, List<JointRun> runs) {
    for (JointRun run : runs) {
      for (FaceRun face : run.faces()) {
        if (!face.contacts().isEmpty()) {
          add(sheet, run, face, "N", "F_t", "", "F_x");
          add(sheet, run, face, "M_y", "M_yb", "", "M_yb");
          add(sheet, run, face, "M_z", "M_zb", "", "M_zb");
        }
        // Without bolts, friction as a whole holds what acts in the face.
        if (!face.shears().isEmpty()) {
          add(sheet, run, face, "V_y", "", "F_y", "");
          add(sheet, run, face, "V_z", "", "F_z", "");
          add(sheet, run, face, "T", "", "T_b", "");
        }
      }
    }
    sheet.add(
        new DataTable(
            "Balance of the faces",
            List.of(
                Column.text("face", 46),
                Column.text("under", 40),
                Column.text("force", 12).withWords("N or N·mm"),
                Column.mixed("carried", "by bolts, keys and bed").withWidth(WIDTH),
                Column.mixed("acts", "on the face").withWidth(WIDTH),
                Column.text("balance", 16)),
            rows));
  }

  /**
   * @param acting the force on the face
   * @param pulled the step that bolts carry of it off the face; empty if they carry none
   * @param sheared the step that bolts and keys carry of it in the face; likewise
   * @param pressed the step that the bed carries of it; likewise
   */
  private void add(
      LedgerSheet sheet,
      JointRun run,
      FaceRun face,
      String acting,
      String pulled,
      String sheared,
      String pressed) {
    Sums sum = new Sums(sheet.name());
    plus(sum, face.tensions(), pulled);
    plus(sum, face.shears(), sheared);
    plus(sum, face.keys(), sheared);
    plus(sum, face.contacts(), pressed);
    NumberAt acts = joints.number(face.forces(), acting);
    boolean moment = MOMENTS.contains(acting);
    rows.add(
        List.of(
            LedgerCell.text(joints.row(face.forces()).label()),
            LedgerCell.text(run.words()),
            LedgerCell.text(acting),
            sum.cell(),
            LedgerCell.linked(acts),
            LedgerCell.judged(
                "ABS({carried}-{acts})<="
                    + String.format(Locale.ROOT, "%.8f", ROUNDING)
                    + "*"
                    + size(sheet, face, moment),
                Math.abs(sum.value() - acts.value()) <= ROUNDING * size(face, moment),
                Outcome.BALANCED,
                Outcome.NOT_BALANCED)));
  }

  /** The greatest force on the face, or moment with the forces by 100 mm, as a live formula. */
  private String size(LedgerSheet sheet, FaceRun face, boolean moment) {
    List<String> parts = new ArrayList<>();
    for (String force : FORCES) {
      String cell = "ABS(" + joints.number(face.forces(), force).from(sheet.name()) + ")";
      parts.add(moment ? "100*" + cell : cell);
    }
    for (String other : MOMENTS) {
      String cell = "ABS(" + joints.number(face.forces(), other).from(sheet.name()) + ")";
      parts.add(moment ? cell : cell + "/100");
    }
    return "MAX(" + String.join(",", parts) + ")";
  }

  private static double size(FaceRun face, boolean moment) {
    double size = 0;
    for (String force : FORCES) {
      size = Math.max(size, Math.abs(face.forces().value(force)) * (moment ? 100 : 1));
    }
    for (String other : MOMENTS) {
      size = Math.max(size, Math.abs(face.forces().value(other)) / (moment ? 1 : 100));
    }
    return size;
  }

  private void plus(Sums sum, List<Working> runs, String symbol) {
    if (!symbol.isEmpty()) {
      runs.forEach(run -> sum.plus(joints.number(run, symbol)));
    }
  }
}
