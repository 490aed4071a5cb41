package spanledger.verification.joint;

import java.util.List;
import java.util.OptionalDouble;
import spanledger.bolt.BoltTable;
import spanledger.provenance.Source;
import spanledger.resistance.joint.AdmJoints;
import spanledger.resistance.joint.AsNzsJoints;
import spanledger.resistance.joint.BlockOfMetal;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.En1999Joints;
import spanledger.resistance.joint.HeadInSlot;
import spanledger.resistance.joint.HoleInPlate;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.KeyInSlot;
import spanledger.resistance.joint.LipHold;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.PlateLeg;
import spanledger.resistance.joint.ShankOnLip;
import spanledger.resistance.joint.ShearPlanes;
import spanledger.resistance.joint.TStub;
import spanledger.resistance.joint.WallBetweenWebs;
import spanledger.resistance.member.Feed;
import spanledger.tables.BoltTables;
import spanledger.tables.MemberRuleTables;

/** Parts of joints to try checks on. */
final class Parts {

  static final Source GIVEN = Source.declared("This test");
  static final BoltTable BOLTS = BoltTables.standard();

  private Parts() {}

  static List<JointCode> codes() {
    return List.of(
        new En1999Joints(MemberRuleTables.figures("en-1999-1-1")),
        new AdmJoints(MemberRuleTables.figures("adm-2020-lrfd")),
        new AdmJoints(MemberRuleTables.figures("adm-2020-asd")),
        new AsNzsJoints(MemberRuleTables.figures("as-nzs-1664.1")));
  }

  static Bolt bolt(String size, String grade) {
    return Bolt.hexagon(BOLTS.size(size).orElseThrow(), BOLTS.grade(grade).orElseThrow());
  }

  static Metal metal(double proof, double ultimate) {
    return new Metal("alloy", proof, ultimate, 70000, OptionalDouble.of(0.08), GIVEN);
  }

  static Feed force(double newtons) {
    return new Feed.Given(newtons, "force", GIVEN);
  }

  static ShearPlanes planes(int planes, boolean thread, double packing, double length) {
    return new ShearPlanes("bolt", planes, thread, packing, length, GIVEN);
  }

  /** A hole of 9 mm; a distance of 0 says that nothing is near. */
  static HoleInPlate hole(
      Metal metal, double thickness, double end, double pitch, double edge, double gauge) {
    return new HoleInPlate(
        "hole",
        metal,
        thickness,
        9,
        HoleInPlate.Shape.NORMAL,
        near(end),
        near(pitch),
        near(edge),
        near(gauge),
        GIVEN);
  }

  private static OptionalDouble near(double distance) {
    return distance == 0 ? OptionalDouble.empty() : OptionalDouble.of(distance);
  }

  static BlockOfMetal block(Metal metal, double tension, double shear, boolean eccentric) {
    return new BlockOfMetal(
        "block", metal, tension, tension + 45, shear, shear + 90, eccentric, GIVEN);
  }

  static LipHold lip(
      Metal metal, double thickness, double head, double beyondFirst, double beyondSecond) {
    return new LipHold("lip", metal, thickness, 6, 4, head, beyondFirst, beyondSecond, 2, GIVEN);
  }

  static ShankOnLip shank(Metal metal, double thickness) {
    return new ShankOnLip("shank", metal, 8, thickness, 8.5, GIVEN);
  }

  /** A wall with two loads side by side, a sixth of its width from the webs. */
  static WallBetweenWebs wall(
      Metal metal, double thickness, double width, boolean clamped, Feed force) {
    WallBetweenWebs.Load load = new WallBetweenWebs.Load("bolt", force, 1, width / 6, 20, width);
    return new WallBetweenWebs(
        "wall", metal, width, thickness, clamped, List.of(load, load), GIVEN);
  }

  static HeadInSlot head(Metal metal, double height) {
    return new HeadInSlot("head", metal, 12, 4, 8.5, height, 8, GIVEN);
  }

  static KeyInSlot key(Metal key, Metal slot, double thickness) {
    return new KeyInSlot("key", key, slot, 2.5, 3, 40, thickness, GIVEN);
  }

  static PlateLeg leg(Metal metal, double thickness, double holes) {
    return new PlateLeg("leg", metal, thickness, 40, holes, GIVEN);
  }

  static TStub stub(Metal metal, double thickness, double toRoot, double toEdge, double along) {
    return new TStub("leg", metal, thickness, toRoot, toEdge, along, along, GIVEN);
  }
}
