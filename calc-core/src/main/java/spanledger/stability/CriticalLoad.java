package spanledger.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import spanledger.analysis.BeamColumnModel;
import spanledger.sparse.BlockFactor;
import spanledger.sparse.BlockMatrix;

/**
 * Finds the lowest positive factor on the axial forces of a frame at which it buckles, with its
 * mode. Exact for segments under a force that is constant along them: the stiffness holds the
 * stability functions, not their first terms.
 *
 * <p>The number of buckling factors below a trial is the number of negative eigenvalues of the
 * stiffness there plus the number of segments that have buckled between held nodes. So no mode can
 * be missed, and the lower bound reported is a proof. Only positive factors count: the reversal of
 * all loads is another state.
 *
 * <p>References: W. H. Wittrick and F. W. Williams, Q. J. Mech. Appl. Math. 24 (1971), pp. 263-284;
 * F. W. Williams and D. Kennedy, "Reliable use of determinants to solve non-linear structural
 * eigenvalue problems efficiently", Int. J. Numer. Meth. Engng 26 (1988), pp. 1825-1841 (both from
 * memory).
 *
 * <p>Not for several threads at once. The modes found serve as starts for the next search; this
 * changes how soon a factor is found, by rounding only what is found.
 */
public final class CriticalLoad {

  /** Modes kept as starts for later searches. */
  private static final int KEPT = 6;

  /** The frame is proved stable this much below the factor reported. */
  private static final double PROVED = 1e-6;

  /** Nearer to a pole of a segment's stiffness than this, rounding decides on signs. */
  private static final double NEAR_POLE = 1e-6;

  /** The frame is proved to have buckled this much, per factor, above the factor reported. */
  private static final double SURE = 1e-5;

  private static final int MOST_ROUNDS = 200;

  private static final int LANCZOS = 40;

  private final FrameStiffness stiffness;
  private final BlockMatrix unloaded;
  private final BlockMatrix here;
  private final BlockMatrix change;
  private final BlockFactor factor;
  private final double[] clampedLoads;
  private final List<KnownMode> kept = new ArrayList<>();

  /**
   * For a frame in the present state of its joints and supports.
   *
   * @param stiffness whose joints must not be set while this is used
   */
  public CriticalLoad(FrameStiffness stiffness) {
    this.stiffness = stiffness;
    unloaded = new BlockMatrix(stiffness.structure());
    here = new BlockMatrix(stiffness.structure());
    change = new BlockMatrix(stiffness.structure());
    factor = new BlockFactor(stiffness.structure());
    stiffness.assemble(new double[stiffness.bars()], 0, unloaded);
    clampedLoads = new double[stiffness.bars()];
    for (int s = 0; s < clampedLoads.length; s++) {
      clampedLoads[s] = clampedLoad(stiffness.bar(s));
    }
  }

