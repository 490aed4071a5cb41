package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * A hammer head or nut in a slot: its two wings bend and shear; the slot's sides keep it turned.
 */
final class Head {

  static final Procedure WINGS = wings();
  static final Procedure TURNING = turning();

  private static final CompiledProcedure WINGS_COMPILED = WINGS.compile();
  private static final CompiledProcedure TURNING_COMPILED = TURNING.compile();
  private static final String TEST = "derived from mechanics, confirm by test";

  private Head() {}

  /**
   * The wings under the pull.
   *
   * @param factor φ on the bolt's proof strength
   * @param divisor γ or Ω on it
   */
  static JointCheck wings(Bolt bolt, HeadInSlot head, Figured factor, Figured divisor, Feed pull) {
    Working working =
        Working.of(WINGS_COMPILED, head.name() + ", " + bolt.name())
            .with("F_t", pull)
            .given("b", of(head, head.length(), "length of the head"))
            .given("h", of(head, head.height(), "height of the head"))
            .given("w", of(head, head.overlap(), "overlap"))
            .given("s", of(head, head.opening(), "opening of the slot"))
            .given("k", of(head, head.neck(), "width of the neck"))
            .given("f_yb", new BoltInputs(bolt).proof())
            .given("φ_b", factor)
            .given("γ_b", divisor)
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_hb", "wings of the head in bending", TEST, "F_t", "F_hb"),
            new JointUse("η_hv", "wings of the head in shear", TEST, "F_t", "F_hv"),
            new JointUse("η_hbv", "wings in bending and shear", TEST, "both", "both_Rd")));
  }

  static JointCheck turning(Working slotStrengths, HeadInSlot head, Feed torque) {
    Working working =
        Working.of(TURNING_COMPILED, head.name())
            .with("T", torque)
            .given("b", of(head, head.length(), "length of the head"))
            .given("h", of(head, head.height(), "height of the head"))
            .from(slotStrengths, "f_od", "f_od")
            .run();
    return new JointCheck(
        working, List.of(new JointUse("η_hT", "head turned out of its place", TEST, "T", "T_h")));
  }

  private static Figured of(HeadInSlot head, double value, String what) {
    return new Figured(value, head.name() + ", " + what, head.source());
  }

  private static Procedure wings() {
    Source statics = JointSource.derived("Plastic bending of the wings of a head");
    JointSteps p = new JointSteps("head", "Head in a slot: wings under the pull");
    Reference pull = p.force("F_t", "pull of the bolt");
    Reference length = p.size("b", "length of the head along the slot");
    Reference height = p.size("h", "height of the head");
    Reference overlap = p.size("w", "overlap of head and lip, each side");
    Reference opening = p.size("s", "opening between the lips");
    Reference neck = p.size("k", "width of the neck across the slot");
    Reference proof = p.strength("f_yb", "0.2 % proof strength of the bolt");
    Reference factor = p.factor("φ_b", "resistance factor, bolts");
    Reference divisor = p.factor("γ_b", "partial or safety factor, bolts");
    Reference arm =
        p.step(
            "m_h",
            "arm from the neck to the middle of the overlap",
            opening.plus(overlap).minus(neck).over(2),
            statics);
    Reference strength =
        p.step(
            "f_yd",
            "design yield strength of the bolt",
            factor.times(proof).over(divisor),
            statics);
    Reference bending =
        p.step(
            "F_hb",
            "pull at hinges in both wings",
            length.times(height.pow(2)).times(strength).over(arm.times(2)),
            statics);
    Reference shear =
        p.step(
            "F_hv",
            "pull that shears both wings",
            length.times(height).times(strength).times(2).over(sqrt(number(3))),
            statics);
    p.use("η_hb", "wings of the head in bending", pull, bending, statics);
    p.use("η_hv", "wings of the head in shear", pull, shear, statics);
    p.bendingAndShear("η_hbv", "wings in bending and shear", pull, bending, shear);
    return p.build();
  }

  private static Procedure turning() {
    Source statics = JointSource.derived("Two blocks of pressure on the sides of the slot");
    JointSteps p = new JointSteps("head-turning", "Head in a slot: held against turning");
    Reference torque = p.moment("T", "torque on the head while the nut is turned");
    Reference length = p.size("b", "length of the head along the slot");
    Reference height = p.size("h", "height of the head");
    Reference strength = p.strength("f_od", "design yield strength of the extrusion");
    Reference resistance =
        p.step(
            "T_h",
            "torque at which the sides of the slot yield",
            strength.times(height).times(length.pow(2)).over(4),
            statics);
    p.step("η_hT", "head turned out of its place, use", torque.over(resistance), statics);
    return p.build();
  }
}
