package spanledger.verification.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import spanledger.action.EquilibriumRule;
import spanledger.action.LeadingAction;
import spanledger.action.RuleSet;
import spanledger.frame.Vector;
import spanledger.overturning.Standing;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.overturning.Wind;

/** What must hold for every table, whatever its sizes. */
class StandingProperties {

  private static final RuleSet LOADS = Table.rules(0.002, 1500, 0.3, 500, 0.01);

  private static final EquilibriumRule[] RULES = {
    Table.rule(LeadingAction.NONE, true),
    Table.rule(LeadingAction.FLOOR, true),
    Table.rule(LeadingAction.GUARDRAIL, false),
    Table.rule(LeadingAction.WIND, false)
  };

  private static Standing windy(Table table, double friction) {
    return new Standing(
        false,
        Optional.of(new Standing.Friction(friction, Table.INVENTED)),
        List.of(),
        Optional.of(
            new Wind(
                0.0003,
                Table.INVENTED,
                Optional.of(new Wind.Screen(900, 0.3)),
                80,
                List.of(
                    new Wind.Exposure(
                        "box",
                        table.at(300, 200, 700),
                        2e5,
                        Optional.of(table.towards(0.6, 0.8)),
                        false)))),
        new Standing.Ground(0.03, table.towards(0.8, -0.6)),
        Map.of());
  }

  /** Turning the structure, its wind areas and its ground by any angle changes nothing. */
  @Property(tries = 25)
  void turningChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
      @ForAll @DoubleRange(min = 0, max = 600) double inset,
      @ForAll @DoubleRange(min = 500, max = 3000) double width) {
    Table plain = new Table(2500, width, inset, 1200, 1000, 0.0003, 0);
    Table turned = plain.turned(angle);

    StandingResult one = plain.stands(LOADS, windy(plain, 0.4), RULES);
    StandingResult two = turned.stands(LOADS, windy(turned, 0.4), RULES);

    assertThat(two.leastFactor()).isCloseTo(one.leastFactor(), within(1e-6 * one.leastFactor()));
    double friction = one.worstSliding().orElseThrow().friction();
    assertThat(two.worstSliding().orElseThrow().friction())
        .isCloseTo(friction, within(1e-6 * friction));
    assertThat(two.ballast())
        .isCloseTo(one.ballast(), within(1e-5 * Math.abs(one.ballast()) + 1e-6));
  }

  /** The ballast that is said to be needed, put where it is said, makes the worst factor just 1. */
  @Property(tries = 25)
  void ballastThatIsNeededIsJustEnough(
      @ForAll @DoubleRange(min = 0, max = 600) double inset,
      @ForAll @DoubleRange(min = 700, max = 3000) double width,
      @ForAll @DoubleRange(min = 0, max = 1) double kilopascals) {
    Table table = new Table(2500, width, inset, 1200, 1000, kilopascals / 1000, 0.3);
    StandingResult bare = table.stands(LOADS, Table.standing(10), RULES);
    double mass = bare.ballast();
    Standing.Ballast[] blocks = new Standing.Ballast[bare.feet().size()];
    for (int i = 0; i < blocks.length; i++) {
      blocks[i] =
          new Standing.Ballast(
              "block" + i, bare.feet().get(i).place(), mass / blocks.length, Table.INVENTED);
    }
    StandingResult held = table.stands(LOADS, Table.standing(10, blocks), RULES);

    if (mass > 0) {
      assertThat(bare.leastFactor()).isLessThan(1);
      assertThat(held.leastFactor()).isCloseTo(1, within(1e-9));
    } else {
      assertThat(mass).isZero();
      assertThat(bare.leastFactor()).isGreaterThanOrEqualTo(1);
    }
  }

  /** The same against sliding: the friction needed becomes that which there is. */
  @Property(tries = 25)
  void ballastAgainstSlidingIsJustEnough(
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double friction,
      @ForAll @DoubleRange(min = 700, max = 3000) double width) {
    Table table = new Table(2500, width, 0, 1200, 1000, 0.0002, 0.3);
    EquilibriumRule[] rules = {
      Table.rule(LeadingAction.NONE, true), Table.rule(LeadingAction.GUARDRAIL, false)
    };
    StandingResult bare = table.stands(LOADS, Table.standing(friction), rules);
    double mass = bare.ballastAgainstSliding().orElseThrow();
    Standing.Ballast block =
        new Standing.Ballast("block", table.at(1000, 300, 0), mass, Table.INVENTED);
    StandingResult held = table.stands(LOADS, Table.standing(friction, block), rules);

    if (mass > 0) {
      assertThat(held.worstSliding().orElseThrow().friction())
          .isCloseTo(friction, within(1e-9 * friction));
    } else {
      assertThat(mass).isZero();
      assertThat(bare.worstSliding().orElseThrow().friction()).isLessThanOrEqualTo(friction);
    }
  }

  /** More weight within the feet lowers no factor, where no notional sway comes with it. */
  @Property(tries = 25)
  void moreWeightWithinTheFeetNeverHarms(
      @ForAll @DoubleRange(min = 0, max = 1) double along,
      @ForAll @DoubleRange(min = 0, max = 1) double across,
      @ForAll @DoubleRange(min = 1, max = 500) double mass) {
    Table table = new Table(2500, 1100, 400, 1200, 1000, 0.0002, 0.3);
    EquilibriumRule[] rules = {
      Table.rule(LeadingAction.FLOOR, false), Table.rule(LeadingAction.GUARDRAIL, false)
    };
    Vector inside = table.at(400 + along * 1700, across * 1100, 500);
    StandingResult bare = table.stands(LOADS, Table.standing(0.4), rules);
    StandingResult heavier =
        table.stands(
            LOADS,
            Table.standing(0.4, new Standing.Ballast("more", inside, mass, Table.INVENTED)),
            rules);

    for (int i = 0; i < bare.tipping().size(); i++) {
      TippingCase before = bare.tipping().get(i);
      TippingCase after = heavier.tipping().get(i);
      assertThat(after.use()).isLessThanOrEqualTo(before.use() * (1 + 1e-12) + 1e-12);
    }
    assertThat(heavier.worstSliding().orElseThrow().friction())
        .isLessThanOrEqualTo(bare.worstSliding().orElseThrow().friction());
  }
}
