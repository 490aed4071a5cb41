package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * Bolts by codes with resistance factors: Aluminum Design Manual, and AS 4100 for AS/NZS 1664.1.
 */
final class FactoredBolts {

  static final Source ADM_BOLTS = Source.fromMemory("Aluminum Design Manual 2020", "J.3");
  static final Source AS_BOLTS = Source.fromMemory("AS 4100:2020", "9.2.2");

  static final Procedure ADM_SHEAR = shear("adm", "Aluminum Design Manual", ADM_BOLTS, true);
  static final Procedure AS_SHEAR = shear("asnzs1664", "AS 4100", AS_BOLTS, false);
  static final Procedure ADM_TENSION = tension("adm", "Aluminum Design Manual", ADM_BOLTS, true);
  static final Procedure AS_TENSION = tension("asnzs1664", "AS 4100", AS_BOLTS, false);
  static final Procedure COMBINED = combined();

  private static final CompiledProcedure ADM_SHEAR_COMPILED = ADM_SHEAR.compile();
  private static final CompiledProcedure AS_SHEAR_COMPILED = AS_SHEAR.compile();
  private static final CompiledProcedure ADM_TENSION_COMPILED = ADM_TENSION.compile();
  private static final CompiledProcedure AS_TENSION_COMPILED = AS_TENSION.compile();
  private static final CompiledProcedure COMBINED_COMPILED = COMBINED.compile();

  private FactoredBolts() {}

  static JointCheck shear(
      CodeFigures figures, boolean adm, Bolt bolt, ShearPlanes planes, Feed shear) {
    BoltInputs inputs = new BoltInputs(bolt);
    Source source = planes.source();
    Working.Feeding run =
        Working.of(adm ? ADM_SHEAR_COMPILED : AS_SHEAR_COMPILED, planes.name() + ", " + bolt.name())
            .with("F_v", shear)
            .given("n", planes.planes(), planes.name() + ", shear planes", source)
            .with(
                "thread",
                BoltInputs.yes(planes.threadInPlane(), planes.name() + ", thread in plane", source))
            .given("t_p", planes.packing(), planes.name() + ", packing", source)
            .given("L_j", planes.length(), planes.name() + ", joint length", source)
            .given("f_ub", inputs.ultimate())
            .given("k_v", figures.figured(JointFigures.SHEAR))
            .given("φ_b", JointFigures.phi(figures, "bolt"))
            .given("Ω_b", JointFigures.omega(figures, "bolt"));
    Working working = inputs.pitch(inputs.diameter(run)).run();
    return new JointCheck(
        working, List.of(new JointUse("η_v", "bolt in shear", clause(adm), "F_v", "F_v_Rd")));
  }

  static JointCheck tension(
      CodeFigures figures, boolean adm, Bolt bolt, String name, Feed tension) {
    BoltInputs inputs = new BoltInputs(bolt);
    Working.Feeding run =
        Working.of(adm ? ADM_TENSION_COMPILED : AS_TENSION_COMPILED, name + ", " + bolt.name())
            .with("F_t", tension)
            .given("f_ub", inputs.ultimate())
            .given("φ_b", JointFigures.phi(figures, "bolt"))
            .given("Ω_b", JointFigures.omega(figures, "bolt"));
    Working working =
        adm
            ? inputs.pitch(inputs.diameter(run)).run()
            : run.given("A_s", inputs.stressArea()).run();
    return new JointCheck(
        working, List.of(new JointUse("η_t", "bolt in tension", clause(adm), "F_t", "F_t_Rd")));
  }

  static JointCheck combined(boolean adm, JointCheck shear, JointCheck tension) {
    Working working =
        Working.of(COMBINED_COMPILED, shear.working().label())
            .same(shear.working(), "F_v", "F_v_Rd")
            .same(tension.working(), "F_t", "F_t_Rd")
            .run();
    return new JointCheck(
        working,
        List.of(new JointUse("η_vt", "bolt in shear and tension", clause(adm), "both", "both_Rd")));
  }

  private static String clause(boolean adm) {
    return (adm ? ADM_BOLTS : AS_BOLTS).citation();
  }

