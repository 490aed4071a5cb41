package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The checks of joints by a standard. Implementations are immutable.
 *
 * <p>Forces are never negative; give sizes of forces. Each force is a {@link Feed}: a given number,
 * or a step of the run that worked it out. Preload is worked out by {@link Preload}.
 */
public sealed interface JointCode permits En1999Joints, FactoredJoints {

  /** A short name, for example {@code en-1999-1-1}. */
  String id();

  /** The standard, as people cite it. */
  String title();

  /** Its figures, as they are used. */
  CodeFigures figures();

  /** Design strengths of a metal: steps f_od, f_ud, τ_od. */
  Working strengths(Metal metal);

  /**
   * A bolt in shear.
   *
   * @param shear on the bolt, all its planes together, N
   */
  JointCheck boltShear(Bolt bolt, ShearPlanes planes, Feed shear);

  /**
   * A bolt in tension.
   *
   * @param name of the place
   * @param tension prying included, preload not, N
   */
  JointCheck boltTension(Bolt bolt, String name, Feed tension);

  /**
   * A bolt in shear and tension together.
   *
   * @param shear from {@link #boltShear} of the same bolt
   * @param tension from {@link #boltTension} of the same bolt
   */
  JointCheck boltShearAndTension(JointCheck shear, JointCheck tension);

  /**
   * A bolt on the wall of a hole, tear-out included.
   *
   * @param force of the bolt on this plate, N
   */
  JointCheck bearing(Bolt bolt, HoleInPlate hole, Feed force);

  /** Least and, where the code has them, greatest distances of a hole: geometry, not strength. */
  JointCheck distances(Bolt bolt, HoleInPlate hole);

  /**
   * A block torn out of a plate.
   *
   * @param force of all bolts on the block, N
   */
  JointCheck blockTearing(BlockOfMetal block, Feed force);

  /**
   * Faces held by preload, clamp feet included.
   *
   * @param state under loads of use or factored loads
   * @param preload least preload of one bolt, N, for example step F_p_min of {@link Preload}
   * @param tension on one bolt from outside, N
   * @param shear along the faces, all bolts together, N
   */
  JointCheck slip(SlipFaces faces, JointState state, Feed preload, Feed tension, Feed shear);

  /** Tension in a plate with holes. */
  JointCheck netSection(NetCut cut, Feed tension);

  /**
   * A leg at a bolt in tension: least of the mechanisms of a T-stub. Its step F_t is the tension in
   * the bolt with prying, its step Q the prying force.
   *
   * @param bolt in the leg
   * @param pull on the leg at this bolt, without prying, N
   */
  JointCheck legAtBolt(Bolt bolt, TStub stub, Feed pull);

  /**
   * The wings of a hammer head, or the sides of a nut, in a slot.
   *
   * @param pull of the bolt, N
   */
  JointCheck headWings(Bolt bolt, HeadInSlot head, Feed pull);

  /**
   * A head in a slot, held against turning by the slot's sides.
   *
   * @param torque on the head while the nut is turned, N·mm
   */
  default JointCheck headTurning(HeadInSlot head, Feed torque) {
    return Head.turning(strengths(head.slotMetal()), head, torque);
  }

  /**
   * A head or nut pulled through a plate.
   *
   * @param tension in the bolt, prying included, N
   */
  default JointCheck punching(Bolt bolt, HeldPlate plate, Feed tension) {
    return Punching.check(strengths(plate.metal()), bolt, plate, tension);
  }

  /**
   * The lips of a slot under the pull of a head.
   *
   * @param state in use the lips stay elastic; under factored loads hinges may form
   * @param pull of the bolt, N
   */
  default JointCheck lips(LipHold lip, JointState state, Feed pull) {
    Working strengths = strengths(lip.metal());
    return state == JointState.SERVICE
        ? Lip.inUse(strengths, lip, pull)
        : Lip.check(strengths, lip, pull);
  }

  /**
   * Lips that a plate lies flat on, while the bolt is tightened: preload goes straight through
   * them. Lips that no plate covers bend; give {@link #lips} the preload then.
   *
   * @param preload greatest preload of the bolt, N, for example step F_p_max of {@link Preload}
   */
  default JointCheck lipsWhileTightened(LipHold lip, Feed preload) {
    return Lip.tightened(strengths(lip.metal()), lip, preload);
  }

  /**
   * The edge of a lip that the shank of a bolt is pushed against, across the slot.
   *
   * @param force of the bolt, N
   */
  default JointCheck lipEdge(ShankOnLip shank, Feed force) {
    return LipEdge.check(strengths(shank.metal()), shank, force);
  }

  /**
   * A key or tooth in a slot.
   *
   * @param force on the key, N
   */
  default JointCheck key(KeyInSlot key, Feed force) {
    return Key.check(strengths(key.keyMetal()), strengths(key.slotMetal()), key, force);
  }

  /** A wall behind a joint, bent between its webs by a row of loads. */
  default JointCheck wall(WallBetweenWebs wall) {
    return Wall.check(strengths(wall.metal()), wall);
  }

  /**
   * A plate leg of a bracket at a line.
   *
   * @param state in use the leg stays elastic; under factored loads a hinge line may form
   */
  default JointCheck leg(PlateLeg leg, JointState state, LegForces forces) {
    Working strengths = strengths(leg.metal());
    return state == JointState.SERVICE
        ? Leg.inUse(strengths, leg, forces)
        : Leg.check(strengths, leg, forces);
  }
}
