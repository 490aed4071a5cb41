package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import spanledger.bolt.BoltGrade;
import spanledger.joint.BracketJoint;
import spanledger.joint.ClampFoot;
import spanledger.joint.JointFace;
import spanledger.joint.JointType;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.joint.ContactMetal;
import spanledger.resistance.joint.ContactTable;
import spanledger.resistance.joint.Surroundings;
import spanledger.tables.ContactTables;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** Advice on bolts and aluminium that touch, in every surroundings; the job does not say which. */
final class JointMetals {

  private JointMetals() {}

  /** Writes the advice; nothing if no bolt is described. */
  static void write(LedgerSheet sheet, List<JointRun> runs) {
    Set<ContactMetal> bolts = EnumSet.noneOf(ContactMetal.class);
    runs.forEach(run -> collect(run.joint(), bolts));
    ContactTable table = ContactTables.standard();
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (ContactMetal bolt : bolts) {
      for (Surroundings around : Surroundings.values()) {
        for (ContactAdvice advice : table.advice(bolt, ContactMetal.ALUMINIUM, around)) {
          rows.add(
              List.of(
                  LedgerCell.text(bolt.words() + " on aluminium"),
                  LedgerCell.text(around.words()),
                  LedgerCell.text(advice.advice()),
                  LedgerCell.text(advice.source().citation()),
                  LedgerCell.text(advice.source().confidence().words())));
        }
      }
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "Metals that touch: advice, not a verdict",
              List.of(
                  Column.text("metals", 44),
                  Column.text("surroundings", 44),
                  Column.wrapped("advice", 60),
                  Column.wrapped("from", 40),
                  Column.text("confidence", 36)),
              rows));
    }
  }

  private static void collect(JointType joint, Set<ContactMetal> into) {
    if (joint instanceof BracketJoint bracket) {
      for (JointFace face : bracket.faces()) {
        into.add(metal(face.bolts().grade()));
      }
    } else if (joint instanceof ClampFoot clamp) {
      into.add(metal(clamp.grade()));
    }
  }

  /** Steel bolts that are not stainless are taken as zinc-coated; bare ones do worse. */
  private static ContactMetal metal(BoltGrade grade) {
    return grade.stainless() ? ContactMetal.STAINLESS_STEEL : ContactMetal.ZINC_COATED_STEEL;
  }
}
