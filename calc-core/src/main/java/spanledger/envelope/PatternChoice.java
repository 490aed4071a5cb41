package spanledger.envelope;

import java.util.Arrays;

/**
 * Which free parts of a combination must act for a stress measure at one cut to be greatest; reuses
 * its arrays, so one per thread.
 *
 * <p>A ranking stress is the greatest of linear effects, one for each way of signing the internal
 * forces. A linear effect is greatest if exactly those parts act that raise it. So every way of
 * signing gives a pattern; from each, the pattern is changed as long as the slope of the measure at
 * the state reached says that a part should come or go. The measure is convex, so no such change
 * can lower it.
 */
final class PatternChoice {

  private static final int FORCES = 6;
  private static final int[] NORMAL = {0, 4, 5};
  private static final int[] SHEAR = {1, 2, 3};
  private static final int[] BENDING = {4, 5};
  private static final int ROUNDS = 8;

  private final SectionCheck check;
  private final double[] perUnit;
  private final double[] weights = new double[FORCES];
  private final double[] sum = new double[FORCES];
  private boolean[] acts = new boolean[0];

  PatternChoice(SectionCheck check) {
    this.check = check;
    this.perUnit = check.perUnit();
  }

  /**
   * The greatest value of a measure.
   *
   * @param forces internal forces of what always acts, not modified
   * @param parts those of the free parts, not modified
   * @param chosen set to the parts that act
   */
  double best(StrengthMeasure measure, double[] forces, double[][] parts, boolean[] chosen) {
    if (acts.length != parts.length) {
      acts = new boolean[parts.length];
    }
    if (parts.length == 0) {
      return value(measure, forces, parts);
    }
    double best = -1;
    int[] signed = signed(measure);
    for (int signs = 0; signs < 1 << signed.length; signs++) {
      Arrays.fill(weights, 0);
      for (int i = 0; i < signed.length; i++) {
        weights[signed[i]] = ((signs >> i) & 1) == 0 ? perUnit[signed[i]] : -perUnit[signed[i]];
      }
      choose(parts);
      double value = climb(measure, forces, parts);
      if (value > best) {
        best = value;
        System.arraycopy(acts, 0, chosen, 0, acts.length);
      }
    }
    if (measure == StrengthMeasure.COMBINED) {
      double shear = best(StrengthMeasure.SHEAR, forces, parts);
      if (shear > best) {
        best = shear;
        System.arraycopy(acts, 0, chosen, 0, acts.length);
      }
    }
    return best;
  }

  /** The combined measure, climbed to from the patterns of greatest shear. */
  private double best(StrengthMeasure from, double[] forces, double[][] parts) {
    double best = -1;
    boolean[] kept = new boolean[acts.length];
    int[] signed = signed(from);
    for (int signs = 0; signs < 1 << signed.length; signs++) {
      Arrays.fill(weights, 0);
      for (int i = 0; i < signed.length; i++) {
        weights[signed[i]] = ((signs >> i) & 1) == 0 ? perUnit[signed[i]] : -perUnit[signed[i]];
      }
      choose(parts);
      double value = climb(StrengthMeasure.COMBINED, forces, parts);
      if (value > best) {
        best = value;
        System.arraycopy(acts, 0, kept, 0, kept.length);
      }
    }
    System.arraycopy(kept, 0, acts, 0, kept.length);
    return best;
  }

  private static int[] signed(StrengthMeasure measure) {
    return switch (measure) {
      case BENDING -> BENDING;
      case SHEAR -> SHEAR;
      case COMBINED, WALL -> NORMAL;
    };
  }

  /** Lets those parts act that raise the weighted sum of the internal forces. */
  private boolean choose(double[][] parts) {
    boolean changed = false;
    for (int i = 0; i < parts.length; i++) {
      double effect = 0;
      for (int k = 0; k < FORCES; k++) {
        effect += weights[k] * parts[i][k];
      }
      changed |= acts[i] != effect > 0;
      acts[i] = effect > 0;
    }
    return changed;
  }

  private double climb(StrengthMeasure measure, double[] forces, double[][] parts) {
    double value = value(measure, forces, parts);
    if (measure != StrengthMeasure.COMBINED) {
      return value;
    }
    for (int round = 0; round < ROUNDS; round++) {
      double normal = check.normal();
      double shear = check.shear();
      for (int k = 0; k < FORCES; k++) {
        boolean isShear = k >= 1 && k <= 3;
        // The slope of σ² + 3τ², of which the measure is the root.
        weights[k] = Math.signum(sum[k]) * perUnit[k] * (isShear ? 3 * shear : normal);
      }
      if (!choose(parts)) {
        return value;
      }
      value = value(measure, forces, parts);
    }
    return value;
  }

  private double value(StrengthMeasure measure, double[] forces, double[][] parts) {
    System.arraycopy(forces, 0, sum, 0, FORCES);
    for (int i = 0; i < parts.length; i++) {
      if (acts[i]) {
        for (int k = 0; k < FORCES; k++) {
          sum[k] += parts[i][k];
        }
      }
    }
    check.rank(sum, 0);
    return check.quick(measure);
  }
}
