package spanledger.verdict;

import java.util.Optional;
import spanledger.envelope.Governing;

/**
 * What one check found.
 *
 * @param group the group it belongs to
 * @param check what was checked, for example {@code combined stress}
 * @param subject what it was checked on, for example the member's name
 * @param status the outcome
 * @param demand the effect, in {@code unit}
 * @param capacity what may be borne, in {@code unit}; NaN for demands and unchecked items
 * @param unit the core unit of both, empty for ratios
 * @param governing the combination, place and cut that govern, if there are any
 * @param remark why, or what to do; may be empty
 */
public record Verdict(
    CheckGroup group,
    String check,
    String subject,
    Status status,
    double demand,
    double capacity,
    String unit,
    Optional<Governing> governing,
    String remark) {

  /** Demand per capacity; NaN where there is no capacity. */
  public double utilisation() {
    return demand / capacity;
  }

  /** A check that was not made, and why. */
  public static Verdict notChecked(CheckGroup group, String check, String subject, String why) {
    return new Verdict(
        group,
        check,
        subject,
        Status.NOT_CHECKED,
        Double.NaN,
        Double.NaN,
        "",
        Optional.empty(),
        why);
  }
}
