package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Comparisons by relative tolerance. */
final class SectionAssertions {

  /** For values that differ by rounding only. */
  static final double ROUNDING = 1e-9;

  private SectionAssertions() {}

  static void assertNear(String what, double found, double expected, double relative) {
    assertThat(found).as(what).isCloseTo(expected, within(Math.abs(expected) * relative));
  }

  /** The deviation must lie between two relative bounds. */
  static void assertDeviates(
      String what, double found, double reference, double least, double most) {
    assertThat(found / reference - 1).as(what + ", relative deviation").isBetween(least, most);
  }
}
