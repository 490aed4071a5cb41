package spanledger.verification.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.LeadingAction;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.RuleSet;
import spanledger.action.UserCase;
import spanledger.frame.Vector;
import spanledger.overturning.SlidingCase;
import spanledger.overturning.Standing;
import spanledger.overturning.StandingAnalysis;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.overturning.Wind;
import spanledger.quantity.Dimension;

/**
 * A table of 2 m by 1 m, 1 m high, with a rail at 2 m, and one with overhangs. Expected values are
 * statics by hand: weight times lever, force times height; the steps stand beside each. Members
 * weigh 10 N/m: south legs 10 N each, north legs with posts 20 N each, beams and rail 20 N each,
 * 120 N in all. Tolerance: rounding of doubles.
 */
class HandCalculationsTest {

  private static final double EXACT = 1e-9;

  private static final Table PLAIN = new Table(2000, 1000, 0, 1000, 1000, 0, 0);
  private static final Table OVERHANGING = new Table(3000, 1000, 500, 1000, 1000, 0, 0);
  private static final RuleSet LOADS = Table.rules(0.002, 1500, 0.3, 500, 0.01);
  private static final EquilibriumRule NONE = Table.rule(LeadingAction.NONE, false);
  private static final EquilibriumRule SWAY = Table.rule(LeadingAction.NONE, true);
  private static final EquilibriumRule FLOOR = Table.rule(LeadingAction.FLOOR, false);
  private static final EquilibriumRule RAIL = Table.rule(LeadingAction.GUARDRAIL, false);
  private static final EquilibriumRule WIND = Table.rule(LeadingAction.WIND, false);

  /** The case about the line whose outward direction is given. */
  private static TippingCase about(StandingResult result, double outX, double outY) {
    Vector out = new Vector(outX, outY, 0);
    return result.tipping().stream()
        .filter(one -> one.edge().outward().dot(out) > 0.999)
        .findFirst()
        .orElseThrow();
  }

  /**
   * By hand, weights times levers. North line: south legs 2 · 10 · 1000 + south beam 20 · 1000.
   * South line: north legs 40, beam 20, rail 20, times 1000. East and west lines: legs 10 + 20
   * times 2000, beams and rail 60 times 1000. Heights: legs 20 · 500 + 40 · 1000, beams 40 · 1000,
   * rail 20 · 2000.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 1, 40000, 130000",
    "0, -1, 80000, 130000",
    "1, 0, 120000, 130000",
    "-1, 0, 120000, 130000",
  })
  void membersHoldTheTableDown(double outX, double outY, double holding, double byHeight) {
    TippingCase found = about(PLAIN.stands(LOADS, Table.standing(0.5), NONE), outX, outY);

    assertThat(found.permanent().holding()).isCloseTo(holding, within(EXACT * holding));
    assertThat(found.permanent().tipping()).isZero();
    assertThat(found.permanent().byHeight()).isCloseTo(byHeight, within(EXACT * byHeight));
    assertThat(found.stabilising()).isCloseTo(0.9 * holding, within(EXACT * holding));
  }

  /** 0.01 · 1.1 · 130000 against 0.9 · 40000 (north), 0.9 · 80000 (south), 0.9 · 120000. */
  @ParameterizedTest
  @CsvSource({"0, 1, 36000", "0, -1, 72000", "1, 0, 108000", "-1, 0, 108000"})
  void notionalSwayTips(double outX, double outY, double holds) {
    TippingCase found = about(PLAIN.stands(LOADS, Table.standing(0.5), SWAY), outX, outY);

    assertThat(found.destabilising()).isCloseTo(1430, within(1e-8));
    assertThat(found.factor()).isCloseTo(holds / 1430, within(1e-8));
    assertThat(found.use()).isCloseTo(1430 / holds, within(1e-12));
  }

  /**
   * Rail line load 0.3 N/mm · 2000 mm = 600 N, more than the 500 N at one place, at 2000 mm: 1.5 ·
   * 600 · 2000 = 1.8e6 N·mm outward about the north line and inward about the south line.
   */
  @ParameterizedTest
  @CsvSource({"0, 1, 36000", "0, -1, 72000"})
  void peopleLeanOnTheRail(double outX, double outY, double holds) {
    StandingResult result = PLAIN.stands(LOADS, Table.standing(0.5), RAIL);
    TippingCase found = about(result, outX, outY);

    assertThat(found.destabilising()).isCloseTo(1.8e6, within(1e-3));
    assertThat(found.factor()).isCloseTo(holds / 1.8e6, within(1e-12));
    assertThat(found.leading()).contains("rail");
  }

