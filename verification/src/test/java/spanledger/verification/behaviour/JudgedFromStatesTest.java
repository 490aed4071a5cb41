package spanledger.verification.behaviour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.action.Combination;
import spanledger.action.NodalLoad;
import spanledger.envelope.Instance;
import spanledger.frame.Member;
import spanledger.frame.Vector;
import spanledger.verdict.Assessment;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/** Members, deflections and reactions of combinations that were solved as states. */
class JudgedFromStatesTest {

  private static final String LEVEL =
      "\"A\": [\"0 m\", \"0 m\", \"0 m\"], \"M\": [\"1 m\", \"0 m\", \"0 m\"],"
          + " \"B\": [\"2 m\", \"0 m\", \"0 m\"], \"C\": [\"3 m\", \"0 m\", \"0 m\"]";

  @TempDir Path folder;

  /**
   * A beam on A and B that goes on to a foot C, with P in the middle of A B. If C held down, the
   * moment over B would be 3 P L₁²/(16 (L₁ + L₂)) (theorem of three moments). Its foot lifts: what
   * is left is a beam on two bearings with an overhang under its own weight. Tolerance: the width,
   * 0.1 mm, to which cuts are narrowed down, and the shear stiffness of 9e5 mm².
   */
  @Test
  void aFootThatLiftsLeavesABeamOnTwoBearings() {
    double load = 10_000;
    Assessment found = AssessedJob.of(folder, looseFoot(load, true, "never"));

    double weight = StateJob.WEIGHT;
    double overB = weight * 1000 * 1000 / 2;
    double middle = load * 2000 / 4 + weight * 2000 * 2000 / 8 - overB / 2;
    Verdict bending = StateJob.verdict(found, "bending", "beam");
    assertThat(bending.demand() * StateJob.MODULUS)
        .isCloseTo(StateJob.PERMANENT * middle, Percentage.withPercentage(1e-3));
    assertThat(bending.governing().orElseThrow().station().x()).isCloseTo(1000, within(0.2));

    // Measured from the line between A and the raised end C.
    double raised = 1000 * turnAtB(load, weight, overB) - weight * 1e12 / (8 * StateJob.RIGIDITY);
    double sag =
        IntStream.rangeClosed(0, 2000)
            .mapToDouble(x -> sag(x, load, weight, overB) + raised * x / 3000)
            .max()
            .orElseThrow();
    assertThat(StateJob.verdict(found, "deflection", "beam").demand())
        .isCloseTo(sag, Percentage.withPercentage(1e-3));

    assertThat(StateJob.verdict(found, "least reaction along Z, strength", "C").demand()).isZero();
    assertThat(found.verdicts()).noneMatch(v -> v.check().equals("uplift"));
    assertThat(found.verdicts()).noneMatch(v -> v.check().equals("members in states"));
  }

  /** Textbook formulas for a beam of span 2000 under each of the three, added up. */
  private static double sag(double x, double load, double weight, double overB) {
    double near = Math.min(x, 2000 - x);
    return (load * near * (3 * 4e6 - 4 * near * near) / 48
            + weight * x * (8e9 - 4000 * x * x + x * x * x) / 24
            - overB * x * (4e6 - x * x) / 12_000)
        / StateJob.RIGIDITY;
  }

  /** By which the beam turns over B, upward beyond it. */
  private static double turnAtB(double load, double weight, double overB) {
    return (load * 2000 * 2000 / 16 + weight * Math.pow(2000, 3) / 24 - overB * 2000 / 3)
        / StateJob.RIGIDITY;
  }

  /** The same beam anchored at C, by sums over load cases: the theorem of three moments. */
  @Test
  void aFootThatHoldsDownBringsAMomentOverTheNextBearing() {
    double load = 10_000;
    Assessment found = AssessedJob.of(folder, looseFoot(load, false, "never"));

    double overB = (3 * load * 2000 * 2000 / 8 + StateJob.WEIGHT * (8e9 + 1e9) / 4) / (2 * 3000);
    double middle = load * 2000 / 4 + StateJob.WEIGHT * 2000 * 2000 / 8 - overB / 2;
    assertThat(StateJob.verdict(found, "bending", "beam").demand() * StateJob.MODULUS)
        .isCloseTo(StateJob.PERMANENT * middle, Percentage.withPercentage(1e-3));
    assertThat(found.verdicts()).anyMatch(v -> v.check().equals("uplift"));
  }

  private static String looseFoot(double load, boolean lifts, String order) {
    return StateJob.text(
        StateJob.UPRIGHT,
        LEVEL,
        StateJob.member("beam", "floor", "\"A\", \"M\", \"B\", \"C\""),
        "\"a\": {\"node\": \"A\", \"shiftX\": \"fixed\", \"shiftY\": \"fixed\", \"shiftZ\":"
            + " \"fixed\", \"turnX\": \"fixed\", \"turnZ\": \"fixed\"},"
            + " \"b\": {\"node\": \"B\", \"shiftY\": \"fixed\", \"shiftZ\": \"fixed\"},"
            + " \"c\": {\"node\": \"C\", \"shiftZ\": \"fixed\""
            + (lifts ? ", \"lifts\": true}" : "}"),
        StateJob.force("M", 0, -load),
        order);
  }

