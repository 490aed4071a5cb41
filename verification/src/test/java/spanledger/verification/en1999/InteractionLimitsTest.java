package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.material.BucklingClass;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Weld;
import spanledger.resistance.member.Working;

/** Each interaction comes down to its single check where only one effect acts. */
class InteractionLimitsTest {

  private static final double EXACT = 1e-9;

  static Stream<Arguments> shapes() {
    return Stream.of(
        Arguments.of("tube", new double[] {80, 40, 2, 2}),
        Arguments.of("tube", new double[] {60, 120, 4, 4}),
        Arguments.of("i", new double[] {150, 80, 6, 4}),
        Arguments.of("i", new double[] {200, 100, 3, 2}),
        Arguments.of("channel", new double[] {120, 50, 8, 6}),
        Arguments.of("round tube", new double[] {48, 3}),
        Arguments.of("bar", new double[] {40, 20}),
        Arguments.of("round bar", new double[] {30}));
  }

  private static MemberCase given(String shape, double[] sizes) {
    return GivenMember.equalLengths(
        GivenMember.shape(shape, sizes), GivenMember.alloy(200, 245, BucklingClass.A), 1200);
  }

  private static double use(PreparedMember member, String symbol, double... forces) {
    return useOf(member, symbol, Effect.uniform(forces));
  }

  private static double useOf(PreparedMember member, String symbol, double[] effects) {
    MemberEvaluator evaluator = member.evaluator();
    evaluator.evaluate(effects);
    for (int i = 0; i < member.uses().size(); i++) {
      if (member.uses().get(i).symbol().equals(symbol)) {
        return evaluator.use(i);
      }
    }
    throw new IllegalArgumentException(symbol);
  }