  /** Its ends see nothing of a rail that is pushed square to them. */
  @Test
  void railLoadDoesNotTipSideways() {
    StandingResult result = PLAIN.stands(LOADS, Table.standing(0.5), RAIL);

    assertThat(about(result, 1, 0).destabilising()).isZero();
    assertThat(about(result, -1, 0).use()).isZero();
  }

  /** A short rail of one point load of 900 N: 1.5 · 900 · 2000. */
  @Test
  void loadAtOnePlaceOfTheRailGovernsWhereItIsGreater() {
    RuleSet point = Table.rules(0.002, 1500, 0.3, 900, 0.01);

    assertThat(about(PLAIN.stands(point, Table.standing(0.5), RAIL), 0, 1).destabilising())
        .isCloseTo(2.7e6, within(1e-3));
  }

  /**
   * Ballast on four feet, two of them 1000 mm within the line: each kg holds 0.9 · 9.80665 · 500
   * N·mm; (1.8e6 - 36000) / 4412.9925 = 399.728 kg.
   */
  @Test
  void ballastOnTheFeetByHand() {
    StandingResult result = PLAIN.stands(LOADS, Table.standing(0.5), RAIL);

    assertThat(result.ballast(about(result, 0, 1).edge()))
        .isCloseTo((1.8e6 - 36000) / (0.9 * 9.80665 * 500), within(1e-6));
    assertThat(result.ballast(about(result, 0, -1).edge()))
        .isCloseTo((1.8e6 - 72000) / (0.9 * 9.80665 * 500), within(1e-6));
    assertThat(result.ballast(about(result, 1, 0).edge())).isZero();
  }

  /**
   * 100 kg on one south foot: 980.665 N · 1000 mm more about the north line, none about the south.
   */
  @Test
  void ballastThatIsThereHolds() {
    Standing.Ballast block = new Standing.Ballast("block", PLAIN.at(0, 0, 0), 100, Table.INVENTED);
    StandingResult result = PLAIN.stands(LOADS, Table.standing(0.5, block), RAIL);

    assertThat(about(result, 0, 1).permanent().holding()).isCloseTo(1020665, within(1e-3));
    assertThat(about(result, 0, -1).permanent().holding()).isCloseTo(80000, within(1e-3));
    assertThat(result.permanent().weight()).isCloseTo(1100.665, within(1e-6));
    // Only the block's place may take more; it lies on the south line and cannot hold there.
    assertThat(result.ballast(about(result, 0, -1).edge())).isEqualTo(-1);
    assertThat(result.ballast()).isEqualTo(-1);
    assertThat(result.ballast(about(result, 0, 1).edge()))
        .isCloseTo((1.8e6 - 0.9 * 1020665) / (0.9 * 9.80665 * 1000), within(1e-6));
  }

  /** Decking of 0.5 kN/m² on 2 m² weighs 1000 N; its levers are half of the table's sides. */
  @ParameterizedTest
  @CsvSource({"0, 1, 540000", "0, -1, 580000", "1, 0, 1120000", "-1, 0, 1120000"})
  void deckingHolds(double outX, double outY, double holding) {
    StandingResult result = PLAIN.withFinishes(0.0005).stands(LOADS, Table.standing(0.5), NONE);

    assertThat(about(result, outX, outY).permanent().holding()).isCloseTo(holding, within(1e-3));
    assertThat(result.permanent().weight()).isCloseTo(1120, within(1e-9));
  }

  /**
   * Overhang of 500 mm beyond the east feet. Beams: 5 N each beyond at 250 mm, 25 N each within at
   * 1250 mm. Within besides: legs 30 · 2000, rail 20 · 1000.
   */
  @Test
  void overhangingMembersArePartedAtTheLine() {
    TippingCase east = about(OVERHANGING.stands(LOADS, Table.standing(0.5), NONE), 1, 0);

    assertThat(east.permanent().tipping()).isCloseTo(2500, within(1e-6));
    assertThat(east.permanent().holding()).isCloseTo(142500, within(1e-6));
    assertThat(east.destabilising()).isCloseTo(1.1 * 2500, within(1e-6));
    assertThat(east.stabilising()).isCloseTo(0.9 * 142500, within(1e-6));
  }

  /** The load at one place at the end of the overhang: 1.5 · 1500 · 500 = 1.125e6. */
  @Test
  void concentratedLoadAtTheEndOfTheOverhangGoverns() {
    TippingCase east = about(OVERHANGING.stands(LOADS, Table.standing(0.5), FLOOR), 1, 0);

    assertThat(east.variableMoment()).isCloseTo(1.125e6, within(1e-3));
    assertThat(east.destabilising()).isCloseTo(1.125e6 + 2750, within(1e-3));
  }