  /**
   * A bar on two bearings under P in its middle and a compression N: M = P L/4 · tan u/u and the
   * deflection P L³/(48 E I) · 3 (tan u - u)/u³ with u = L/2 √(N/EI) (S. P. Timoshenko and J. M.
   * Gere, Theory of Elastic Stability, 2nd ed., 1961, art. 1.3 and 1.4, from memory, confirm);
   * under its weight q M = q/k² (sec u - 1).
   */
  @Test
  void aBeamColumnIsUsedAsItsClosedFormSays() {
    double force = 40_000;
    double load = 2_000;
    Assessment second = AssessedJob.of(folder, beamColumn(load, force, "always"));
    Assessment first = AssessedJob.of(folder, beamColumn(load, force, "never"));

    double u = 1000 * Math.sqrt(StateJob.PERMANENT * force / StateJob.RIGIDITY);
    double k2 = StateJob.PERMANENT * force / StateJob.RIGIDITY;
    double moment =
        StateJob.PERMANENT
            * (load * 2000 / 4 * Math.tan(u) / u + StateJob.WEIGHT / k2 * (1 / Math.cos(u) - 1));
    Percentage shear = Percentage.withPercentage(0.01);
    assertThat(StateJob.verdict(second, "bending", "beam").demand() * StateJob.MODULUS)
        .isCloseTo(moment, shear);
    double atRest = StateJob.PERMANENT * (load * 2000 / 4 + StateJob.WEIGHT * 2000 * 2000 / 8);
    assertThat(StateJob.verdict(first, "bending", "beam").demand() * StateJob.MODULUS)
        .isCloseTo(atRest, shear);

    double v = 1000 * Math.sqrt(force / StateJob.RIGIDITY);
    double q2 = force / StateJob.RIGIDITY;
    double sag =
        load * 8e9 / (48 * StateJob.RIGIDITY) * 3 * (Math.tan(v) - v) / (v * v * v)
            + StateJob.WEIGHT / (q2 * force) * (1 / Math.cos(v) - 1 - v * v / 2);
    assertThat(StateJob.verdict(second, "deflection", "beam").demand()).isCloseTo(sag, shear);
  }

  /**
   * Given a tube whose utilisation in bending is M/M_Rd whatever M is, expected the ratio of the
   * moments of second and first order by the same closed form with shear, tan v/(v β), v = u/√β, β
   * = 1 - N/(G A_v) (the same book, art. 2.17, from memory, confirm); under the tube's weight q, q
   * E I/N (1/cos v - 1). Tolerance: the load of 0.001 N that a floor always bears.
   */
  @Test
  void aMemberCodeSeesTheMomentsOfTheState() {
    double force = 40_000;
    Assessment second = AssessedJob.of(folder, StateJob.byCode(beamColumn(2_000, force, "always")));
    Assessment first = AssessedJob.of(folder, StateJob.byCode(beamColumn(2_000, force, "never")));

    double inertia = (Math.pow(80, 4) - Math.pow(72, 4)) / 12;
    double pressed = StateJob.PERMANENT * force;
    Member beam = second.frame().members().get(0);
    double beta =
        1 - pressed / (beam.alloy().shearModulus() * beam.section().properties().shearAreaZ());
    double v = 1000 * Math.sqrt(pressed / (70_000 * inertia * beta));
    double weight = StateJob.WEIGHT * (80 * 80 - 72 * 72) / 1000;
    double bent =
        2_000 * 2000 / 4 * Math.tan(v) / (v * beta)
            + weight * 70_000 * inertia / pressed * (1 / Math.cos(v) - 1);
    double atRest = 2_000 * 2000 / 4 + weight * 2000 * 2000 / 8;
    assertThat(
            StateJob.verdict(second, "bending about y", "beam").utilisation()
                / StateJob.verdict(first, "bending about y", "beam").utilisation())
        .isCloseTo(bent / atRest, within(1e-5));
    assertThat(bent / atRest).isGreaterThan(1.3);
  }

  private static String beamColumn(double load, double force, String order) {
    return StateJob.text(
        StateJob.UPRIGHT,
        "\"A\": [\"0 m\", \"0 m\", \"0 m\"], \"M\": [\"1 m\", \"0 m\", \"0 m\"],"
            + " \"B\": [\"2 m\", \"0 m\", \"0 m\"]",
        StateJob.member("beam", "floor", "\"A\", \"M\", \"B\""),
        "\"a\": {\"node\": \"A\", \"shiftX\": \"fixed\", \"shiftY\": \"fixed\", \"shiftZ\":"
            + " \"fixed\", \"turnX\": \"fixed\", \"turnZ\": \"fixed\"},"
            + " \"b\": {\"node\": \"B\", \"shiftY\": \"fixed\", \"shiftZ\": \"fixed\"}",
        StateJob.force("M", 0, -load) + ", " + StateJob.force("B", -force, 0),
        order);
  }

