package spanledger.envelope;

import spanledger.frame.Member;
import spanledger.frame.Vector;

/**
 * The worst deflection of one member under serviceability combinations.
 *
 * @param member the member
 * @param kind how it is measured
 * @param direction the global direction it is measured along, of length 1
 * @param governing where the worst was found
 */
public record DeflectionFinding(Member member, Kind kind, Vector direction, Governing governing) {

  /** How a deflection is measured. */
  public enum Kind {
    /** From the line between the member's ends, against a fraction of its length. */
    FROM_CHORD,
    /** From where the point was, against a fixed length. */
    MOVEMENT,
    /** Level, from where the point was, against a fraction of its height above the supports. */
    SWAY
  }
}
