package spanledger.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;

/**
 * All factors on the axial forces of a frame at which it buckles, from the lowest upwards, with
 * what each bar does in the mode.
 *
 * <p>The number of buckling factors below a trial is that of negative eigenvalues of the exact
 * stiffness plus that of bars buckled between held nodes (Wittrick and Williams 1971, as in {@link
 * CriticalLoad}); factors are narrowed down by halves between trials whose numbers differ, so none
 * is missed. Modes follow by inverse iteration.
 *
 * <p>Not for several threads at once.
 */
public final class BucklingModes {

  /** Factors are found to this, relative; those closer together count as one. */
  private static final double NARROW = 1e-6;

  private static final int ROUNDS = 6;

  private static final int MOST_DOUBLINGS = 60;

  private final FrameStiffness stiffness;
  private final BlockMatrix matrix;
  private final BlockFactor factor;

  /**
   * For a frame in the present state of its joints and supports.
   *
   * @param stiffness whose joints must not be set while this is used
   */
  public BucklingModes(FrameStiffness stiffness) {
    this.stiffness = stiffness;
    matrix = new BlockMatrix(stiffness.structure());
    factor = new BlockFactor(stiffness.structure());
  }

  /**
   * Goes through the modes.
   *
   * @param forces mean axial force of each segment, N, tension positive, not modified
   * @param limit factors beyond this do not matter; greater than zero
   * @param most no more trials than this
   * @param goOn told each mode in ascending order; false ends the search
   * @return whether the search went on to the limit or was ended, rather than running out of trials
   */
  public boolean search(double[] forces, double limit, int most, Predicate<FrameMode> goOn) {
    return new Search(forces, most, goOn).run(limit);
  }

  /** The number of buckling factors below a trial, and the parts of it. */
  private static final class Count {
    private final int nodes;
    private final int[] bars;

    Count(int nodes, int[] bars) {
      this.nodes = nodes;
      this.bars = bars;
    }

    int total() {
      int sum = nodes;
      for (int bar : bars) {
        sum += bar;
      }
      return sum;
    }
  }

  private final class Search {
    private final double[] forces;
    private final int most;
    private final Predicate<FrameMode> goOn;
    private int trials;
    private int found;
    private boolean ended;

    Search(double[] forces, int most, Predicate<FrameMode> goOn) {
      this.forces = forces;
      this.most = most;
      this.goOn = goOn;
    }

    boolean run(double limit) {
      double low = 0;
      Count below = new Count(0, new int[2 * stiffness.bars()]);
      double high = Math.min(1, limit);
      for (int i = 0; i < MOST_DOUBLINGS && !ended; i++) {
        Count above = count(high);
        between(low, below, high, above);
        if (high >= limit) {
          return trials < most;
        }
        low = high;
        below = above;
        high = Math.min(2 * high, limit);
      }
      return trials < most;
    }

    private void between(double low, Count below, double high, Count above) {
      if (ended || above.total() <= below.total()) {
        return;
      }
      if (trials >= most) {
        ended = true;
        return;
      }
      if (high - low < NARROW * high) {
        report(low, below, high, above);
        return;
      }
      double middle = 0.5 * (low + high);
      Count count = count(middle);
      between(low, below, middle, count);
      between(middle, count, high, above);
    }

    private Count count(double trial) {
      trials++;
      stiffness.assemble(forces, trial, matrix);
      factor.factor(matrix);
      int[] bars = new int[2 * stiffness.bars()];
      for (int s = 0; s < stiffness.bars(); s++) {
        for (int axis = 0; axis < 2 && forces[s] < 0; axis++) {
          bars[2 * s + axis] = stiffness.bar(s).buckled(axis);
        }
      }
      return new Count(factor.negatives(), bars);
    }

    private void report(double low, Count below, double high, Count above) {
      double[][] energies = new double[stiffness.bars()][2];
      double[][] works = new double[stiffness.bars()][2];
      String words = "";
      int moving = above.nodes - below.nodes;
      for (int s = 0; s < stiffness.bars(); s++) {
        for (int axis = 0; axis < 2; axis++) {
          if (above.bars[2 * s + axis] > below.bars[2 * s + axis] && moving <= 0) {
            energies[s][axis] = 1;
            works[s][axis] = 1;
            words =
                "member "
                    + stiffness.frame().segments().get(s).name()
                    + " bows between its nodes, which stay in place";
          }
        }
      }
      if (moving > 0) {
        words = shapes(low, moving, energies, works);
      }
      found += above.total() - below.total();
      ended = !goOn.test(new FrameMode(found, high, words, energies, works));
    }

    /** Modes at a factor just above, by inverse iteration on the stiffness just below. */
    private String shapes(double low, int many, double[][] energies, double[][] works) {
      List<double[]> shapes = new ArrayList<>();
      Random random = new Random(1);
      stiffness.assemble(forces, low, matrix);
      factor.factor(matrix);
      for (int m = 0; m < many; m++) {
        double[] shape = new double[stiffness.size()];
        for (int i = 0; i < shape.length; i++) {
          double like = stiffness.like(i);
          boolean moves = !stiffness.isFixed(i) && like > 0;
          shape[i] = moves ? (random.nextDouble() - 0.5) / Math.sqrt(like) : 0;
        }
        for (int round = 0; round < ROUNDS; round++) {
          orthogonal(shape, shapes);
          factor.solve(shape);
          for (int i = 0; i < shape.length; i++) {
            shape[i] = stiffness.isFixed(i) ? 0 : shape[i];
          }
          scale(shape);
        }
        orthogonal(shape, shapes);
        scale(shape);
        shapes.add(shape);
      }
      for (double[] shape : shapes) {
        new BarEnergies(stiffness, forces, low).add(shape, energies, works);
      }
      return new ModeNaming(stiffness).named(shapes.get(0)).words();
    }
  }

  private static void orthogonal(double[] shape, List<double[]> before) {
    for (double[] other : before) {
      double mutual = CriticalLoad.dot(shape, other);
      for (int i = 0; i < shape.length; i++) {
        shape[i] -= mutual * other[i];
      }
    }
  }

  private static void scale(double[] shape) {
    double size = Math.sqrt(CriticalLoad.dot(shape, shape));
    for (int i = 0; i < shape.length && size > 0; i++) {
      shape[i] /= size;
    }
  }
}
