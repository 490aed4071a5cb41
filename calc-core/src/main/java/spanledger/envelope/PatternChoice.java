package spanledger.envelope;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Which free parts of a combination must act for stresses at one cut to be greatest; reuses its
 * arrays, so one per thread.
 *
 * <p>A ranking stress is the greatest of linear effects, one for each way of signing the internal
 * forces. A linear effect is greatest if exactly those parts act that raise it. So every way of
 * signing gives a pattern. Of a few free parts, every pattern is worked out besides. Of many, the
 * best for the equivalent stress is changed as long as the slope of that stress says that a part
 * should come or go: the stress is convex, so no such change can lower it. For walls, which are no
 * such sum, parts come and go one by one as long as that makes them worse.
 */
final class PatternChoice {

  private static final int FORCES = 6;
  private static final int[][] SIGNED = {{4, 5}, {1, 2, 3}, {0, 4, 5}};
  private static final int ROUNDS = 8;

  /** Up to this many free parts every pattern is worked out. */
  private static final int TRIED_ALL = 8;

  private static final double ROUNDING = 1e-12;

  private static final StrengthMeasure[] STRESSES = {
    StrengthMeasure.BENDING, StrengthMeasure.SHEAR, StrengthMeasure.COMBINED
  };

  private static final StrengthMeasure[] ALL = StrengthMeasure.values();
  private static final int MEASURES = ALL.length;

  private final SectionCheck check;
  private final double[] perUnit;
  private final double[] weights = new double[FORCES];
  private final double[] sum = new double[FORCES];
  private final double[] best = new double[MEASURES];
  private final BitSet[] patterns = new BitSet[MEASURES];
  private boolean walls;
  private final Set<BitSet> seen = new LinkedHashSet<>();

  PatternChoice(SectionCheck check) {
    this.check = check;
    this.perUnit = check.perUnit();
    Arrays.fill(patterns, new BitSet());
  }

  /** The greatest value of a measure after {@link #choose}. */
  double best(StrengthMeasure measure) {
    return best[measure.ordinal()];
  }

  /** The parts that act then; not to be modified. */
  BitSet pattern(StrengthMeasure measure) {
    return patterns[measure.ordinal()];
  }

  /**
   * Finds the greatest of every measure.
   *
   * @param forces internal forces of what always acts, not modified
   * @param parts those of the free parts, not modified
   * @param withWalls whether walls are looked at, too
   */
  void choose(double[] forces, double[][] parts, boolean withWalls) {
    walls = withWalls && check.hasWalls();
    Arrays.fill(best, -1);
    seen.clear();
    for (int[] signed : SIGNED) {
      for (int signs = 0; signs < 1 << signed.length; signs++) {
        Arrays.fill(weights, 0);
        for (int i = 0; i < signed.length; i++) {
          weights[signed[i]] = ((signs >> i) & 1) == 0 ? perUnit[signed[i]] : -perUnit[signed[i]];
        }
        look(raising(parts), forces, parts);
      }
    }
    if (parts.length <= TRIED_ALL) {
      if (mayBeBetter(forces, parts)) {
        tryAll(forces, parts);
      }
    } else {
      climb(forces, parts);
    }
    comeAndGo(forces, parts);
  }

  /**
   * Whether some pattern may be worse than those found: no internal force is greater than with all
   * parts that raise it, and stresses grow with the size of every force.
   */
  private boolean mayBeBetter(double[] forces, double[][] parts) {
    for (int k = 0; k < FORCES; k++) {
      double high = forces[k];
      double low = forces[k];
      for (double[] part : parts) {
        high += Math.max(0, part[k]);
        low += Math.min(0, part[k]);
      }
      sum[k] = Math.max(Math.abs(high), Math.abs(low));
    }
    check.rank(sum, 0);
    for (StrengthMeasure measure : STRESSES) {
      if (check.quick(measure) > best[measure.ordinal()] * (1 + ROUNDING)) {
        return true;
      }
    }
    return false;
  }

  /** Works out the stresses of every pattern, each from the one before by one part. */
  private void tryAll(double[] forces, double[][] parts) {
    System.arraycopy(forces, 0, sum, 0, FORCES);
    int acting = 0;
    for (int count = 0; count < 1 << parts.length; count++) {
      if (count > 0) {
        int flipped = Integer.numberOfTrailingZeros(count);
        acting ^= 1 << flipped;
        double sign = (acting >> flipped & 1) == 0 ? -1 : 1;
        for (int k = 0; k < FORCES; k++) {
          sum[k] += sign * parts[flipped][k];
        }
      }
      check.rank(sum, 0);
      for (StrengthMeasure measure : STRESSES) {
        double value = check.quick(measure);
        // What is greater by rounding of another order of adding up is not greater.
        if (value > best[measure.ordinal()] * (1 + ROUNDING)) {
          best[measure.ordinal()] = value;
          patterns[measure.ordinal()] = BitSet.valueOf(new long[] {acting});
        }
      }
    }
  }

  /** The parts that raise the weighted sum of the internal forces. */
  private BitSet raising(double[][] parts) {
    BitSet acts = new BitSet(parts.length);
    for (int i = 0; i < parts.length; i++) {
      double effect = 0;
      for (int k = 0; k < FORCES; k++) {
        effect += weights[k] * parts[i][k];
      }
      if (effect > 0) {
        acts.set(i);
      }
    }
    return acts;
  }

  /** Works out one pattern, once. */
  private boolean look(BitSet acts, double[] forces, double[][] parts) {
    if (!seen.add(acts)) {
      return false;
    }
    addUp(acts, forces, parts);
    for (StrengthMeasure measure : ALL) {
      double value = measure == StrengthMeasure.WALL && !walls ? -1 : check.quick(measure);
      if (value > best[measure.ordinal()]) {
        best[measure.ordinal()] = value;
        patterns[measure.ordinal()] = acts;
      }
    }
    return true;
  }

  private void addUp(BitSet acts, double[] forces, double[][] parts) {
    System.arraycopy(forces, 0, sum, 0, FORCES);
    for (int i = acts.nextSetBit(0); i >= 0; i = acts.nextSetBit(i + 1)) {
      for (int k = 0; k < FORCES; k++) {
        sum[k] += parts[i][k];
      }
    }
    check.rank(sum, 0);
  }

  private void climb(double[] forces, double[][] parts) {
    for (int round = 0; round < ROUNDS; round++) {
      addUp(pattern(StrengthMeasure.COMBINED), forces, parts);
      for (int k = 0; k < FORCES; k++) {
        boolean isShear = k >= 1 && k <= 3;
        // The slope of σ² + 3τ², of which the measure is the root.
        weights[k] =
            Math.signum(sum[k]) * perUnit[k] * (isShear ? 3 * check.shear() : check.normal());
      }
      if (!look(raising(parts), forces, parts)) {
        return;
      }
    }
  }

  private void comeAndGo(double[] forces, double[][] parts) {
    boolean better = walls;
    while (better) {
      better = false;
      BitSet from = pattern(StrengthMeasure.WALL);
      double before = best(StrengthMeasure.WALL);
      for (int i = 0; i < parts.length; i++) {
        BitSet changed = (BitSet) from.clone();
        changed.flip(i);
        look(changed, forces, parts);
      }
      better = best(StrengthMeasure.WALL) > before;
    }
  }
}
