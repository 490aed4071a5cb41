package spanledger.jointdesign;

import java.util.List;
import spanledger.joint.JointFace;
import spanledger.joint.SlotLips;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.ShankOnLip;
import spanledger.resistance.member.Working;

/** Shear across a slot: without keys the shanks of the bolts bear on the edges of the lips. */
final class ShankAcrossSlot {

  private ShankAcrossSlot() {}

  /** Whether shanks of bolts are what bears across a slot. */
  static boolean bears(JointFace face) {
    return face.lips().isPresent() && face.keys().isEmpty();
  }

  /**
   * The check of a bolt; none where no shank bears.
   *
   * @param demand of the bolt
   */
  static List<JointCheck> check(JointCode code, JointFace face, String name, Working demand) {
    if (!bears(face)) {
      return List.of();
    }
    SlotLips lips = face.lips().orElseThrow();
    ShankOnLip shank =
        new ShankOnLip(
            name + " on a lip",
            Metal.of(lips.alloy()),
            face.bolts().size().diameter(),
            lips.thickness(),
            lips.opening(),
            lips.source());
    return List.of(code.lipEdge(shank, demand.feed(lips.alongFirst() ? "B_z" : "B_y")));
  }
}
