package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A bolt that presses on a plate, with tear-out to the end, to the next hole and to the side. */
final class En1999Bearing {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();
  private static final String TABLE = "8.5.5, Table 8.5";

  private En1999Bearing() {}

  static JointCheck check(CodeFigures figures, Bolt bolt, HoleInPlate hole, Feed force) {
    BoltInputs inputs = new BoltInputs(bolt);
    HoleInputs holes = new HoleInputs(hole);
    Working.Feeding run =
        Working.of(COMPILED, hole.name() + ", " + bolt.name())
            .with("F_b", force)
            .given("f_u", HoleInputs.ultimate(hole.metal()))
            .given("f_ub", inputs.ultimate())
            .given("k_h", shape(figures, holes))
            .given("γ_M2", figures.figured(JointFigures.RUPTURE));
    Working working = holes.all(inputs.diameter(run)).run();
    return new JointCheck(
        working,
        List.of(new JointUse("η_b", "bolt on plate", "EN 1999-1-1, " + TABLE, "F_b", "F_b_Rd")));
  }

  private static Figured shape(CodeFigures figures, HoleInputs holes) {
    return switch (holes.hole().shape()) {
      case NORMAL -> holes.ofHole(1, "round hole");
      case OVERSIZE -> figures.figured(JointFigures.OVERSIZE);
      case SLOTTED_ACROSS -> figures.figured(JointFigures.SLOTTED);
    };
  }

  private static Procedure define() {
    Source table = JointSource.en1999(TABLE);
    JointSteps p = new JointSteps("en1999-bearing", "Bolt on a plate, EN 1999-1-1");
    Reference force = p.force("F_b", "force of the bolt on the plate");
    Reference d = p.size("d", "diameter of the bolt");
    Reference thickness = p.size("t", "thickness of the plate");
    Reference hole = p.size("d_0", "diameter of the hole");
    Reference end = p.length("e_1", "end distance towards which the bolt presses, 0 if none near");
    Reference pitch = p.length("p_1", "distance to the next hole along the force, 0 if none");
    Reference edge = p.length("e_2", "edge distance at the side, 0 if none near");
    Reference gauge = p.length("p_2", "distance to the next hole across the force, 0 if none");
    Reference ultimate = p.strength("f_u", "ultimate strength of the plate");
    Reference bolt = p.strength("f_ub", "tensile strength of the bolt");
    Reference shape = p.factor("k_h", "factor for the shape of the hole");
    Reference partial = p.factor("γ_M2", "partial factor of rupture");
    Reference towardsEnd =
        p.step(
            "α_e",
            "metal ahead up to the end",
            choose(JointSteps.isThere(end), end.over(hole.times(3)), number(1)),
            table);
    Reference towardsHole =
        p.step(
            "α_p",
            "metal ahead up to the next hole",
            choose(
                JointSteps.isThere(pitch),
                pitch.over(hole.times(3)).minus(number(0.25)),
                number(1)),
            table);
    Reference alpha =
        p.step(
            "α_b",
            "factor for the metal ahead and the bolt",
            min(towardsEnd, towardsHole, bolt.over(ultimate), number(1)),
            table);
    Reference atEdge =
        p.step(
            "k_e",
            "metal at the side up to the edge",
            choose(
                JointSteps.isThere(edge),
                edge.times(2.8).over(hole).minus(number(1.7)),
                number(2.5)),
            table);
    Reference atHole =
        p.step(
            "k_p",
            "metal at the side up to the next hole",
            choose(
                JointSteps.isThere(gauge),
                gauge.times(1.4).over(hole).minus(number(1.7)),
                number(2.5)),
            table);
    Reference k =
        p.step(
            "k_1",
            "factor for the metal at the side",
            max(number(0), min(atEdge, atHole, number(2.5))),
            table);
    Reference resistance =
        p.step(
            "F_b_Rd",
            "bearing resistance",
            shape.times(k).times(alpha).times(ultimate).times(d).times(thickness).over(partial),
            JointSource.en1999(TABLE + "; k_h as EN 1993-1-8, Table 3.4, notes"));
    p.use("η_b", "bolt on plate", force, resistance, table);
    return p.build();
  }
}
