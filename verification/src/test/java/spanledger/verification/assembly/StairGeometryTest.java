package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.action.RuleSet;
import spanledger.geometry.LimitCheck;
import spanledger.geometry.StairSolver;
import spanledger.geometry.StairSolver.Answer;
import spanledger.geometry.StairSteps;
import spanledger.procedure.CompiledProcedure;
import spanledger.quantity.Dimension;
import spanledger.tables.RuleTables;

/** Angles, steps and the stairs that rule sets allow. */
class StairGeometryTest {

  private static final CompiledProcedure STEPS = StairSteps.PROCEDURE.compile();

  /**
   * Rise and run in inches and the angle in degrees and minutes: WAC 296-24-76511, Table D-1. The
   * table is rounded: within 5 minutes.
   */
  @ParameterizedTest
  @CsvSource({
    "6.5, 11, 30, 35",
    "7, 10.5, 33, 41",
    "7.5, 10, 36, 52",
    "8, 9.5, 40, 8",
    "8.75, 8.75, 45, 0",
    "9.5, 8, 49, 54",
  })
  void anglesAreThoseOfThePublishedTable(double rise, double run, int degrees, int minutes) {
    double[] values = STEPS.run(10 * rise * 25.4, 10, run * 25.4);

    assertThat(values[STEPS.slot("θ_deg")]).isCloseTo(degrees + minutes / 60.0, within(5 / 60.0));
  }

  /**
   * Ten and more rises over a height: rise H/n, step 2 H/n + g and the length of n - 1 goings,
   * worked out by hand with whole numbers.
   */
  @ParameterizedTest
  @CsvSource({
    "2200, 10, 230, 220, 670, 2070",
    "2000, 10, 250, 200, 650, 2250",
    "1500, 8, 250, 187.5, 625, 1750",
    "1000, 5, 260, 200, 660, 1040",
    "3000, 16, 270, 187.5, 645, 4050",
    "1890, 9, 240, 210, 660, 1920",
    "1700, 10, 290, 170, 630, 2610",
    "900, 5, 280, 180, 640, 1120",
  })
  void risesStepsAndLengths(
      double height, int rises, double going, double rise, double step, double length) {
    double[] values = STEPS.run(height, rises, going);

    assertThat(values[STEPS.slot("R")]).isEqualTo(rise);
    assertThat(values[STEPS.slot("S")]).isEqualTo(step);
    assertThat(values[STEPS.slot("L_n")]).isEqualTo(length);
  }

  /** Right triangles with whole sides: 3-4-5, 5-12-13, 8-15-17, 20-21-29 (Euclid, Elements X). */
  @ParameterizedTest
  @CsvSource({"3, 4, 36.8699", "5, 12, 22.6199", "8, 15, 28.0725", "20, 21, 43.6028"})
  void pitchesOfRightTriangles(double rise, double going, double degrees) {
    assertThat(STEPS.run(10 * rise, 10, going)[STEPS.slot("θ_deg")])
        .isCloseTo(degrees, within(1e-4));
  }

  /**
   * By definition of "at most" and "at least"; what is missing altogether counts as a thousandth.
   */
  @ParameterizedTest
  @CsvSource({
    "true, 225, 225, 1",
    "true, 180, 225, 0.8",
    "true, 0, 10, 0",
    "false, 900, 900, 1",
    "false, 1200, 900, 0.75",
    "false, 600, 900, 1.5",
    "false, 0, 100, 1000",
  })
  void limits(boolean atMost, double size, double limit, double used) {
    assertThat(LimitCheck.utilisation(Dimension.LENGTH, atMost, size, limit))
        .isCloseTo(used, within(1e-12));
  }