  /** Area load 0.002 · 500 · 1000 = 1000 N beyond the line at 250 mm, times 1.5. */
  @Test
  void areaLoadActsOnlyBeyondTheLine() {
    RuleSet area = Table.rules(0.002, 0, 0, 0, 0);
    TippingCase east = about(OVERHANGING.stands(area, Table.standing(0.5), FLOOR), 1, 0);

    assertThat(east.variableMoment()).isCloseTo(375000, within(1e-4));
    assertThat(about(OVERHANGING.stands(area, Table.standing(0.5), FLOOR), 0, 1).variableMoment())
        .isZero();
  }

  /**
   * With a level force of 1 % at 1000 mm a strip of 10 mm within the line tips, too: 1.5 · 0.002 ·
   * 2000 · 10²/2 = 300; for the overhang 1.5 · 0.002 · 1000 · 510²/2 = 390150.
   */
  @Test
  void levelForceOfTheFloorLoadMovesTheLine() {
    RuleSet area = Table.rules(0.002, 0, 0, 0, 0.01);
    EquilibriumRule sway = Table.rule(LeadingAction.FLOOR, true);

    assertThat(about(PLAIN.stands(area, Table.standing(0.5), sway), 0, 1).variableMoment())
        .isCloseTo(300, within(1e-7));
    assertThat(about(OVERHANGING.stands(area, Table.standing(0.5), sway), 1, 0).variableMoment())
        .isCloseTo(390150, within(1e-4));
  }

  /**
   * A permanent pull of 50 N to the north and 40 N upward at the top of a north leg, 1000 mm up.
   * North line: it tips by 50 · 1000, the lift has no lever. South line: it holds by 50 · 1000 and
   * lifts by 40 · 1000, together 10000 that hold.
   */
  @Test
  void permanentForcesHoldOrTipAsAWhole() {
    var table = PLAIN.structure(LOADS);
    var node =
        table.frame().nodes().stream()
            .filter(n -> n.name().equals("north1-top"))
            .findFirst()
            .orElseThrow();
    UserCase pull =
        new UserCase(
            ActionCategory.PERMANENT,
            new LoadCase(
                "pull",
                List.of(new NodalLoad(node, new Vector(0, 50, 40), Vector.ZERO, "pull")),
                List.of()));
    StandingResult result =
        new StandingAnalysis(PLAIN.structure(LOADS, pull), Table.standing(0.5), List.of(NONE))
            .run();

    assertThat(about(result, 0, 1).permanent().tipping()).isCloseTo(50000, within(1e-6));
    assertThat(about(result, 0, -1).permanent().holding()).isCloseTo(80000 + 10000, within(1e-6));
    assertThat(result.permanent().weight()).isCloseTo(120 - 40, within(1e-9));
    // Level force 1.1 · 50 on 0.9 · 80.
    assertThat(result.worstSliding().orElseThrow().friction())
        .isCloseTo(1.1 * 50 / (0.9 * 80), within(1e-9));
  }

  /**
   * Wind of 0.5 kPa on 1 m² that faces north, 1.5 m up: 1.5 · 500 · 1500 about either long side.
   */
  @ParameterizedTest
  @CsvSource({"0, 1", "0, -1"})
  void windOnOneFace(double outX, double outY) {
    Wind wind =
        wind(
            new Wind.Exposure(
                "face", new Vector(1000, 500, 1500), 1e6, Optional.of(new Vector(0, 1, 0)), false));
    StandingResult result = PLAIN.stands(LOADS, Table.windy(wind), WIND);

    assertThat(about(result, outX, outY).variableMoment()).isCloseTo(1.125e6, within(1e-2));
  }

  /**
   * Equal faces to the north and to the east: p A z (sin² θ + sin θ cos θ) is greatest at 67.5 deg,
   * (1 + √2)/2; level forces p A (|cos θ| + |sin θ|) at 45 deg, √2.
   */
  @Test
  void windBlowsFromItsWorstSide() {
    Wind wind =
        wind(
            new Wind.Exposure(
                "north", new Vector(1000, 500, 1500), 1e6, Optional.of(new Vector(0, 1, 0)), false),
            new Wind.Exposure(
                "east", new Vector(1000, 500, 1500), 1e6, Optional.of(new Vector(1, 0, 0)), false));
    StandingResult result = PLAIN.stands(LOADS, Table.windy(wind), WIND);

    assertThat(about(result, 0, 1).variableMoment())
        .isCloseTo(1.125e6 * (1 + Math.sqrt(2)) / 2, within(1e-2));
    SlidingCase sliding = result.worstSliding().orElseThrow();
    assertThat(sliding.along()).isCloseTo(1.5 * 500 * Math.sqrt(2), within(1e-6));
    assertThat(sliding.friction()).isCloseTo(1.5 * 500 * Math.sqrt(2) / 108, within(1e-8));
  }

