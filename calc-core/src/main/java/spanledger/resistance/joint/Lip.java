package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import java.util.Arrays;
import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Interpolation;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * The lips of a slot under the pull of a head: a long cantilever plate, held at its root, pressed
 * on a length of its edge.
 *
 * <p>Under factored loads a straight hinge forms at the root over the head and 45° to both sides;
 * the least mechanism of yield lines gives more, the elastic plate less. In use the lip stays
 * elastic; the length that counts then is that of the elastic plate.
 */
final class Lip {

  /**
   * Load on length b of the edge of a cantilever plate, ν = 0.3: b/m and P over the peak moment.
   */
  private static final double[][] ELASTIC = {
    {0, 1.966},
    {0.5, 2.013},
    {1, 2.148},
    {1.5, 2.360},
    {2, 2.635},
    {2.5, 2.961},
    {3, 3.329},
    {4, 4.159},
    {5, 5.072},
    {6, 6.031},
    {7, 7.013},
    {8, 8}
  };

  static final Procedure ULTIMATE = ultimate();
  static final Procedure IN_USE = inUse();
  static final Procedure TIGHTENED = tightened();

  private static final CompiledProcedure ULTIMATE_COMPILED = ULTIMATE.compile();
  private static final CompiledProcedure IN_USE_COMPILED = IN_USE.compile();
  private static final CompiledProcedure TIGHTENED_COMPILED = TIGHTENED.compile();

  private static final String TEST = "derived from plate theory and yield lines, confirm by test";

  private Lip() {}