  private static Procedure shear(String id, String code, Source source, boolean adm) {
    JointSteps p = new JointSteps(id + "-bolt-shear", "Bolt in shear, " + code);
    Reference force = p.force("F_v", "shear force on the bolt");
    Reference planes = p.factor("n", "shear planes");
    Reference thread = p.yes("thread", "thread in a shear plane");
    Reference packing = p.length("t_p", "thickness of packing, 0 if none");
    Reference length = p.length("L_j", "length of the joint along the force, 0 for one bolt");
    Reference d = p.size("d", "diameter of the bolt");
    Reference pitch = p.size("P", "pitch of the thread");
    Reference ultimate = p.strength("f_ub", "tensile strength of the bolt");
    Reference part = p.factor("k_v", "shear per tensile strength");
    Reference phi = p.factor("φ_b", "resistance factor, bolts");
    Reference omega = p.factor("Ω_b", "safety factor, bolts");
    Reference area =
        p.step(
            "A_v",
            "area in shear",
            choose(
                JointSteps.isYes(thread),
                round(d.minus(pitch.times(adm ? 1.191 : 1.2269))),
                round(d)),
            source);
    Expression six = constant(6, Dimension.LENGTH);
    Reference packed =
        p.step(
            "k_p",
            "factor for packing",
            adm
                ? max(
                    number(0.85),
                    min(
                        number(1),
                        number(1)
                            .minus(
                                packing
                                    .minus(six)
                                    .times(constant(0.0154, Dimension.LENGTH.power(-1))))))
                : choose(atMost(packing, six), number(1), number(0.85)),
            adm
                ? Source.fromMemory("AISC 360", "J5.2, fillers")
                : Source.fromMemory("AS 4100:2020", "9.2.2.5, filler plates"));
    Reference longJoint =
        p.step(
            "k_r",
            "factor for long joints",
            max(
                number(0.75),
                min(number(1), number(1.075).minus(length.over(constant(4000, Dimension.LENGTH))))),
            Source.fromMemory("AS 4100:2020", "Table 9.2.2.1"));
    Reference nominal =
        p.step(
            "R_n",
            "nominal strength",
            planes.times(longJoint).times(packed).times(part).times(ultimate).times(area),
            source);
    Reference resistance =
        p.step("F_v_Rd", "shear that may be used", phi.times(nominal).over(omega), source);
    p.use("η_v", "bolt in shear", force, resistance, source);
    return p.build();
  }

  private static Procedure tension(String id, String code, Source source, boolean adm) {
    JointSteps p = new JointSteps(id + "-bolt-tension", "Bolt in tension, " + code);
    Reference force = p.force("F_t", "tension in the bolt, prying included");
    Reference ultimate = p.strength("f_ub", "tensile strength of the bolt");
    Reference phi = p.factor("φ_b", "resistance factor, bolts");
    Reference omega = p.factor("Ω_b", "safety factor, bolts");
    Expression area;
    if (adm) {
      Reference d = p.size("d", "diameter of the bolt");
      Reference pitch = p.size("P", "pitch of the thread");
      area = p.step("A_r", "root area of the thread", round(d.minus(pitch.times(1.191))), source);
    } else {
      area = p.area("A_s", "tensile stress area");
    }
    Reference resistance =
        p.step(
            "F_t_Rd",
            "tension that may be used",
            phi.times(ultimate).times(area).over(omega),
            source);
    p.use("η_t", "bolt in tension", force, resistance, source);
    return p.build();
  }

  private static Procedure combined() {
    Source source =
        Source.fromMemory(
            "AS 4100:2020, 9.2.2.3; taken for the Aluminum Design Manual, too", "J.3");
    JointSteps p = new JointSteps("bolt-both", "Bolt in shear and tension together");
    Reference shear = p.force("F_v", "shear force on the bolt");
    Reference shearResistance = p.force("F_v_Rd", "shear that may be used");
    Reference tension = p.force("F_t", "tension in the bolt, prying included");
    Reference tensionResistance = p.force("F_t_Rd", "tension that may be used");
    Reference sum =
        p.step(
            "both",
            "parts of both, squared",
            shear.over(shearResistance).pow(2).plus(tension.over(tensionResistance).pow(2)),
            source);
    Reference most = p.step("both_Rd", "most that they may be", number(1), source);
    p.step("η_vt", "bolt in shear and tension, use", sum.over(most), source);
    return p.build();
  }

  private static Expression round(Expression diameter) {
    return pi().times(diameter.pow(2)).over(4);
  }
}