  /**
   * Guardrail 1000 mm high, 30 % closed, along 2000 mm: 0.6 m² at 1500 mm; deck edge 100 mm deep:
   * 0.2 m² at 1000 mm on the windward side. 1.5 · 0.0005 · (0.6e6 · 1500 + 0.2e6 · 1000).
   */
  @Test
  void windOnGuardrailAndDeckEdge() {
    Wind wind =
        new Wind(0.0005, Table.INVENTED, Optional.of(new Wind.Screen(1000, 0.3)), 100, List.of());
    StandingResult result = PLAIN.stands(LOADS, Table.windy(wind), WIND);

    // Square to the long side the short edges see nothing, but turned a little they add more.
    double square = 1.5 * 0.0005 * (0.6e6 * 1500 + 0.2e6 * 1000);
    assertThat(about(result, 0, 1).variableMoment()).isGreaterThanOrEqualTo(square - 1e-6);
    // sin θ (A sin θ + B cos θ) is greatest at (A + √(A² + B²))/2, B the short edge's 0.1 m² at 1
    // m.
    double a = 0.6e6 * 1500 + 0.2e6 * 1000;
    double b = 0.1e6 * 1000;
    assertThat(about(result, 0, 1).variableMoment())
        .isCloseTo(1.5 * 0.0005 * (a + Math.hypot(a, b)) / 2, within(1e-3));
  }

  private static Wind wind(Wind.Exposure... areas) {
    return new Wind(0.0005, Table.INVENTED, Optional.empty(), 0, List.of(areas));
  }

  /** 1.5 · 600 along the ground, 0.9 · 120 onto it. */
  @Test
  void slidingUnderTheRailLoad() {
    StandingResult result = PLAIN.stands(LOADS, Table.standing(0.5), RAIL);
    SlidingCase sliding = result.worstSliding().orElseThrow();

    assertThat(sliding.along()).isCloseTo(900, within(1e-9));
    assertThat(sliding.onto()).isCloseTo(108, within(1e-9));
    assertThat(sliding.friction()).isCloseTo(900.0 / 108, within(1e-9));
    assertThat(sliding.use(new Standing.Friction(0.5, Table.INVENTED)))
        .isCloseTo(900.0 / 108 / 0.5, within(1e-9));
    // (900 / 0.5 - 108) / (0.9 g)
    assertThat(result.ballastAgainstSliding().orElseThrow())
        .isCloseTo((1800 - 108) / (0.9 * 9.80665), within(1e-6));
  }

  /** Notional sway alone: 0.01 · 1.1 · 120 / (0.9 · 120), and on any slope (1.1/0.9) tan α. */
  @Test
  void slidingUnderSwayAndOnASlope() {
    assertThat(
            PLAIN.stands(LOADS, Table.standing(0.5), SWAY).worstSliding().orElseThrow().friction())
        .isCloseTo(0.011 / 0.9, within(1e-12));
    for (double slope : new double[] {0.01, 0.1, 0.3}) {
      StandingResult result = PLAIN.stands(LOADS, Table.sloping(slope, new Vector(1, 0, 0)), NONE);
      assertThat(result.worstSliding().orElseThrow().friction())
          .isCloseTo(1.1 / 0.9 * Math.tan(slope), within(1e-12));
    }
  }

  /**
   * Ground that falls by 0.1 rad to the north, the rail pushed that way: along 1.1 · 120 sin α +
   * 900 cos α, onto 0.9 · 120 cos α - 900 sin α. Across the slope both meet square.
   */
  @Test
  void slidingDownASlopeWithTheRailPushed() {
    double s = Math.sin(0.1);
    double c = Math.cos(0.1);
    SlidingCase down =
        PLAIN
            .stands(LOADS, Table.sloping(0.1, new Vector(0, 1, 0)), RAIL)
            .worstSliding()
            .orElseThrow();
    assertThat(down.along()).isCloseTo(132 * s + 900 * c, within(1e-9));
    assertThat(down.onto()).isCloseTo(108 * c - 900 * s, within(1e-9));

    SlidingCase across =
        PLAIN
            .stands(LOADS, Table.sloping(0.1, new Vector(1, 0, 0)), RAIL)
            .worstSliding()
            .orElseThrow();
    assertThat(across.along()).isCloseTo(Math.hypot(132 * s, 900), within(1e-9));
    assertThat(across.onto()).isCloseTo(108 * c, within(1e-9));
  }

  /** Factors of the job replace those of the rules: 0.8 · 40000. */
  @Test
  void factorsOfTheJobReplaceThoseOfTheRules() {
    Standing standing =
        new Standing(
            false,
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Standing.Ground.LEVEL,
            Map.of("g-inf", Table.figure("g-inf", 0.8, Dimension.NONE)));

    assertThat(about(PLAIN.stands(LOADS, standing, NONE), 0, 1).stabilising())
        .isCloseTo(32000, within(1e-6));
  }
}