  /**
   * Ten rises suit a floor up to 2.2 m (common practice, no source): with them it can be climbed by
   * the rules, with nine it cannot.
   */
  @Test
  void tenRisesSuitAFloorOfTwentyTwoHundred() {
    List<Answer> allowed = solver(2200, "as-1657").allowed();

    assertThat(allowed.get(0).rises()).isEqualTo(10);
    assertThat(solver(2200, "as-1657").nearestMisses(200))
        .filteredOn(answer -> answer.rises() == 9)
        .singleElement()
        .satisfies(
            nine -> assertThat(nine.misses().get(0).words()).contains("over 225 mm", "19.4 mm"));
  }

  /** Stair pitch is usable between 30 and 45 degrees (common practice, no source). */
  @Test
  void everyRuleSetAllowsStairsOfUsablePitchOverUsualHeights() {
    for (String set : List.of("as-1657", "en-iso-14122", "osha-1910")) {
      for (double height : new double[] {800, 1000, 1500, 2000, 2200, 2500, 3000}) {
        assertThat(solver(height, set).allowed())
            .as(set + " over " + height)
            .anyMatch(
                a ->
                    Math.toDegrees(a.pitch(a.goingLeast())) >= 30
                        && Math.toDegrees(a.pitch(Math.min(a.goingMost(), 1e4))) <= 45);
      }
    }
  }

  /**
   * By hand for 10 rises of 220 mm, AS 1657: going from 220 (45 deg) to 700 - 440 = 260 mm; for 12
   * of 183.3 mm: from 215 to 700 - 366.7 = 333.3 mm.
   */
  @Test
  void goingsAreBoundByPitchStepAndGoing() {
    List<Answer> allowed = solver(2200, "as-1657").allowed();

    assertThat(allowed.get(0).goingLeast()).isCloseTo(220, within(1e-9));
    assertThat(allowed.get(0).goingMost()).isCloseTo(260, within(1e-9));
    assertThat(allowed.get(2).rises()).isEqualTo(12);
    assertThat(allowed.get(2).goingLeast()).isCloseTo(215, within(1e-9));
    assertThat(allowed.get(2).goingMost()).isCloseTo(1000 / 3.0, within(1e-9));
  }

  /** Nine goings in 2000 mm leave 222.2 mm for each; eleven goings only 181.8 mm. */
  @Test
  void spaceBindsTheGoing() {
    List<Answer> allowed = new StairSolver(2200, Optional.of(2000.0), rules("as-1657")).allowed();

    assertThat(allowed).singleElement().satisfies(a -> assertThat(a.rises()).isEqualTo(10));
    assertThat(allowed.get(0).goingMost()).isCloseTo(2000 / 9.0, within(1e-9));
  }

  /** Whatever is listed as allowed keeps every limit when it is put in again at both ends. */
  @ParameterizedTest
  @CsvSource({"as-1657", "en-iso-14122", "osha-1910"})
  void whatIsAllowedKeepsTheLimits(String set) {
    RuleSet rules = rules(set);
    for (double height = 600; height <= 3000; height += 150) {
      for (Answer answer : solver(height, set).allowed()) {
        for (double going : new double[] {answer.goingLeast(), Math.min(answer.goingMost(), 900)}) {
          double[] values = STEPS.run(height, answer.rises(), going);
          assertKept(rules, "stair.rise", values[STEPS.slot("R")]);
          assertKept(rules, "stair.step", values[STEPS.slot("S")]);
          assertKept(rules, "stair.pitch", values[STEPS.slot("θ")]);
          assertKept(rules, "stair.going", going);
        }
      }
    }
  }

  private static void assertKept(RuleSet rules, String what, double size) {
    rules.find(what + "-least").ifPresent(f -> assertThat(size).isGreaterThan(f.value() - 1e-6));
    rules.find(what + "-most").ifPresent(f -> assertThat(size).isLessThan(f.value() + 1e-6));
  }

  private static StairSolver solver(double height, String set) {
    return new StairSolver(height, Optional.empty(), rules(set));
  }

  private static RuleSet rules(String set) {
    return RuleTables.ruleSet(set);
  }
}
