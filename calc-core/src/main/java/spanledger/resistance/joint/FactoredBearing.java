package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A bolt on a plate by codes with resistance factors. */
final class FactoredBearing {

  private static final Source ADM_BEARING =
      Source.fromMemory("Aluminum Design Manual 2020", "J.3, bearing");
  private static final Source AS_BEARING = Source.fromMemory("AS/NZS 1664.1:1997", "5.3");

  static final Procedure ADM = define("adm", "Aluminum Design Manual", ADM_BEARING);
  static final Procedure AS_NZS = define("asnzs1664", "AS/NZS 1664.1", AS_BEARING);

  private static final CompiledProcedure ADM_COMPILED = ADM.compile();
  private static final CompiledProcedure AS_NZS_COMPILED = AS_NZS.compile();

  private FactoredBearing() {}

  static JointCheck check(
      CodeFigures figures, boolean adm, Bolt bolt, HoleInPlate hole, Feed force) {
    HoleInputs holes = new HoleInputs(hole);
    Working.Feeding run =
        Working.of(adm ? ADM_COMPILED : AS_NZS_COMPILED, hole.name() + ", " + bolt.name())
            .with("F_b", force)
            .given("t", holes.ofHole(hole.thickness(), "thickness"))
            .given("e_1", holes.near(hole.end(), "end distance"))
            .given("p_1", holes.near(hole.pitch(), "pitch"))
            .given("f_u", HoleInputs.ultimate(hole.metal()))
            .given("k_m", figures.figured(JointFigures.BEARING_MOST))
            .given("k_h", shape(figures, holes))
            .given("φ_j", JointFigures.phi(figures, "joint"))
            .given("Ω_j", JointFigures.omega(figures, "joint"));
    Working working = new BoltInputs(bolt).diameter(run).run();
    String clause = (adm ? ADM_BEARING : AS_BEARING).citation();
    return new JointCheck(
        working, List.of(new JointUse("η_b", "bolt on plate", clause, "F_b", "F_b_Rd")));
  }

  private static Figured shape(CodeFigures figures, HoleInputs holes) {
    return holes.hole().shape() == HoleInPlate.Shape.SLOTTED_ACROSS
        ? figures.figured(JointFigures.SLOTTED)
        : holes.ofHole(1, "round hole");
  }

  private static Procedure define(String id, String code, Source source) {
    JointSteps p = new JointSteps(id + "-bearing", "Bolt on a plate, " + code);
    Reference force = p.force("F_b", "force of the bolt on the plate");
    Reference d = p.size("d", "diameter of the bolt");
    Reference thickness = p.size("t", "thickness of the plate");
    Reference end = p.length("e_1", "end distance towards which the bolt presses, 0 if none near");
    Reference pitch = p.length("p_1", "distance to the next hole along the force, 0 if none");
    Reference ultimate = p.strength("f_u", "ultimate strength of the plate");
    Reference most = p.factor("k_m", "greatest length of metal ahead per diameter");
    Reference shape = p.factor("k_h", "factor for the shape of the hole");
    Reference phi = p.factor("φ_j", "resistance factor, joints");
    Reference omega = p.factor("Ω_j", "safety factor, joints");
    Reference cap = p.step("l_most", "metal ahead that counts at most", most.times(d), source);
    Reference ahead =
        p.step(
            "d_e",
            "metal ahead that counts",
            min(
                cap,
                choose(JointSteps.isThere(end), end, cap),
                choose(JointSteps.isThere(pitch), pitch.minus(d.over(2)), cap)),
            source);
    Reference nominal =
        p.step(
            "R_n", "nominal strength", shape.times(ahead).times(thickness).times(ultimate), source);
    Reference resistance =
        p.step("F_b_Rd", "force that may be used", phi.times(nominal).over(omega), source);
    p.use("η_b", "bolt on plate", force, resistance, source);
    return p.build();
  }
}
