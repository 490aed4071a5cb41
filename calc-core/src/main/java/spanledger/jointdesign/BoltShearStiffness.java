package spanledger.jointdesign;

import java.util.List;
import spanledger.joint.FaceBolts;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.PlySide;
import spanledger.joint.SlotLips;
import spanledger.joint.stiffness.BoltInPlies;
import spanledger.joint.stiffness.BoltShearing;
import spanledger.joint.stiffness.PlyBearing;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * How stiff a bolt of a face is in shear and bearing, alike both ways: the least distances of all
 * bolts count.
 */
final class BoltShearStiffness {

  private static final CompiledProcedure TWO = BoltShearing.PROCEDURE.compile();
  private static final CompiledProcedure PLY = PlyBearing.PROCEDURE.compile();
  private static final CompiledProcedure PLANES = BoltInPlies.PROCEDURE.compile();

  /** An end or a bolt farther than so many diameters does not count. */
  private static final double FAR = 10;

  private static final double M16 = 16;

  private final JointFace face;
  private final String where;
  private final Source source;

  BoltShearStiffness(JointFace face, String where, Source source) {
    this.face = face;
    this.where = where;
    this.source = source;
  }

  /**
   * The spring. Where plies say to which part they belong, all count; else the bolt bears in the
   * first two plies, or in one ply and the lips or another such ply. Along a slot, where friction
   * holds it, it is taken as stiff as across.
   */
  FaceStiffness.Spring spring() {
    return new FaceStiffness.Spring(
        face.plies().get(0).side().isPresent() ? inPlies() : inTwo(), "k_s");
  }

  private Working inTwo() {
    Working.Feeding run = bolt(Working.of(TWO, where + ", a bolt in shear"));
    ply(run, "1", face.plies().get(0));
    if (face.plies().size() > 1) {
      ply(run, "2", face.plies().get(1));
    } else if (face.lips().isPresent()) {
      SlotLips lips = face.lips().get();
      run.given("e_b2", far(), where + ", no end of the lips near", source)
          .given("p_b2", far(), where + ", no bolt behind in the lips", source)
          .given("t_2", lips.thickness(), where + ", thickness of a lip", lips.source())
          .given("f_u2", lips.alloy().ultimateStrength(), "lips, f_u", lips.alloy().source());
    } else {
      ply(run, "2", face.plies().get(0));
    }
    return run.run();
  }

  private Working inPlies() {
    return bolt(Working.of(PLANES, where + ", a bolt in shear"))
        .given("n", face.shearPlanes(), where + ", shear planes between the plies", source)
        .with("K_1", together(PlySide.MEMBER))
        .with("K_2", together(PlySide.HOLDER))
        .run();
  }

  private Feed together(PlySide side) {
    List<Ply> own =
        face.plies().stream().filter(ply -> ply.side().filter(side::equals).isPresent()).toList();
    Feed sum = new Feed.Given(0, where + ", no ply before the first", source);
    for (Ply ply : own) {
      Working.Feeding run = Working.of(PLY, where + ", a bolt in " + ply.name()).with("K_0", sum);
      ply(diameters(run), "", ply);
      sum = run.run().feed("K");
    }
    return sum;
  }

  private Working.Feeding bolt(Working.Feeding run) {
    FaceBolts bolts = face.bolts();
    return diameters(run)
        .given(
            "f_ub", bolts.grade().ultimateStrength(), bolts.grade().name(), bolts.grade().source());
  }

  private Working.Feeding diameters(Working.Feeding run) {
    FaceBolts bolts = face.bolts();
    return run.given("d", bolts.size().diameter(), bolts.size().name(), bolts.size().source())
        .given("d_M16", M16, "diameter of an M16 bolt", bolts.size().source());
  }

  private double far() {
    return FAR * face.bolts().size().diameter();
  }

  private void ply(Working.Feeding run, String mark, Ply ply) {
    double end = far();
    double pitch = far();
    for (int i = 0; i < face.bolts().places().size(); i++) {
      for (boolean first : new boolean[] {true, false}) {
        PlyEdges edges = PlyEdges.of(ply, face.bolts().places(), i, first);
        end = Math.min(end, edges.end().orElse(far()));
        pitch = Math.min(pitch, edges.pitch().orElse(far()));
      }
    }
    run.given("e_b" + mark, end, where + ", " + ply.name() + ", least end distance", source)
        .given("p_b" + mark, pitch, where + ", " + ply.name() + ", least spacing", source)
        .given(
            (mark.isEmpty() ? "t" : "t_" + mark),
            ply.thickness(),
            where + ", " + ply.name() + ", thickness",
            source)
        .given(
            "f_u" + mark,
            ply.alloy().ultimateStrength(),
            ply.name() + ", f_u",
            ply.alloy().source());
  }
}
