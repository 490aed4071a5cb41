package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.FaceFriction;
import spanledger.joint.JointFace;
import spanledger.joint.SlotLips;
import spanledger.joint.Tightening;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.Friction;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.Preload;
import spanledger.resistance.joint.SlipFaces;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * Slip of a face. Along a slot nothing but friction holds bolts whose heads lie in it, so slip
 * there is a matter of strength. Where something bears after a slip, holes or the lips of a slot
 * without keys, slip is a matter of use.
 */
final class FaceSlip {

  private final JointCode code;
  private final JointFace face;
  private final Bolt bolt;
  private final String where;
  private final Source source;
  private final List<JointCheck> checks = new ArrayList<>();
  private final List<String> open = new ArrayList<>();
  private Optional<Feed> greatest = Optional.empty();
  private Optional<Feed> torque = Optional.empty();

  FaceSlip(JointCode code, JointFace face, Bolt bolt, String where, Source source) {
    this.code = code;
    this.face = face;
    this.bolt = bolt;
    this.where = where;
    this.source = source;
  }

  /**
   * Under factored loads. With keys, which carry all twist, the bolts hold the shear together, with
   * the tension of the one that is pulled most taken for all; without, each holds its own share.
   *
   * @param shears a run of {@link FaceDemand}
   * @param demands of the bolts, in order
   */
  void check(Working shears, List<Working> demands) {
    Optional<Feed> preload = face.bolts().tightening().map(this::preload);
    if (face.lips().isEmpty()) {
      return;
    }
    SlotLips lips = face.lips().get();
    if (preload.isPresent() && torque.isEmpty()) {
      open.add(
          where
              + ": the job gives the preload of the bolts but not the torque, so nobody can tell"
              + " whether the slot keeps their heads from turning; give the torque in"
              + " \"tightening\"");
    }
    if (face.friction().isEmpty() || preload.isEmpty()) {
      open.add(
          where
              + ": nothing but friction holds along the slot, and the job does not say how far the"
              + " bolts are tightened, or what friction a test gave; add \"tightening\" and"
              + " \"friction\" to the face");
      return;
    }
    if (ShankAcrossSlot.bears(face)) {
      for (int i = 0; i < demands.size(); i++) {
        checks.add(
            code.slip(
                faces(", bolt " + (i + 1) + " along the slot", 1, 1),
                JointState.ULTIMATE,
                preload.get(),
                demands.get(i).feed("F_t"),
                demands.get(i).feed(lips.alongFirst() ? "B_y" : "B_z")));
      }
    } else {
      checks.add(
          code.slip(
              faces(" along the slot", face.bolts().places().size(), 1),
              JointState.ULTIMATE,
              preload.get(),
              MostPulled.of(demands),
              shears.feed(lips.alongFirst() ? "H_y" : "H_z")));
    }
  }

  private SlipFaces faces(String what, int bolts, int planes) {
    FaceFriction friction = face.friction().orElseThrow();
    return new SlipFaces(
        where + what, bolts, planes, new Friction(friction.lower(), friction.source()), source);
  }

  /**
   * Whether friction is to hold bolts in holes, or shanks off the lips of a slot without keys,
   * under loads of use: the job gives all it takes.
   */
  static boolean isHeldInUse(JointFace face) {
    return (face.lips().isEmpty() || ShankAcrossSlot.bears(face))
        && face.friction().isPresent()
        && face.bolts().tightening().isPresent();
  }

  /**
   * Under loads of use every bolt must hold its own share by friction, where {@link #isHeldInUse}.
   *
   * @param demands of the bolts, in order
   */
  void checkInUse(List<Working> demands) {
    Tightening tightening = face.bolts().tightening().orElseThrow();
    Feed preload =
        tightening instanceof Tightening.Torque given
            ? Preload.of(bolt, given).feed("F_p_min")
            : least((Tightening.Preload) tightening);
    int planes = face.lips().isPresent() ? 1 : face.shearPlanes();
    for (int i = 0; i < demands.size(); i++) {
      checks.add(
          code.slip(
              faces(", bolt " + (i + 1), 1, planes),
              JointState.SERVICE,
              preload,
              demands.get(i).feed("F_t"),
              demands.get(i).feed("F_v")));
    }
  }

  private Feed preload(Tightening tightening) {
    if (tightening instanceof Tightening.Torque given) {
      JointCheck tightened = Preload.of(bolt, given);
      checks.add(tightened);
      greatest = Optional.of(tightened.feed("F_p_max"));
      torque = Optional.of(tightened.feed("T_max"));
      return tightened.feed("F_p_min");
    }
    Tightening.Preload known = (Tightening.Preload) tightening;
    greatest =
        Optional.of(new Feed.Given(known.upper(), where + ", greatest preload", known.source()));
    return least(known);
  }

  private Feed least(Tightening.Preload known) {
    return new Feed.Given(known.lower(), where + ", least preload", known.source());
  }

  /** The greatest torque of the tool, if it is known. */
  Optional<Feed> greatestTorque() {
    return torque;
  }

  /** The greatest preload of a bolt, if it is known. */
  Optional<Feed> greatestPreload() {
    return greatest;
  }

  List<JointCheck> checks() {
    return checks;
  }

  List<String> open() {
    return open;
  }
}
