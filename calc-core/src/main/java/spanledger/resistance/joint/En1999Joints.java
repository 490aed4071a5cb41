package spanledger.resistance.joint;

import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * Joints by EN 1999-1-1:2007, from memory; where that is silent, by EN 1993-1-8:2005.
 *
 * @param figures partial factors and factors of bolts, for example those of id {@code en-1999-1-1}
 */
public record En1999Joints(CodeFigures figures) implements JointCode {

  @Override
  public String id() {
    return figures.id();
  }

  @Override
  public String title() {
    return figures.title();
  }

  @Override
  public Working strengths(Metal metal) {
    return PlateStrengths.en1999(figures, metal);
  }

  @Override
  public JointCheck boltShear(Bolt bolt, ShearPlanes planes, Feed shear) {
    return En1999BoltShear.check(figures, bolt, planes, shear);
  }

  @Override
  public JointCheck boltTension(Bolt bolt, String name, Feed tension) {
    return En1999BoltTension.check(figures, bolt, name, tension);
  }

  @Override
  public JointCheck boltShearAndTension(JointCheck shear, JointCheck tension) {
    return En1999BoltTension.check(shear, tension);
  }

  @Override
  public JointCheck bearing(Bolt bolt, HoleInPlate hole, Feed force) {
    return En1999Bearing.check(figures, bolt, hole, force);
  }

  @Override
  public JointCheck distances(Bolt bolt, HoleInPlate hole) {
    return Distances.en1999(figures, hole);
  }

  @Override
  public JointCheck blockTearing(BlockOfMetal block, Feed force) {
    return BlockTearing.en1999(figures, block, force);
  }

  @Override
  public JointCheck slip(
      SlipFaces faces, JointState state, Feed preload, Feed tension, Feed shear) {
    Source clause = JointSource.en1999("8.5.9.3, 8.5.9.4");
    Figured divisor =
        figures.figured(
            state == JointState.SERVICE ? JointFigures.SLIP_SERVICE : JointFigures.SLIP_ULTIMATE);
    return Slip.en1999(
        new Slip.Factors(
            state,
            new Figured(1, "no resistance factor", clause),
            divisor,
            new Figured(0.8, "part of the tension that the faces lose", clause)),
        faces,
        preload,
        tension,
        shear);
  }

  @Override
  public JointCheck netSection(NetCut cut, Feed tension) {
    return Leg.net(
        strengths(cut.metal()),
        cut,
        figures.figured(JointFigures.NET),
        "EN 1999-1-1, 6.2.3",
        tension);
  }

  @Override
  public JointCheck legAtBolt(Bolt bolt, TStub stub, Feed pull) {
    JointCheck tension = boltTension(bolt, stub.name(), pull);
    Feed elastic =
        new Feed.Given(
            bolt.grade().proofStrength() / bolt.grade().ultimateStrength(),
            "bolt grade " + bolt.grade().name() + ", proof per tensile strength",
            bolt.grade().proofSource());
    return TStubLeg.check(
        new TStubInput(strengths(stub.metal()), Hardening.of(stub.metal()), elastic, tension),
        stub,
        pull);
  }

  @Override
  public JointCheck headWings(Bolt bolt, HeadInSlot head, Feed pull) {
    Figured factor = figures.figured(JointFigures.RUPTURE);
    return Head.wings(bolt, head, new Figured(1, "whole strength", factor.source()), factor, pull);
  }
}
