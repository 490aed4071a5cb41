package spanledger.resistance.joint;

import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Joints by a code with resistance factors. */
public sealed interface FactoredJoints extends JointCode permits AdmJoints, AsNzsJoints {

  /** Whether it is the Aluminum Design Manual. */
  boolean adm();

  @Override
  default String id() {
    return figures().id();
  }

  @Override
  default String title() {
    return figures().title();
  }

  @Override
  default Working strengths(Metal metal) {
    return PlateStrengths.factored(figures(), adm(), metal);
  }

  @Override
  default JointCheck boltShear(Bolt bolt, ShearPlanes planes, Feed shear) {
    return FactoredBolts.shear(figures(), adm(), bolt, planes, shear);
  }

  @Override
  default JointCheck boltTension(Bolt bolt, String name, Feed tension) {
    return FactoredBolts.tension(figures(), adm(), bolt, name, tension);
  }

  @Override
  default JointCheck boltShearAndTension(JointCheck shear, JointCheck tension) {
    return FactoredBolts.combined(adm(), shear, tension);
  }

  @Override
  default JointCheck bearing(Bolt bolt, HoleInPlate hole, Feed force) {
    return FactoredBearing.check(figures(), adm(), bolt, hole, force);
  }

  @Override
  default JointCheck distances(Bolt bolt, HoleInPlate hole) {
    String clause = adm() ? "Aluminum Design Manual, J.3.2, J.3.3" : "AS/NZS 1664.1, 5.1, 5.3";
    return Distances.factored(figures(), bolt, hole, clause);
  }

  @Override
  default JointCheck slip(
      SlipFaces faces, JointState state, Feed preload, Feed tension, Feed shear) {
    Figured phi = JointFigures.phi(figures(), "slip");
    Slip.Factors factors =
        new Slip.Factors(
            state,
            phi,
            JointFigures.omega(figures(), "slip"),
            new Figured(1, "part of the tension that the faces lose", phi.source()));
    return adm()
        ? Slip.adm(factors, faces, preload, tension, shear)
        : Slip.asNzs(factors, faces, preload, tension, shear);
  }

  @Override
  default JointCheck netSection(NetCut cut, Feed tension) {
    Source source = Source.derived("Whole net section; tempers without a notch factor");
    return Leg.net(
        strengths(cut.metal()),
        cut,
        new Figured(1, "whole net section", source),
        adm() ? "Aluminum Design Manual, D.2" : "AS/NZS 1664.1, 3.4.1",
        tension);
  }

  @Override
  default JointCheck legAtBolt(Bolt bolt, TStub stub, Feed pull) {
    Source source = JointSource.derived("Rigid plastic leg, no hardening counted");
    return TStubLeg.check(
        new TStubInput(
            strengths(stub.metal()),
            new Feed.Given(1, "no hardening counted", source),
            new Feed.Given(1, "bolt at its resistance", source),
            boltTension(bolt, stub.name(), pull)),
        stub,
        pull);
  }

  @Override
  default JointCheck headWings(Bolt bolt, HeadInSlot head, Feed pull) {
    return Head.wings(
        bolt,
        head,
        JointFigures.phi(figures(), "bolt"),
        JointFigures.omega(figures(), "bolt"),
        pull);
  }
}