  /**
   * A mast fixed at its foot under P and level forces H at its top: M = H tan(kL)/k, k² = P/(E I)
   * (the same book, art. 1.11, from memory, confirm). H is what the governing combination brings,
   * its notional sway included. Tolerance: half of the mast's weight is taken to press on it, and
   * all of it to sway it at half its height.
   */
  @Test
  void aMastIsUsedAsItsClosedFormSays() {
    double force = 40_000;
    Assessment found =
        AssessedJob.of(
            folder,
            StateJob.text(
                "0.005",
                "\"A\": [\"0 m\", \"0 m\", \"0 m\"], \"T\": [\"0 m\", \"0 m\", \"1 m\"]",
                StateJob.member("mast", "leg", "\"A\", \"T\""),
                "\"a\": {\"node\": \"A\", \"type\": \"fixed\"}",
                StateJob.force("T", 500, -force),
                "always"));

    Verdict bending = StateJob.verdict(found, "bending", "mast");
    Vector top = onNodes(bending.governing().orElseThrow().instance());
    double pressed = -top.z() + StateJob.PERMANENT * StateJob.WEIGHT * 1000 / 2;
    double k = Math.sqrt(pressed / StateJob.RIGIDITY);
    double enlarged = Math.tan(1000 * k) / k;
    assertThat(bending.demand() * StateJob.MODULUS)
        .isCloseTo(
            (Math.abs(top.x()) + Math.abs(top.y())) * enlarged, Percentage.withPercentage(0.1));
    assertThat(enlarged).isGreaterThan(1300);
  }

  private static Vector onNodes(Instance instance) {
    Vector sum = Vector.ZERO;
    for (Combination.Term term : instance.terms()) {
      for (NodalLoad load : term.loadCase().nodalLoads()) {
        sum = sum.plus(load.force().times(instance.combination().factor(term)));
      }
    }
    return sum;
  }

  /** Where first order suffices nothing changes: the sums over load cases are the results. */
  @Test
  void whereNothingIsSolvedAsAStateTheSumsStay() {
    Assessment automatic = AssessedJob.of(folder, beamColumn(2_000, 1_000, "auto"));
    Assessment never = AssessedJob.of(folder, beamColumn(2_000, 1_000, "never"));

    assertThat(automatic.verdicts().stream().map(Verdict::demand).toList())
        .isEqualTo(never.verdicts().stream().map(Verdict::demand).toList());
    assertThat(automatic.behaviour().combinations()).noneMatch(c -> c.byState());
  }

  /**
   * Given N = 15 kN, whose critical factor is 11.5 without and 8.5 with the factor 1.35, and a
   * limit of 10: expected the closed form of the beam-column for strength, and first order for the
   * deflection. Tolerance: the shear stiffness.
   */
  @Test
  void statesAndSumsStandSideBySide() {
    double force = 15_000;
    double load = 2_000;
    Assessment found = AssessedJob.of(folder, beamColumn(load, force, "auto"));

    double k2 = StateJob.PERMANENT * force / StateJob.RIGIDITY;
    double u = 1000 * Math.sqrt(k2);
    double moment =
        load * 2000 / 4 * Math.tan(u) / u + StateJob.WEIGHT / k2 * (1 / Math.cos(u) - 1);
    Percentage shear = Percentage.withPercentage(0.01);
    assertThat(StateJob.verdict(found, "bending", "beam").demand() * StateJob.MODULUS)
        .isCloseTo(StateJob.PERMANENT * moment, shear);
    double sag = (load * 8e9 / 48 + 5 * StateJob.WEIGHT * 16e12 / 384) / StateJob.RIGIDITY;
    assertThat(StateJob.verdict(found, "deflection", "beam").demand()).isCloseTo(sag, shear);
    assertThat(found.behaviour().limit()).isEqualTo(10);
    assertThat(found.behaviour().combinations())
        .anyMatch(c -> c.byState())
        .anyMatch(c -> !c.byState());
  }

  /**
   * A column beyond its critical load has no forces: it fails, and what is said by sums is named.
   */
  @Test
  void aCombinationWithoutAStateIsNamed() {
    Assessment found = AssessedJob.of(folder, beamColumn(2_000, 400_000, "always"));

    assertThat(found.verdicts()).anyMatch(v -> v.check().equals("stability"));
    assertThat(StateJob.verdict(found, "members in states", "whole structure").remark())
        .contains("no solution as a state");
  }
}
