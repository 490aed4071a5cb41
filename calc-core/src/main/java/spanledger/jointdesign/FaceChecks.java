package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.KeyInSlot;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.ShearPlanes;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Checks the parts of one face by a code. */
final class FaceChecks {

  private static final CompiledProcedure KEY = KeyDemand.PROCEDURE.compile();
  private static final CompiledProcedure FACE = FaceDemand.PROCEDURE.compile();

  private final JointCode code;
  private final JointFace face;
  private final String where;
  private final Source source;
  private final Bolt bolt;
  private final BoltHold hold;
  private final PlyChecks plies;
  private final List<JointCheck> checks = new ArrayList<>();
  private final List<String> open = new ArrayList<>();

  FaceChecks(JointCode code, JointFace face, String where, Source source) {
    this.code = code;
    this.face = face;
    this.where = where;
    this.source = source;
    bolt = new Bolt(face.bolts().size(), face.bolts().grade(), false);
    hold = new BoltHold(code, face, bolt, source);
    plies = new PlyChecks(code, face, where, source, bolt);
  }

  /**
   * Checks everything.
   *
   * @param bed the pieces of the bed
   * @param contacts what each of them presses
   */
  FaceChecks all(
      Working forces,
      List<Working> demands,
      List<Working> keys,
      Optional<PriedLeg> pried,
      List<ContactPoint> bed,
      List<Working> contacts) {
    List<Feed> pulls = new ArrayList<>();
    for (int i = 0; i < demands.size(); i++) {
      pulls.add(bolt(i, demands.get(i), pried));
    }
    face.wall()
        .ifPresent(
            wall ->
                checks.addAll(new WallChecks(code, face, wall, where).check(pulls, bed, contacts)));
    face.keys().ifPresent(own -> keys(keys));
    pried.ifPresent(
        leg -> checks.addAll(new LegChecks(code, face, where, source).check(forces, leg)));
    Working shears = Working.of(FACE, where).same(forces, "V_y", "V_z").run();
    checks.addAll(plies.torn(shears));
    FaceSlip slip = new FaceSlip(code, face, bolt, where, source);
    slip.check(shears, demands);
    checks.addAll(slip.checks());
    slip.greatestPreload()
        .ifPresent(
            preload ->
                checks.addAll(
                    hold.tightened(
                        where + ", bolt while it is tightened", preload, slip.greatestTorque())));
    open.addAll(slip.open());
    return this;
  }

  /** Says that the leg of an angle bends away nobody knows where. */
  FaceChecks legUnknown() {
    open.add(
        where
            + ": neither the bending of this leg nor prying at its bolts is checked, as the job does"
            + " not say where the leg bends away from the other one; add \"leg\" to the face");
    return this;
  }

  /** Checks what must hold under loads of use. */
  FaceChecks inUse(List<Working> demands) {
    if (FaceSlip.isHeldInUse(face)) {
      FaceSlip slip = new FaceSlip(code, face, bolt, where, source);
      slip.checkInUse(demands);
      checks.addAll(slip.checks());
    }
    return this;
  }

  /** Gives the pull of the bolt, prying in it. */
  private Feed bolt(int index, Working demand, Optional<PriedLeg> pried) {
    String name = where + ", bolt " + (index + 1);
    PlyChecks.Shear sheared = plies.shear(name, demand);
    JointCheck shear =
        code.boltShear(
            bolt,
            new ShearPlanes(
                name,
                sheared.planes(),
                face.bolts().threadInShear(),
                face.packing(),
                lengthOfGroup(),
                source),
            sheared.force());
    JointCheck tension = hold.pulled(index, name, demand, pried, checks);
    checks.add(shear);
    checks.add(tension);
    checks.add(code.boltShearAndTension(shear, tension));
    checks.addAll(plies.bearing(name, index, demand));
    checks.addAll(ShankAcrossSlot.check(code, face, name, demand));
    return tension.feed("F_t");
  }

  private void keys(List<Working> bearings) {
    var own = face.keys().orElseThrow();
    if (own.sideDepth(face.lips()).isEmpty()) {
      open.add(
          where
              + ": the job does not say how deep the side of the slot is on which the keys press;"
              + " add \"sideDepth\" to the keys (they are checked as if it were as deep as they are)");
    }
    for (int i = 0; i < own.places().size(); i++) {
      String name = where + ", key " + (i + 1);
      Working demand =
          Working.of(KEY, name)
              .from(bearings.get(2 * i), "B_1", "B")
              .from(bearings.get(2 * i + 1), "B_2", "B")
              .run();
      checks.add(
          code.key(
              new KeyInSlot(
                  name,
                  Metal.of(own.alloy()),
                  Metal.of(own.slotAlloy()),
                  own.depth(),
                  own.sideDepth(face.lips()).orElse(own.depth()),
                  own.length(),
                  own.thickness(),
                  source),
              demand.feed("F_k")));
    }
  }

  /** From the first to the last bolt along the longer side of the group, on the safe side, mm. */
  private double lengthOfGroup() {
    double length = 0;
    for (FacePlace one : face.bolts().places()) {
      for (FacePlace other : face.bolts().places()) {
        length = Math.max(length, Math.abs(one.a() - other.a()));
        length = Math.max(length, Math.abs(one.b() - other.b()));
      }
    }
    return length;
  }

  /** What was checked, in order. */
  List<JointCheck> checks() {
    return checks;
  }

  /** What cannot be checked, and what to add. */
  List<String> open() {
    return open;
  }
}