  static JointCheck check(Working strengths, LipHold lip, Feed pull) {
    Working working =
        sizes(Working.of(ULTIMATE_COMPILED, lip.name()), lip, strengths)
            .with("F_t", pull)
            .from(strengths, "τ_od", "τ_od")
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_lb", "lip in bending", TEST, "F_t", "F_pl"),
            new JointUse("η_lv", "lip in shear", TEST, "F_t", "F_v"),
            new JointUse("η_lbv", "lip in bending and shear", TEST, "both", "both_Rd"),
            new JointUse("η_lp", "lip under the head", TEST, "F_t", "F_p")));
  }

  static JointCheck inUse(Working strengths, LipHold lip, Feed pull) {
    Working working =
        sizes(Working.of(IN_USE_COMPILED, lip.name()), lip, strengths).with("F_t", pull).run();
    return new JointCheck(
        working, List.of(new JointUse("η_le", "lip stays elastic in use", TEST, "F_t", "F_el")));
  }

  /** Preload goes straight through lips that a plate lies on: pressure, no bending. */
  static JointCheck tightened(Working strengths, LipHold lip, Feed preload) {
    Working working =
        Working.of(TIGHTENED_COMPILED, lip.name())
            .with("F_p_max", preload)
            .given("n", of(lip, lip.lips(), "lips"))
            .given("w", of(lip, lip.overlap(), "overlap"))
            .given("b", of(lip, lip.headLength(), "length of the head"))
            .from(strengths, "f_od", "f_od")
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_lt", "lip under the head while tightened", TEST, "F_p_max", "F_p")));
  }

  private static Working.Feeding sizes(Working.Feeding run, LipHold lip, Working strengths) {
    double arm = lip.reach() - lip.overlap() / 2;
    return run.given("n", of(lip, lip.lips(), "lips"))
        .given("t", of(lip, lip.thickness(), "thickness of a lip"))
        .given("c", of(lip, lip.reach(), "reach of a lip"))
        .given("w", of(lip, lip.overlap(), "overlap"))
        .given("b", of(lip, lip.headLength(), "length of the head"))
        .given("a_1", end(lip, lip.beyondFirst(), arm))
        .given("a_2", end(lip, lip.beyondSecond(), arm))
        .from(strengths, "f_od", "f_od");
  }

  /** Far ends do not count; one that is infinitely far is written as twice the arm. */
  private static Figured end(LipHold lip, double distance, double arm) {
    return Double.isInfinite(distance)
        ? of(lip, 2 * arm, "beyond the head, no end near, written as twice the arm")
        : of(lip, distance, "beyond the head");
  }

  private static Figured of(LipHold lip, double value, String what) {
    return new Figured(value, lip.name() + ", " + what, lip.source());
  }

  /** Inputs and the arm, the same in both procedures. */
  private record Plate(
      Reference pull,
      Reference lips,
      Reference thickness,
      Reference overlap,
      Reference head,
      Reference first,
      Reference second,
      Reference strength,
      Reference arm) {

    static Plate inputs(JointSteps p) {
      Reference pull = p.force("F_t", "pull of the head on the lips");
      Reference lips = p.factor("n", "lips that share the pull");
      Reference thickness = p.size("t", "thickness of a lip");
      Reference reach = p.size("c", "reach of a lip from its root");
      Reference overlap = p.size("w", "overlap of head and lip");
      Reference head = p.size("b", "length of the head along the slot");
      Reference first = p.length("a_1", "lip beyond the head, one side");
      Reference second = p.length("a_2", "lip beyond the head, other side");
      Reference strength = p.strength("f_od", "design yield strength of the extrusion");
      Reference arm =
          p.step(
              "m",
              "arm from the root to the middle of the overlap",
              reach.minus(overlap.over(2)),
              JointSource.derived("Statics of a cantilever"));
      return new Plate(pull, lips, thickness, overlap, head, first, second, strength, arm);
    }
  }

  private static Procedure ultimate() {
    Source hinge = JointSource.derived("Yield lines of a cantilever plate");
    JointSteps p = new JointSteps("lip", "Lips of a slot under factored pull");
    Plate plate = Plate.inputs(p);
    Reference shear = p.strength("τ_od", "design yield strength of the extrusion in shear");
    Reference length =
        p.step(
            "l_eff",
            "length of the hinge at the root",
            plate.head.plus(min(plate.arm, plate.first)).plus(min(plate.arm, plate.second)),
            hinge);
    Reference bending =
        p.step(
            "F_pl",
            "pull at the plastic hinge",
            plate
                .lips
                .times(length)
                .times(plate.thickness.pow(2))
                .times(plate.strength)
                .over(plate.arm.times(4)),
            hinge);
    Reference sheared =
        p.step(
            "F_v",
            "pull that shears the lips beside the head",
            plate.lips.times(plate.head).times(plate.thickness).times(shear),
            JointSource.derived("Uniform plastic shear beside the head"));
    Reference pressed =
        p.step(
            "F_p",
            "pull at which the lips yield under the head",
            plate.lips.times(plate.head).times(plate.overlap).times(plate.strength),
            JointSource.derived("Uniform pressure up to yielding"));
    p.use("η_lb", "lip in bending", plate.pull, bending, hinge);
    p.use("η_lv", "lip in shear", plate.pull, sheared, hinge);
    p.bendingAndShear("η_lbv", "lip in bending and shear", plate.pull, bending, sheared);
    p.use("η_lp", "lip under the head", plate.pull, pressed, hinge);
    return p.build();
  }

  private static Procedure inUse() {
    Source elastic = JointSource.derived("Elastic cantilever plate of infinite length");
    JointSteps p = new JointSteps("lip-in-use", "Lips of a slot under pull in use");
    Plate plate = Plate.inputs(p);
    Reference ratio = p.step("b_m", "head per arm", plate.head.over(plate.arm), elastic);
    Reference plain =
        p.step(
            "λ_el",
            "length of the elastic plate per arm",
            choose(greater(ratio, number(8)), ratio, plain(min(ratio, number(8)))),
            elastic);
    Expression half = plain.times(plate.arm).over(2);
    Reference length =
        p.step(
            "l_el",
            "length that counts at the root",
            min(half, plate.head.over(2).plus(plate.first))
                .plus(min(half, plate.head.over(2).plus(plate.second))),
            elastic);
    Reference resistance =
        p.step(
            "F_el",
            "pull at first yielding of the root",
            plate
                .lips
                .times(length)
                .times(plate.thickness.pow(2))
                .times(plate.strength)
                .over(plate.arm.times(6)),
            elastic);
    p.use("η_le", "lip stays elastic in use", plate.pull, resistance, elastic);
    return p.build();
  }

  private static Expression plain(Expression ratio) {
    return new Interpolation(
        Arrays.stream(ELASTIC).map(row -> new Interpolation.Row(row[0], row[1])).toList(),
        ratio,
        Dimension.NONE,
        Dimension.NONE);
  }

  private static Procedure tightened() {
    Source pressure = JointSource.derived("Uniform pressure up to yielding");
    JointSteps p = new JointSteps("lip-tightened", "Lips of a slot while the bolt is tightened");
    Reference preload = p.force("F_p_max", "greatest preload of the bolt");
    Reference lips = p.factor("n", "lips that share the preload");
    Reference overlap = p.size("w", "overlap of head and lip");
    Reference head = p.size("b", "length of the head along the slot");
    Reference strength = p.strength("f_od", "design yield strength of the extrusion");
    Reference pressed =
        p.step(
            "F_p",
            "preload at which the lips yield under the head",
            lips.times(head).times(overlap).times(strength),
            pressure);
    p.use("η_lt", "lip under the head while tightened", preload, pressed, pressure);
    return p.build();
  }
}
