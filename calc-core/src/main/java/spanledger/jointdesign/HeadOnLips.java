package spanledger.jointdesign;

import spanledger.joint.BoltHead;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.SlotLips;
import spanledger.provenance.Source;
import spanledger.resistance.joint.HeadInSlot;
import spanledger.resistance.joint.LipHold;
import spanledger.resistance.joint.Metal;

/** A head that bears on the lips of its slot, measured in a face. */
final class HeadOnLips {

  private static final int LIPS = 2;

  private HeadOnLips() {}

  /** The lips under the head of a bolt. */
  static LipHold lips(JointFace face, BoltHead.InSlot head, SlotLips lips, int index, String name) {
    return new LipHold(
        name + " on lips",
        Metal.of(lips.alloy()),
        lips.thickness(),
        lips.reach(),
        overlap(head, lips),
        head.length(),
        beyond(face, head, lips, index, true),
        beyond(face, head, lips, index, false),
        LIPS,
        lips.source());
  }

  /** The head itself. */
  static HeadInSlot head(
      JointFace face, BoltHead.InSlot head, SlotLips lips, String name, Source source) {
    return new HeadInSlot(
        name + ", " + head.shape(),
        Metal.of(lips.alloy()),
        head.length(),
        overlap(head, lips),
        lips.opening(),
        head.height(),
        Math.min(face.bolts().size().diameter(), lips.opening()),
        source);
  }

  private static double overlap(BoltHead.InSlot head, SlotLips lips) {
    return Math.min(lips.reach(), (head.width() - lips.opening()) / 2);
  }

  /**
   * From a head to half way to the next head, or to the end of the extrusion. The end may lie on
   * either side, and is taken on both.
   */
  private static double beyond(
      JointFace face, BoltHead.InSlot head, SlotLips lips, int index, boolean upwards) {
    double own = alongSlot(face.bolts().places().get(index), lips);
    double nearest = Double.POSITIVE_INFINITY;
    for (FacePlace place : face.bolts().places()) {
      double away = upwards ? alongSlot(place, lips) - own : own - alongSlot(place, lips);
      if (away > 0) {
        nearest = Math.min(nearest, away / 2);
      }
    }
    double end = Double.isInfinite(nearest) ? lips.toEnd() : nearest;
    return Math.max(0, end - head.length() / 2);
  }

  private static double alongSlot(FacePlace place, SlotLips lips) {
    return lips.alongFirst() ? place.a() : place.b();
  }
}
