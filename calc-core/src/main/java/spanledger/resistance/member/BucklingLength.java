package spanledger.resistance.member;

import spanledger.provenance.Source;

/**
 * A buckling length. There is no default: someone, or an analysis, has to say it.
 *
 * @param length mm
 * @param reason why it is this long, for example {@code critical mode 2 of combination 4: π√(EI /
 *     N_cr)} or {@code declared}
 * @param source where it comes from
 */
public record BucklingLength(double length, String reason, Source source) {

  /**
   * @throws IllegalArgumentException if the length is not positive
   */
  public BucklingLength {
    if (!(length > 0 && Double.isFinite(length))) {
      throw new IllegalArgumentException(
          "A buckling length is " + length + " mm, but must be positive.");
    }
  }
}
