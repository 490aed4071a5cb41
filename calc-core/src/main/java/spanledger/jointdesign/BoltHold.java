package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.joint.BoltHead;
import spanledger.joint.BracketLeg;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.HeadInSlot;
import spanledger.resistance.joint.HeldPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.LipHold;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.TStub;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Checks what holds a bolt that is pulled: the leg that it bends, its head, lips and plates. */
final class BoltHold {

  private static final double FILLET = 0.8;

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
   * @param into takes all checks but that of the bolt itself
   * @return the check of the bolt in tension, prying in it where a leg bends
   */
  JointCheck pulled(int index, String name, Working demand, List<JointCheck> into) {
    Feed tension = demand.feed("F_t");
    if (face.leg().isPresent()) {
      JointCheck leg =
          code.legAtBolt(bolt, stub(index, name, face.leg().get()), demand.feed("F_t"));
      into.add(leg);
      tension = leg.feed("F_t");
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
    Metal metal = Metal.of(lips.alloy());
    into.add(code.lips(lipHold(index, name, head, lips), JointState.ULTIMATE, tension));
    into.add(
        code.headWings(
            bolt,
            new HeadInSlot(
                name + ", " + head.shape(),
                metal,
                head.length(),
                overlap(head, lips),
                lips.opening(),
                head.height(),
                Math.min(bolt.size().diameter(), lips.opening()),
                source),
            tension));
  }

  /**
   * Checks the lips for the preload of tightening, which goes straight through them.
   *
   * @param preload the greatest
   */
  Optional<JointCheck> tightened(String name, Feed preload) {
    return face.bolts().head() instanceof BoltHead.InSlot head && face.lips().isPresent()
        ? Optional.of(code.lipsWhileTightened(lipHold(0, name, head, face.lips().get()), preload))
        : Optional.empty();
  }

  private LipHold lipHold(int index, String name, BoltHead.InSlot head, SlotLips lips) {
    return new LipHold(
        name + " on lips",
        Metal.of(lips.alloy()),
        lips.thickness(),
        lips.reach(),
        overlap(head, lips),
        head.length(),
        beyond(index, true, head, lips),
        beyond(index, false, head, lips),
        2,
        lips.source());
  }

  private static double overlap(BoltHead.InSlot head, SlotLips lips) {
    return Math.min(lips.reach(), (head.width() - lips.opening()) / 2);
  }

  /**
   * From a head to half way to the next head, or to the end of the extrusion. The end may lie on
   * either side, and is taken on both.
   */
  private double beyond(int index, boolean upwards, BoltHead.InSlot head, SlotLips lips) {
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

  private TStub stub(int index, String name, BracketLeg line) {
    Ply ply = face.plies().get(0);
    FacePlace at = face.bolts().places().get(index);
    double own = line.acrossFirst() ? at.a() : at.b();
    double low = line.acrossFirst() ? ply.from().a() : ply.from().b();
    double high = line.acrossFirst() ? ply.to().a() : ply.to().b();
    return new TStub(
        name + " at " + ply.name(),
        Metal.of(ply.alloy()),
        ply.thickness(),
        Math.abs(own - line.at()) - FILLET * line.radius(),
        own < line.at() ? own - low : high - own,
        alongRoot(index, line, ply, true),
        alongRoot(index, line, ply, false),
        source);
  }

  private double alongRoot(int index, BracketLeg line, Ply ply, boolean upwards) {
    FacePlace at = face.bolts().places().get(index);
    double own = line.acrossFirst() ? at.b() : at.a();
    double end =
        line.acrossFirst()
            ? (upwards ? ply.to().b() : ply.from().b())
            : (upwards ? ply.to().a() : ply.from().a());
    double nearest = Math.abs(end - own);
    for (FacePlace place : face.bolts().places()) {
      double other = line.acrossFirst() ? place.b() : place.a();
      double away = upwards ? other - own : own - other;
      if (away > 0) {
        nearest = Math.min(nearest, away / 2);
      }
    }
    return nearest;
  }
}
