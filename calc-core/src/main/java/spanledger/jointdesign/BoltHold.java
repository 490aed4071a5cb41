package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.joint.BoltHead;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.HeadInSlot;
import spanledger.resistance.joint.HeldPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Checks what holds a bolt that is pulled: the leg that it bends, its head, lips and plates. */
final class BoltHold {

  private static final CompiledProcedure PRIED = PriedBolt.PROCEDURE.compile();

  private final JointCode code;
  private final JointFace face;
  private final Bolt bolt;
  private final Source source;

  BoltHold(JointCode code, JointFace face, Bolt bolt, Source source) {
    this.code = code;
    this.face = face;
    this.bolt = bolt;
    this.source = source;
  }

  /**
   * Checks it.
   *
   * @param pried what acts on the leg, if there is one
   * @param into takes all checks but that of the bolt itself
   * @return the check of the bolt in tension, prying in it where a leg bends
   */
  JointCheck pulled(
      int index, String name, Working demand, Optional<PriedLeg> pried, List<JointCheck> into) {
    Feed tension = demand.feed("F_t");
    if (pried.isPresent() && face.leg().isPresent()) {
      JointCheck leg =
          code.legAtBolt(
              bolt,
              LegStub.of(face, face.leg().get(), index, name, source),
              pried.get().pull(index, tension));
      into.add(leg);
      tension =
          Working.of(PRIED, name)
              .with("F_B", tension)
              .with("F_Q", leg.feed("F_t"))
              .run()
              .feed("F_t");
    }
    if (face.bolts().head() instanceof BoltHead.InSlot head && face.lips().isPresent()) {
      inSlot(index, name, head, face.lips().get(), tension, into);
      punching(name, face.plies().get(0), tension, into);
    } else {
      for (Ply ply : face.plies()) {
        punching(name, ply, tension, into);
      }
    }
    return code.boltTension(bolt, name, tension);
  }

  private void punching(String name, Ply ply, Feed tension, List<JointCheck> into) {
    into.add(
        code.punching(
            bolt,
            new HeldPlate(
                name + " through " + ply.name(),
                Metal.of(ply.alloy()),
                ply.thickness(),
                OptionalDouble.empty(),
                source),
            tension));
  }

  private void inSlot(
      int index,
      String name,
      BoltHead.InSlot head,
      SlotLips lips,
      Feed tension,
      List<JointCheck> into) {
    into.add(
        code.lips(HeadOnLips.lips(face, head, lips, index, name), JointState.ULTIMATE, tension));
    into.add(code.headWings(bolt, HeadOnLips.head(face, head, lips, name, source), tension));
  }

  /**
   * Checks what holds a head in a slot while its nut is turned: the lips for the preload, which
   * goes straight through them, the wings of the head, and that the slot keeps it from turning
   * along.
   *
   * @param preload the greatest
   * @param torque the greatest on the nut, all of which is taken to reach the head; empty if it is
   *     not known
   */
  List<JointCheck> tightened(String name, Feed preload, Optional<Feed> torque) {
    if (!(face.bolts().head() instanceof BoltHead.InSlot head) || face.lips().isEmpty()) {
      return List.of();
    }
    SlotLips lips = face.lips().get();
    HeadInSlot held = HeadOnLips.head(face, head, lips, name, source);
    List<JointCheck> checks = new ArrayList<>();
    checks.add(code.lipsWhileTightened(HeadOnLips.lips(face, head, lips, 0, name), preload));
    checks.add(code.headWings(bolt, held, preload));
    torque.ifPresent(turned -> checks.add(code.headTurning(held, turned)));
    return checks;
  }
}
