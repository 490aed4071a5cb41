package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spanledger.joint.BoltHead;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.HoleInPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.ShearPlanes;
import spanledger.resistance.member.Working;

/** Checks the parts of one face by a code. */
final class FaceChecks {

  private final JointCode code;
  private final JointFace face;
  private final String where;
  private final Source source;
  private final Bolt bolt;
  private final List<JointCheck> checks = new ArrayList<>();
  private final List<String> open = new ArrayList<>();

  FaceChecks(JointCode code, JointFace face, String where, Source source) {
    this.code = code;
    this.face = face;
    this.where = where;
    this.source = source;
    bolt = new Bolt(face.bolts().size(), face.bolts().grade(), false);
  }

  /** Checks every bolt. */
  FaceChecks bolts(List<Working> demands) {
    for (int i = 0; i < demands.size(); i++) {
      bolt(i, demands.get(i));
    }
    return this;
  }

  private void bolt(int index, Working demand) {
    String name = where + ", bolt " + (index + 1);
    JointCheck shear =
        code.boltShear(
            bolt,
            new ShearPlanes(
                name,
                face.bolts().shearPlanes(),
                face.bolts().threadInShear(),
                face.packing(),
                lengthOfGroup(),
                source),
            demand.feed("F_v"));
    JointCheck tension = code.boltTension(bolt, name, demand.feed("F_t"));
    checks.add(shear);
    checks.add(tension);
    checks.add(code.boltShearAndTension(shear, tension));
    for (Ply ply : face.plies()) {
      bearing(name, ply, index, true, demand);
      bearing(name, ply, index, false, demand);
    }
  }

  private void bearing(String name, Ply ply, int index, boolean alongFirst, Working demand) {
    PlyEdges edges = PlyEdges.of(ply, face.bolts().places(), index, alongFirst);
    String axis = (alongFirst ? face.first() : face.second()).letter();
    checks.add(
        code.bearing(
            bolt,
            new HoleInPlate(
                name + " in " + ply.name() + " along " + axis,
                Metal.of(ply.alloy()),
                ply.thickness(),
                ply.hole(),
                HoleInPlate.Shape.NORMAL,
                OptionalDouble.of(edges.end()),
                edges.pitch(),
                OptionalDouble.of(edges.edge()),
                edges.gauge(),
                source),
            demand.feed(alongFirst ? "B_y" : "B_z")));
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

  /** Whether the heads of the bolts lie in a slot. */
  boolean inSlot() {
    return face.bolts().head() instanceof BoltHead.InSlot;
  }
}
