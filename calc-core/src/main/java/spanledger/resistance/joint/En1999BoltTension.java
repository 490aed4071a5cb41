package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.number;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** A bolt in tension, and in shear and tension together. */
final class En1999BoltTension {

  static final Procedure TENSION = tension();
  static final Procedure COMBINED = combined();

  private static final CompiledProcedure COMPILED = TENSION.compile();
  private static final CompiledProcedure BOTH = COMBINED.compile();
  private static final String TABLE = "8.5.5, Table 8.5";

  private En1999BoltTension() {}

  static JointCheck check(CodeFigures figures, Bolt bolt, String name, Feed tension) {
    BoltInputs inputs = new BoltInputs(bolt);
    Working working =
        Working.of(COMPILED, name + ", " + bolt.name())
            .with("F_t", tension)
            .given("A_s", inputs.stressArea())
            .given("f_ub", inputs.ultimate())
            .given(
                "k_2",
                figures.figured(
                    bolt.countersunk() ? JointFigures.TENSION_COUNTERSUNK : JointFigures.TENSION))
            .given("γ_M2", figures.figured(JointFigures.RUPTURE))
            .run();
    return new JointCheck(
        working,
        List.of(new JointUse("η_t", "bolt in tension", "EN 1999-1-1, " + TABLE, "F_t", "F_t_Rd")));
  }

  static JointCheck check(JointCheck shear, JointCheck tension) {
    Working working =
        Working.of(BOTH, shear.working().label())
            .same(shear.working(), "F_v", "F_v_Rd")
            .same(tension.working(), "F_t", "F_t_Rd")
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse(
                "η_vt", "bolt in shear and tension", "EN 1999-1-1, " + TABLE, "both", "both_Rd")));
  }

  private static Procedure tension() {
    JointSteps p = new JointSteps("en1999-bolt-tension", "Bolt in tension, EN 1999-1-1");
    Reference force = p.force("F_t", "tension in the bolt, prying included");
    Reference area = p.area("A_s", "tensile stress area");
    Reference ultimate = p.strength("f_ub", "tensile strength of the bolt");
    Reference k = p.factor("k_2", "part of the tensile strength that counts");
    Reference partial = p.factor("γ_M2", "partial factor of rupture");
    Reference resistance =
        p.step(
            "F_t_Rd",
            "tension resistance of the bolt",
            k.times(ultimate).times(area).over(partial),
            JointSource.en1999(TABLE));
    p.use("η_t", "bolt in tension", force, resistance, JointSource.en1999(TABLE));
    return p.build();
  }

  private static Procedure combined() {
    JointSteps p =
        new JointSteps("en1999-bolt-both", "Bolt in shear and tension together, EN 1999-1-1");
    Reference shear = p.force("F_v", "shear force on the bolt");
    Reference shearResistance = p.force("F_v_Rd", "shear resistance of the bolt");
    Reference tension = p.force("F_t", "tension in the bolt, prying included");
    Reference tensionResistance = p.force("F_t_Rd", "tension resistance of the bolt");
    Reference sum =
        p.step(
            "both",
            "parts of both resistances",
            shear.over(shearResistance).plus(tension.over(tensionResistance.times(1.4))),
            JointSource.en1999(TABLE));
    Reference most =
        p.step("both_Rd", "most that they may be", number(1), JointSource.en1999(TABLE));
    p.step("η_vt", "bolt in shear and tension, use", sum.over(most), JointSource.en1999(TABLE));
    return p.build();
  }
}
