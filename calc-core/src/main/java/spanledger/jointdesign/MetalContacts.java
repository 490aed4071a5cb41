package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.bolt.BoltGrade;
import spanledger.joint.BracketJoint;
import spanledger.joint.ClampFoot;
import spanledger.joint.JointFace;
import spanledger.joint.JointType;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.joint.ContactMetal;
import spanledger.resistance.joint.ContactTable;
import spanledger.resistance.joint.Surroundings;

/**
 * Advice on bolts and aluminium that touch; never a verdict.
 *
 * @param table all advice at hand
 * @param surroundings of the joints; advice for all of them is given if the job does not say
 */
public record MetalContacts(ContactTable table, Optional<Surroundings> surroundings) {

  /** What there is to say of joints. */
  List<ContactAdvice> advice(Iterable<? extends JointType> joints) {
    Set<ContactMetal> bolts = EnumSet.noneOf(ContactMetal.class);
    joints.forEach(joint -> collect(joint, bolts));
    List<ContactAdvice> advice = new ArrayList<>();
    for (ContactMetal bolt : bolts) {
      for (Surroundings around : Surroundings.values()) {
        if (surroundings.isEmpty() || surroundings.get() == around) {
          advice.addAll(table.advice(bolt, ContactMetal.ALUMINIUM, around));
        }
      }
    }
    return advice;
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
