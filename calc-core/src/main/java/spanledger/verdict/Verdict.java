package spanledger.verdict;

import java.util.Optional;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;

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
 * @param instance the combination, with the place of its moving load, if there is one; empty beside
 *     a cut for what no load changes
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
    Optional<Instance> instance,
    String remark) {

  /** One without a combination, or with that of its cut. */
  public Verdict(
      CheckGroup group,
      String check,
      String subject,
      Status status,
      double demand,
      double capacity,
      String unit,
      Optional<Governing> governing,
      String remark) {
    this(
        group,
        check,
        subject,
        status,
        demand,
        capacity,
        unit,
        governing,
        governing.map(Governing::instance),
        remark);
  }

  /** Demand per capacity; NaN where there is no capacity. */
  public double utilisation() {
    return demand / capacity;
  }

  /** What tells a check of one run from all others of the same run. */
  String key() {
    return group + "|" + check + "|" + subject;
  }

  /** Whether this outcome of a check is more onerous than another of the same check. */
  boolean isWorseThan(Verdict other) {
    if (status != other.status) {
      return onerous(status) > onerous(other.status);
    }
    double mine = Double.isNaN(capacity) ? Math.abs(demand) : utilisation();
    double theirs = Double.isNaN(other.capacity) ? Math.abs(other.demand) : other.utilisation();
    return mine > theirs || (Double.isNaN(mine) && !Double.isNaN(theirs));
  }

  private static int onerous(Status status) {
    return switch (status) {
      case FAILED -> 3;
      case NOT_CHECKED -> 2;
      case PASSED -> 1;
      case DEMAND -> 0;
    };
  }

  /** The same with more to remark. */
  Verdict withRemark(String more) {
    return new Verdict(
        group,
        check,
        subject,
        status,
        demand,
        capacity,
        unit,
        governing,
        instance,
        remark.isEmpty() ? more : remark + "; " + more);
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