  /** The least compression under which a segment buckles while its nodes are held, N. */
  private static double clampedLoad(BeamColumnModel bar) {
    double length = bar.model().length();
    double rigidity =
        bar.model().stiffnessValue("E")
            * Math.min(bar.model().stiffnessValue("I_y"), bar.model().stiffnessValue("I_z"));
    double below = 0;
    double above = 40 * rigidity / (length * length);
    double force = bar.force();
    for (int round = 0; round < 60 && above - below > 1e-13 * above; round++) {
      double middle = 0.5 * (below + above);
      bar.setForce(-middle);
      if (bar.buckledBetweenNodes() > 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    bar.setForce(force);
    return above;
  }

  /**
   * Searches.
   *
   * @param forces mean axial force of each segment, N, tension positive, not modified
   * @param limit factors beyond this do not matter; greater than zero
   */
  public CriticalFactor lowest(double[] forces, double limit) {
    int weakest = -1;
    double members = limit;
    for (int s = 0; s < forces.length; s++) {
      if (forces[s] < 0 && clampedLoads[s] < -forces[s] * members) {
        members = clampedLoads[s] / -forces[s];
        weakest = s;
      }
    }
    return new Search(forces, members, weakest, limit).run();
  }

  /** One search. */
  private final class Search {
    private final double[] forces;
    private final double members;
    private final int weakest;
    private final double limit;
    private double[] mode;
    private final double[] next;
    private final double[] work;
    private int factored;
    private boolean restarted;
    private double above;
    private @Nullable BlockMatrix last;

    Search(double[] forces, double members, int weakest, double limit) {
      this.forces = forces;
      this.members = members;
      this.weakest = weakest;
      this.limit = limit;
      mode = new double[stiffness.size()];
      next = new double[mode.length];
      work = new double[mode.length];
    }

    CriticalFactor run() {
      double stable = 0;
      double unstable = Double.POSITIVE_INFINITY;
      double before = 0;
      // Short of the factor at which a segment buckles between held nodes: there its own
      // stiffness has a pole.
      double top = members * (1 - NEAR_POLE);
      change.clear();
      double trial = Math.min(start(), top);
      for (int round = 0; round < MOST_ROUNDS; round++) {
        stiffness.assemble(forces, trial, here);
        factor.factor(here);
        factored++;
        int count = factor.negatives() + stiffness.buckledBetweenNodes();
        if (count == 0) {
          stable = Math.max(stable, trial);
          if (trial >= top) {
            return membersFirst(stable);
          }
        } else {
          unstable = Math.min(unstable, trial);
        }
        double estimate = improve(trial, before);
        before = trial;
        boolean close = Math.abs(estimate - trial) < 2 * PROVED * trial;
        boolean near = count == 0 && close && estimate > trial;
        if (near && above < SURE) {
          return found(estimate, stable);
        }
        if (unstable - stable < PROVED * stable) {
          return found(0.5 * (stable + unstable), stable);
        }
        if (count > 0 && estimate >= trial && !restarted) {
          // A higher mode was followed.
          restarted = true;
          last = null;
          trial = Math.min(fromScratch(begin()), 0.999 * trial);
          continue;
        }
        // An estimate that proves wrong tells nothing: then only counting helps.
        trial = nextTrial(near ? 0 : estimate, stable, unstable, top, round);
      }
      return found(stable, stable);
    }

    private double nextTrial(
        double estimate, double stable, double unstable, double top, int round) {
      double high = Math.min(unstable, top);
      double aimed = estimate * (1 - PROVED);
      boolean inside = aimed > stable && aimed < high;
      // Now and then by halves, so that it ends whatever the estimates do.
      if (inside && round % 8 != 7) {
        return aimed;
      }
      if (unstable > top) {
        boolean past = estimate > 0 && aimed >= top;
        return past || stable == 0 || 4 * stable >= top ? top : 4 * stable;
      }
      return stable > 0 && unstable > 4 * stable
          ? Math.sqrt(stable * unstable)
          : 0.5 * (stable + unstable);
    }

    private CriticalFactor membersFirst(double stable) {
      keep(mode);
      if (weakest < 0) {
        return new CriticalFactor(
            Double.POSITIVE_INFINITY,
            stable,
            limit,
            new ModeShape(new double[stiffness.size()], "nothing buckles"),
            factored);
      }
      String name = stiffness.frame().segments().get(weakest).name();
      return new CriticalFactor(
          members,
          stable,
          limit,
          new ModeShape(
              new double[stiffness.size()],
              "member " + name + " bows between its nodes, which stay in place"),
          factored);
    }

    private CriticalFactor found(double value, double stable) {
      keep(mode);
      return new CriticalFactor(
          value, stable, limit, new ModeNaming(stiffness).named(mode), factored);
    }

    /** A first guess, from the modes found before or from the softest movement under the forces. */
    private double start() {
      double best = Double.POSITIVE_INFINITY;
      for (KnownMode known : kept) {
        double quotient = known.factor(forces);
        if (quotient > 0 && quotient < best) {
          best = quotient;
          mode = known.shape().clone();
        }
      }
      return best < Double.POSITIVE_INFINITY ? best * (1 - 1e-3) : fromScratch(begin());
    }

    /** By Lanczos' method for the stiffness as it begins to change; {@code change} holds that. */
    private double fromScratch(double scale) {
      Random random = new Random(1);
      // What random loads move most is near the softest movements.
      for (int i = 0; i < mode.length; i++) {
        double like = stiffness.like(i);
        boolean moves = !stiffness.isFixed(i) && like > 0;
        mode[i] = moves ? (random.nextDouble() - 0.5) * Math.sqrt(like) : 0;
      }
      factor.factor(unloaded);
      factored++;
      factor.solve(mode);
      double softest =
          new SoftestMode(mode.length, LANCZOS)
              .find(
                  unloaded::multiply,
                  (from, into) -> {
                    change.multiply(from, into);
                    for (int i = 0; i < into.length; i++) {
                      into[i] *= -scale;
                    }
                  },
                  (from, into) -> {
                    System.arraycopy(from, 0, into, 0, into.length);
                    factor.solve(into);
                  },
                  mode);
      return softest > 0 ? 1 / softest : members;
    }

    /** Sets {@code change} to what small forces change, and says what to multiply it by. */
    private double begin() {
      double small = 1e-3 * Math.min(members, 1);
      stiffness.assemble(forces, small, here);
      change.set(here);
      change.add(unloaded, -1);
      return 1 / small;
    }

    /**
     * Improves the mode by inverse iteration, and says where its eigenvalue vanishes: with K' the
     * change of the stiffness per factor, K w = K' v gives the distance to go as -v·K'v / v·K'w.
     *
     * <p>The energy v·K(α)v is the least over all shapes between the nodes, each of which gives a
     * straight line over α; so it is concave, and vanishes at the latest where the line through
     * factor 0 and the trial does. {@code above} is how far beyond the trial, per trial, that is;
     * by Rayleigh's principle no critical factor is missed between.
     */
    private double improve(double trial, double before) {
      BlockMatrix earlier = last;
      boolean secant = earlier != null && before > 0 && before != trial;
      change.set(here);
      change.add(secant && earlier != null ? earlier : unloaded, -1);
      double per = 1 / (secant ? trial - before : trial);
      if (earlier == null) {
        earlier = new BlockMatrix(stiffness.structure());
      }
      earlier.set(here);
      last = earlier;
      double estimate = trial;
      above = Double.POSITIVE_INFINITY;
      double energy = 0;
      for (int round = 0; round < 3; round++) {
        change.multiply(mode, work);
        double own = dot(mode, work) * per;
        System.arraycopy(work, 0, next, 0, next.length);
        factor.solve(next);
        for (int i = 0; i < next.length; i++) {
          next[i] = stiffness.isFixed(i) ? 0 : next[i] * per;
        }
        double mutual = dot(next, work) * per;
        double size = Math.sqrt(Math.abs(dot(next, next)));
        if (!(size > 0) || mutual == 0) {
          return trial;
        }
        estimate = trial - own / mutual;
        // Of the mode that comes out: K w = K' v.
        energy = mutual / (size * size);
        for (int i = 0; i < mode.length; i++) {
          mode[i] = next[i] / size;
        }
      }
      unloaded.multiply(mode, work);
      double taken = dot(mode, work) - energy;
      above = taken > 0 && energy >= 0 ? energy / taken : Double.POSITIVE_INFINITY;
      return estimate;
    }
  }

  private void keep(double[] mode) {
    if (!(dot(mode, mode) > 0)) {
      return;
    }
    for (KnownMode known : kept) {
      double along = dot(known.shape(), mode);
      if (along * along > 0.9 * dot(known.shape(), known.shape()) * dot(mode, mode)) {
        return;
      }
    }
    if (kept.size() == KEPT) {
      kept.remove(0);
    }
    kept.add(new KnownMode(stiffness, unloaded, mode));
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