  private static double result(PreparedMember member, String procedure, String symbol) {
    Working last = null;
    for (Working working : member.workings()) {
      last = working.procedure().procedure().name().equals(procedure) ? working : last;
    }
    return Objects.requireNonNull(last).value(symbol);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void sectionAlone(String shape, double[] sizes) {
    PreparedMember member = GivenMember.prepared(1.1, given(shape, sizes));
    double tension = result(member, "en1999-tension", "N_t_Rd");
    double compression = result(member, "en1999-effective-compression", "N_c_Rd");

    assertThat(use(member, "η_section", tension, 0, 0, 0, 0, 0)).isCloseTo(1, within(EXACT));
    assertThat(use(member, "η_section", -compression, 0, 0, 0, 0, 0)).isCloseTo(1, within(EXACT));
    for (double sign : new double[] {1, -1}) {
      double my = sign * 1e5 / use(member, "η_My", 0, 0, 0, 0, sign * 1e5, 0);
      double mz = sign * 1e5 / use(member, "η_Mz", 0, 0, 0, 0, 0, sign * 1e5);
      assertThat(use(member, "η_section", 0, 0, 0, 0, my, 0)).isCloseTo(1, within(EXACT));
      assertThat(use(member, "η_section", 0, 0, 0, 0, 0, mz)).isCloseTo(1, within(EXACT));
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void memberAlone(String shape, double[] sizes) {
    PreparedMember member = GivenMember.prepared(1.1, given(shape, sizes));
    double worst =
        Stream.of("η_by", "η_bz", "η_bT")
            .mapToDouble(symbol -> use(member, symbol, -1000, 0, 0, 0, 0, 0))
            .max()
            .orElseThrow();
    double least = 1000 / worst;
    boolean shifted =
        Math.max(
                result(member, "en1999-effective-compression", "e_Ny"),
                result(member, "en1999-effective-compression", "e_Nz"))
            > 1e-9;
    if (!shifted) {
      assertThat(use(member, "η_member", -least, 0, 0, 0, 0, 0)).isCloseTo(1, within(EXACT));
    }
    double flexural =
        1000
            / Math.max(
                use(member, "η_by", -1000, 0, 0, 0, 0, 0),
                use(member, "η_bz", -1000, 0, 0, 0, 0, 0));
    if (!shifted) {
      assertThat(use(member, "η_second", -flexural, 0, 0, 0, 0, 0))
          .as("second order without moments gives the buckling resistance")
          .isCloseTo(1, within(1e-6));
    }
    boolean strongIsY = !(shape.equals("tube") && sizes[1] > sizes[0]);
    double lateral =
        strongIsY
            ? 1e5 / use(member, "η_LT", 0, 0, 0, 0, 1e5, 0)
            : 1e5 / use(member, "η_LT", 0, 0, 0, 0, 0, 1e5);
    double my = strongIsY ? lateral : 0;
    double mz = strongIsY ? 0 : lateral;
    assertThat(use(member, "η_member", 0, 0, 0, 0, my, mz)).isCloseTo(1, within(EXACT));
    assertThat(use(member, "η_second", 0, 0, 0, 0, my, mz)).isCloseTo(1, within(EXACT));
  }

  @Test
  void tensionDoesNotBuckle() {
    PreparedMember member = GivenMember.prepared(1.1, given("i", new double[] {150, 80, 6, 4}));

    assertThat(use(member, "η_by", 5000, 0, 0, 0, 0, 0)).isZero();
    assertThat(use(member, "η_member", 5000, 0, 0, 0, 0, 0)).isZero();
  }

  @Test
  void shearUpToHalfItsResistanceTakesNothing() {
    // Given a web at half of its shear resistance and a little more; expected a continuous loss.
    PreparedMember member = GivenMember.prepared(1.1, given("i", new double[] {150, 80, 6, 4}));
    double half = 0.5 * 1000 / use(member, "η_Vz", 0, 0, 1000, 0, 0, 0);
    double moment = 1e6;

    double alone = use(member, "η_My", 0, 0, 0, 0, moment, 0);
    assertThat(use(member, "η_My", 0, 0, half * 0.9999999, 0, moment, 0))
        .isCloseTo(alone, within(1e-12));
    assertThat(use(member, "η_My", 0, 0, half * 1.001, 0, moment, 0))
        .isCloseTo(alone, within(1e-5));
    // 6.2.8: at 3/4 of the shear resistance a quarter of the strength is lost.
    assertThat(use(member, "η_My", 0, 0, half * 1.5, 0, moment, 0))
        .isCloseTo(alone / 0.75, within(1e-9));
  }

  @Test
  void weldAcrossCountsAtItsPlaceOnly() {
    // Given a weld at 300 mm, f_u,haz = 0.6 · 245 = 147; expected ω = (147/1.25)/(200/1.1) =
    // 0.6468,
    // within 20 mm for MIG welds of thin walls, source: EN 1999-1-1, 6.1.6.3 (from memory).
    MemberCase welded =
        given("tube", new double[] {80, 40, 2, 2})
            .withWelds(
                List.of(
                    new Weld.Across(
                        "cleat", 300, Weld.Method.MIG, OptionalDouble.empty(), GivenMember.CASE)));
    PreparedMember member = GivenMember.prepared(1.1, welded);
    double[] effects = Effect.uniform(0, 0, 0, 0, 5e5, 0);
    double alone = useOf(member, "η_My", effects);
    effects[Effect.PLACE.ordinal()] = 319;
    double beside = useOf(member, "η_My", effects);
    effects[Effect.PLACE.ordinal()] = 321;
    double beyond = useOf(member, "η_My", effects);

    assertThat(welded.weakPlaces()).containsExactly(300.0);
    assertThat(alone / beside).isCloseTo(147 / 1.25 / (200 / 1.1), within(1e-12));
    assertThat(beyond).isCloseTo(alone, within(1e-12));
  }

  @Test
  void weldAlongTakesItsStrip() {
    // Given a MIG weld along the middle of a web 6 mm thick; 2 · 20 mm count half (f_o,haz =
    // f_o/2).
    // Expected A = 2·80·8 + 104·6 - 0.5·40·6, source: EN 1999-1-1, 6.1.6 (from memory).
    MemberCase welded =
        given("i", new double[] {120, 80, 8, 6})
            .withWelds(
                List.of(
                    new Weld.Along(
                        "seam",
                        "web",
                        52,
                        Weld.Method.MIG,
                        OptionalDouble.empty(),
                        GivenMember.CASE)));
    PreparedMember member = GivenMember.prepared(1.1, welded);

    assertThat(result(member, "en1999-tension", "A_g")).isCloseTo(1904 - 120, within(1e-9));
    assertThat(result(member, "en1999-softened-share", "a_1")).isLessThan(1);
    assertThat(member.remarks()).anyMatch(remark -> remark.contains("no plastic reserve"));
  }

  @Test
  void holesWeakenTheirCut() {
    // Given two holes of 9 mm in the flanges of a tube 80x40x2; expected N_u = 0.9 A_net f_u / γ_M2
    // with A_net = 464 - 2·9·2, source: EN 1999-1-1, 6.2.3 (from memory).
    MemberCase drilled =
        given("tube", new double[] {80, 40, 2, 2})
            .withHoles(
                List.of(
                    new Hole("end", 20, "flange top", 18, 9, true, GivenMember.CASE),
                    new Hole("end", 20, "flange bottom", 18, 9, true, GivenMember.CASE)));
    PreparedMember member = GivenMember.prepared(1.1, drilled);

    assertThat(result(member, "en1999-tension", "N_u_Rd"))
        .isCloseTo(0.9 * (464 - 36) * 245 / 1.25, within(1e-6));
  }

  @Test
  void declaredResistanceStandsBesideThoseOfTheCode() {
    MemberCase declared =
        given("tube", new double[] {80, 40, 2, 2})
            .withDeclared(
                List.of(
                    new DeclaredResistance(
                        "end bracket", Effect.V_Z, 4000, 2500, GivenMember.CASE)));
    PreparedMember member = GivenMember.prepared(1.1, declared);

    assertThat(use(member, "η_declared", 0, 0, 2000, 0, 0, 0)).isCloseTo(0.5, within(EXACT));
    assertThat(use(member, "η_declared", 0, 0, -2000, 0, 0, 0)).isCloseTo(0.8, within(EXACT));
    assertThat(member.uses()).anyMatch(one -> one.words().contains("declared"));
  }
}
