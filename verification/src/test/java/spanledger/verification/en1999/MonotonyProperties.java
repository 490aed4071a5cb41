package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import spanledger.material.BucklingClass;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.PreparedMember;

/** Laws that hold for every member: more load, longer or thinner is never better. */
class MonotonyProperties {

  /** Rounding of a use. */
  private static final double ROUNDING = 1e-9;

  private static final String[] SHAPES = {"tube", "i", "channel", "bar"};

  private static double[] sizes(int shape, double depth, double width, double wall) {
    return shape == 3
        ? new double[] {depth, wall * 4}
        : shape == 0
            ? new double[] {depth, width, wall, wall * 1.2}
            : new double[] {depth, width, wall * 1.4, wall};
  }

  private static PreparedMember member(
      int shape, double depth, double width, double wall, double length, BucklingClass alloyClass) {
    return GivenMember.prepared(
        1.1,
        GivenMember.equalLengths(
            GivenMember.shape(SHAPES[shape], sizes(shape, depth, width, wall)),
            GivenMember.alloy(200, 245, alloyClass),
            length));
  }

  private static double[] uses(PreparedMember member, double[] effects) {
    MemberEvaluator evaluator = member.evaluator();
    evaluator.evaluate(effects);
    double[] uses = new double[member.uses().size()];
    for (int i = 0; i < uses.length; i++) {
      uses[i] = evaluator.use(i);
    }
    return uses;
  }

  private static void assertNoLess(double[] more, double[] less, PreparedMember member) {
    for (int i = 0; i < more.length; i++) {
      assertThat(more[i])
          .as(member.uses().get(i).symbol())
          .isGreaterThanOrEqualTo(less[i] * (1 - ROUNDING) - ROUNDING);
    }
  }

  @Property(tries = 400)
  void moreLoadIsNeverUsedLess(
      @ForAll @IntRange(max = 3) int shape,
      @ForAll @DoubleRange(min = 60, max = 200) double depth,
      @ForAll @DoubleRange(min = 30, max = 100) double width,
      @ForAll @DoubleRange(min = 1.5, max = 8) double wall,
      @ForAll @DoubleRange(min = 200, max = 4000) double length,
      @ForAll @DoubleRange(min = -2e4, max = 2e4) double n,
      @ForAll @DoubleRange(min = -4e3, max = 4e3) double v,
      @ForAll @DoubleRange(min = -1e5, max = 1e5) double t,
      @ForAll @DoubleRange(min = -2e6, max = 2e6) double my,
      @ForAll @DoubleRange(min = -8e5, max = 8e5) double mz,
      @ForAll @DoubleRange(min = 1.01, max = 3) double factor) {
    PreparedMember member = member(shape, depth, width, wall, length, BucklingClass.A);

    double[] once = uses(member, Effect.uniform(n, v / 2, v, t, my, mz));
    double[] more =
        uses(
            member,
            Effect.uniform(
                factor * n, factor * v / 2, factor * v, factor * t, factor * my, factor * mz));

    assertNoLess(more, once, member);
  }

  @Property(tries = 400)
  void longerIsNeverStronger(
      @ForAll @IntRange(max = 3) int shape,
      @ForAll @DoubleRange(min = 60, max = 200) double depth,
      @ForAll @DoubleRange(min = 30, max = 100) double width,
      @ForAll @DoubleRange(min = 1.5, max = 8) double wall,
      @ForAll @DoubleRange(min = 200, max = 4000) double length,
      @ForAll @DoubleRange(min = 1.01, max = 3) double factor,
      @ForAll boolean classB) {
    BucklingClass alloyClass = classB ? BucklingClass.B : BucklingClass.A;
    PreparedMember shorter = member(shape, depth, width, wall, length, alloyClass);
    PreparedMember longer = member(shape, depth, width, wall, length * factor, alloyClass);
    double[] effects = Effect.uniform(-2000, 100, 300, 0, 4e5, 1e5);

    assertNoLess(uses(longer, effects), uses(shorter, effects), shorter);
  }

  /**
   * Web and flanges of outer sizes that stay; all walls thicker by the same factor. Slim enough for
   * y to stay the stronger axis.
   */
  @Property(tries = 400)
  void thickerIsNeverWeaker(
      @ForAll @IntRange(max = 2) int shape,
      @ForAll @DoubleRange(min = 60, max = 200) double depth,
      @ForAll @DoubleRange(min = 0.3, max = 0.6) double slimness,
      @ForAll @DoubleRange(min = 0.02, max = 0.08) double thinness,
      @ForAll @DoubleRange(min = 1.01, max = 1.5) double factor,
      @ForAll @DoubleRange(min = -1, max = 1) double n,
      @ForAll @DoubleRange(min = -1, max = 1) double my,
      @ForAll @DoubleRange(min = -1, max = 1) double mz,
      @ForAll boolean classB) {
    BucklingClass alloyClass = classB ? BucklingClass.B : BucklingClass.A;
    double width = depth * slimness;
    // Thin against the width: a wall of a quarter of it would take the clear width for shear away.
    double wall = width * thinness;
    // Lengths short against the depth: a thicker open section has a smaller i_z by its geometry.
    PreparedMember thin = member(shape, depth, width, wall, 50, alloyClass);
    PreparedMember thick = member(shape, depth, width, wall * factor, 50, alloyClass);
    double[] effects = Effect.uniform(n * 5e3, 200, 500, 5e3, my * 5e5, mz * 1e5);

    assertNoLess(uses(thin, effects), uses(thick, effects), thin);
  }

  /** The neutral axis of every effective section stands still, whatever the walls. */
  @Property(tries = 300)
  void neutralAxisSettles(
      @ForAll @IntRange(max = 2) int shape,
      @ForAll @DoubleRange(min = 60, max = 250) double depth,
      @ForAll @DoubleRange(min = 30, max = 150) double width,
      @ForAll @DoubleRange(min = 0.8, max = 5) double wall) {
    PreparedMember member = member(shape, depth, width, wall, 1000, BucklingClass.A);

    for (String sense : new String[] {"M_y > 0", "M_z > 0"}) {
      double last =
          member.workings().stream()
              .filter(run -> run.procedure().procedure().name().equals("en1999-effective-bending"))
              .filter(run -> run.label().startsWith(sense))
              .reduce((first, second) -> second)
              .orElseThrow()
              .value("δ_n");
      assertThat(last).as(sense).isLessThan(1e-5);
    }
  }
}
