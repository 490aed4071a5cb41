package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** A bolt in shear, with long joints and packing. */
final class En1999BoltShear {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();
  private static final String TABLE = "8.5.5, Table 8.5";

  private En1999BoltShear() {}

  static JointCheck check(CodeFigures figures, Bolt bolt, ShearPlanes planes, Feed shear) {
    BoltInputs inputs = new BoltInputs(bolt);
    Working.Feeding run =
        Working.of(COMPILED, planes.name() + ", " + bolt.name())
            .with("F_v", shear)
            .given("n", planes.planes(), planes.name() + ", shear planes", planes.source())
            .with(
                "thread",
                BoltInputs.yes(
                    planes.threadInPlane(), planes.name() + ", thread in plane", planes.source()))
            .given("t_p", planes.packing(), planes.name() + ", packing", planes.source())
            .given("L_j", planes.length(), planes.name() + ", joint length", planes.source())
            .given("f_ub", inputs.ultimate())
            .given("α_s", figures.figured(JointFigures.SHEAR_SHANK))
            .given("α_t", JointFigures.thread(figures, bolt))
            .given("γ_M2", figures.figured(JointFigures.RUPTURE));
    Working working = inputs.areas(inputs.diameter(run)).run();
    return new JointCheck(
        working,
        List.of(new JointUse("η_v", "bolt in shear", "EN 1999-1-1, " + TABLE, "F_v", "F_v_Rd")));
  }

  private static Procedure define() {
    JointSteps p = new JointSteps("en1999-bolt-shear", "Bolt in shear, EN 1999-1-1");
    Reference force = p.force("F_v", "shear force on the bolt");
    Reference planes = p.factor("n", "shear planes");
    Reference thread = p.yes("thread", "thread in a shear plane");
    Reference packing = p.length("t_p", "thickness of packing, 0 if none");
    Reference length = p.length("L_j", "length of the joint along the force, 0 for one bolt");
    Reference d = p.size("d", "diameter of the bolt");
    Reference shank = p.area("A", "area of the shank");
    Reference stress = p.area("A_s", "tensile stress area");
    Reference ultimate = p.strength("f_ub", "tensile strength of the bolt");
    Reference alphaShank = p.factor("α_s", "shear per tensile strength, plane through the shank");
    Reference alphaThread = p.factor("α_t", "shear per tensile strength, plane through the thread");
    Reference partial = p.factor("γ_M2", "partial factor of rupture");
    Reference area =
        p.step(
            "A_v",
            "area in shear",
            choose(JointSteps.isYes(thread), stress, shank),
            JointSource.en1999(TABLE));
    Reference alpha =
        p.step(
            "α_v",
            "shear per tensile strength",
            choose(JointSteps.isYes(thread), alphaThread, alphaShank),
            JointSource.en1999(TABLE));
    Reference longJoint =
        p.step(
            "β_Lf",
            "factor for long joints",
            min(
                number(1),
                max(number(0.75), number(1).minus(length.minus(d.times(15)).over(d.times(200))))),
            JointSource.en1999("8.5.11, as EN 1993-1-8, 3.8"));
    Reference packed =
        p.step(
            "β_p",
            "factor for packing",
            choose(
                greater(packing, d.over(3)),
                min(number(1), d.times(9).over(d.times(8).plus(packing.times(3)))),
                number(1)),
            JointSource.en1999("8.5.7, as EN 1993-1-8, 3.6.1(12)"));
    Reference one =
        p.step(
            "F_v_1",
            "shear resistance of one plane",
            alpha.times(ultimate).times(area).over(partial),
            JointSource.en1999(TABLE));
    Reference all =
        p.step(
            "F_v_Rd",
            "shear resistance of the bolt",
            planes.times(longJoint).times(packed).times(one),
            JointSource.en1999(TABLE));
    p.use("η_v", "bolt in shear", force, all, JointSource.en1999(TABLE));
    return p.build();
  }
}
