package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spanledger.frame.Member;
import spanledger.frame.Restraint;

/**
 * The spring that three test curves give: specimens with plays of 0.10, 0.12 and 0.11 degrees and
 * stiffnesses of 9.5, 10.0 and 10.6 kN·m/rad.
 */
class TestedSpringTest {

  /**
   * k_n of three specimens, scatter unknown: t(0.95; 2) √(4/3), EN 1990, Table D.1: 3.37; times a
   * tenth of the mean of 0.11 degrees, since their own deviation of 0.01 is less.
   */
  private static final double PLAY_SPREAD = 3.3717 * 0.011;

  /** Readings are in four decimals of kN·m, 1/1500 of the moments. */
  private static final double READINGS = 2e-3;

  @Test
  void theLowerRunTakesTheSoftestSpringWithTheWidestPlay() {
    Restraint.Play spring = spring(accepted().job());

    assertThat(Math.toDegrees(spring.freePlay())).isCloseTo(0.11 + PLAY_SPREAD, within(READINGS));
    // exp(m - k s) of the logarithms with s = √ln(1 + 0.10²), worked out apart.
    assertThat(spring.stiffness()).isCloseTo(7.1605e6, within(READINGS * 7.1605e6));
  }

  @Test
  void theUpperRunTakesTheStiffestSpringWithTheLeastPlay() {
    Restraint.Play spring = spring(accepted().upper().orElseThrow());

    assertThat(Math.toDegrees(spring.freePlay())).isCloseTo(0.11 - PLAY_SPREAD, within(READINGS));
    assertThat(spring.stiffness()).isCloseTo(14.0306e6, within(READINGS * 14.0306e6));
  }

  private static ReadJob.Accepted accepted() {
    return (ReadJob.Accepted) Jobs.read(Jobs.resource("complete.json"));
  }

  private static Restraint.Play spring(Job job) {
    Member tie =
        job.frame().members().stream()
            .filter(member -> member.name().equals("tie"))
            .findFirst()
            .orElseThrow();
    return (Restraint.Play) tie.end().aboutZ();
  }
}
