package spanledger.verification.behaviour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.verdict.Assessment;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/** From job file to judged frequency. */
class FrequencyTest {

  private static final String CHECK = "frequency of the structure, sideways";
  private static final String SUBJECT = "whole structure";
  private static final double GRAVITY = 9.80665;
  private static final double HEIGHT = 2000;

  @TempDir static Path folder;

  private static Assessment columns(double load) {
    return AssessedJob.of(
        folder,
        StateJob.text(
            StateJob.UPRIGHT,
            "\"foot\": [\"0 m\", \"0 m\", \"0 m\"], \"top\": [\"0 m\", \"0 m\", \"2 m\"],"
                + " \"foot2\": [\"3 m\", \"3 m\", \"0 m\"], \"top2\": [\"3 m\", \"3 m\", \"2 m\"]",
            StateJob.member("column", "leg", "\"foot\", \"top\"")
                + ", "
                + StateJob.member("other", "leg", "\"foot2\", \"top2\""),
            "\"base\": {\"node\": \"foot\", \"type\": \"fixed\"},"
                + " \"base2\": {\"node\": \"foot2\", \"type\": \"fixed\"}",
            StateJob.force("top", 0, -load) + ", " + StateJob.force("top2", 0, -load),
            "never"));
  }

  /**
   * Given two columns apart, alike and as stiff both ways, each with a heavy load on its top: four
   * modes of one frequency, which the solver may mix as it likes; expected f = √(3EI/h³/(M + 33/140
   * m))/2π. Source: S. P. Timoshenko, Vibration Problems in Engineering, art. 4 (from memory).
   * Tolerance: that formula is a Rayleigh quotient, with m = M/75 right within 1e-5; shear adds
   * 1e-5.
   */
  @ParameterizedTest
  @ValueSource(doubles = {4_000, 4e6, 4e9})
  void columnsUnderHeavyTopsSwayAsTheHandbookSays(double load) {
    Assessment found = columns(load);
    double own = StateJob.WEIGHT * HEIGHT / GRAVITY;
    double stiffness = 3 * StateJob.RIGIDITY / Math.pow(HEIGHT, 3);
    double mass = load / GRAVITY + own * 33 / 140;
    double expected = Math.sqrt(1000 * stiffness / mass) / (2 * Math.PI);

    Verdict sideways = StateJob.verdict(found, CHECK, SUBJECT);

    assertThat(sideways.capacity()).isCloseTo(expected, within(1e-4 * expected));
    assertThat(found.behaviour().vibration().orElseThrow().modes().subList(0, 4))
        .allSatisfy(m -> assertThat(m.frequency()).isCloseTo(expected, within(1e-4 * expected)));
  }
}
