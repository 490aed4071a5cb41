package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.HoleInPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Checks the plies of a face: at each bolt, as blocks, and where holes weaken them. */
final class PlyChecks {

  private final JointCode code;
  private final JointFace face;
  private final String where;
  private final Source source;
  private final Bolt bolt;
  private final Optional<PlyStack> stack;

  PlyChecks(JointCode code, JointFace face, String where, Source source, Bolt bolt) {
    this.code = code;
    this.face = face;
    this.where = where;
    this.source = source;
    this.bolt = bolt;
    stack = PlyStack.of(face, where, source);
  }

  /** The forces along the first and the second axis of the face. */
  private record Both(Feed first, Feed second) {

    Feed along(boolean alongFirst) {
      return alongFirst ? first : second;
    }
  }

  /** How a bolt is sheared. */
  Shear shear(String name, Working demand) {
    Feed all = demand.feed("F_v");
    return stack
        .map(own -> new Shear(1, own.planeShear(name, all).feed("F_p")))
        .orElseGet(() -> new Shear(face.shearPlanes(), all));
  }

  /**
   * How a bolt is sheared.
   *
   * @param planes how many planes share the force
   * @param force in all of them
   */
  record Shear(int planes, Feed force) {}

  /** What one ply bears of two forces: all, unless it is known which plies belong together. */
  private Both onPly(int ply, String name, Feed first, Feed second) {
    if (stack.isEmpty()) {
      return new Both(first, second);
    }
    Working own = stack.get().force(ply, name, first, second);
    return new Both(own.feed("P_1"), own.feed("P_2"));
  }

  /** A bolt on the holes of all plies. */
  List<JointCheck> bearing(String name, int index, Working demand) {
    List<JointCheck> checks = new ArrayList<>();
    for (int i = 0; i < face.plies().size(); i++) {
      Both force = onPly(i, name, demand.feed("B_y"), demand.feed("B_z"));
      for (boolean alongFirst : new boolean[] {true, false}) {
        Ply ply = face.plies().get(i);
        PlyEdges edges = PlyEdges.of(ply, face.bolts().places(), index, alongFirst);
        checks.add(
            code.bearing(
                bolt, hole(name, ply, edges, edges.gauge(), alongFirst), force.along(alongFirst)));
        OptionalDouble apart = PlyEdges.apart(ply, face.bolts().places(), index, alongFirst);
        checks.add(code.distances(bolt, hole(name, ply, edges, apart, alongFirst)));
      }
    }
    return checks;
  }

  private HoleInPlate hole(
      String name, Ply ply, PlyEdges edges, OptionalDouble gauge, boolean alongFirst) {
    return new HoleInPlate(
        name + " in " + ply.name() + " along " + letter(alongFirst),
        Metal.of(ply.alloy()),
        ply.thickness(),
        ply.hole(),
        HoleInPlate.Shape.NORMAL,
        edges.end(),
        edges.pitch(),
        edges.edge(),
        gauge,
        source);
  }

  /**
   * Blocks and net sections; where keys carry the shear across the slot, bolts tear along it only.
   *
   * @param shears a run of {@link FaceDemand}
   */
  List<JointCheck> torn(Working shears) {
    List<JointCheck> checks = new ArrayList<>();
    for (int i = 0; i < face.plies().size(); i++) {
      Ply ply = face.plies().get(i);
      Both force = onPly(i, where, shears.feed("H_y"), shears.feed("H_z"));
      for (boolean alongFirst : new boolean[] {true, false}) {
        boolean byKeys = face.keys().map(k -> k.bearsAlongFirst() == alongFirst).orElse(false);
        if (!byKeys) {
          torn(ply, alongFirst, force.along(alongFirst), checks);
        }
      }
    }
    return checks;
  }

  private void torn(Ply ply, boolean alongFirst, Feed force, List<JointCheck> into) {
    String name = where + ", " + ply.name() + " along " + letter(alongFirst);
    PlyBlock.of(name, ply, face.bolts().places(), alongFirst, source)
        .ifPresent(block -> into.add(code.blockTearing(block, force)));
    into.add(
        code.netSection(
            PlyNet.of(name, ply, face.bolts().places(), alongFirst, source).cut(), force));
  }

  private String letter(boolean first) {
    return (first ? face.first() : face.second()).letter();
  }
}
