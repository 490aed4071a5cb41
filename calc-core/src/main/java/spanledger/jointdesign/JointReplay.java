package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The runs of a joint that hang on its loads, in the order of their needs, to be worked out again
 * for other loads without a new object for each: the same procedures on the same inputs, so the
 * same values to the last digit. What is asked of a joint must not hang on its loads but through
 * steps of procedures and solvers.
 */
final class JointReplay {

  private final double[] atEnd = new double[JointSolver.FORCES.size()];
  private final Map<String, Integer> endNames = new HashMap<>();
  private final Map<String, Solved> solvedNames = new HashMap<>();
  private final IdentityHashMap<Working, Optional<double[]>> known = new IdentityHashMap<>();
  private final List<Step> steps = new ArrayList<>();

  /** A number that is fed to a run: a place in an array that is filled before. */
  private static final class At {
    private final double[] values;
    private final int place;

    At(double[] values, int place) {
      this.values = values;
      this.place = place;
    }

    double value() {
      return values[place];
    }
  }

  private record Solved(Solve solve, int which) {}

  private sealed interface Step permits Run, Solve {
    void play();
  }

  private static final class Run implements Step {
    private final CompiledProcedure procedure;
    private final double[] values;
    private final int[] inputs;
    private final At[] feeds;

    /**
     * @param values of all inputs and steps; those that do not hang on loads stay
     * @param inputs places of those that do
     * @param feeds what feeds them
     */
    Run(CompiledProcedure procedure, double[] values, int[] inputs, At[] feeds) {
      this.procedure = procedure;
      this.values = values;
      this.inputs = inputs;
      this.feeds = feeds;
    }

    @Override
    public void play() {
      for (int i = 0; i < inputs.length; i++) {
        values[inputs[i]] = feeds[i].value();
      }
      procedure.evaluate(values);
      procedure.requireInDomain(values);
    }
  }

  private static final class Solve implements Step {
    private final JointSolver solver;
    private final double[] found;
    private At[] given = {};

    Solve(JointSolver solver) {
      this.solver = solver;
      this.found = new double[solver.names().size()];
    }

    @Override
    public void play() {
      double[] values = new double[given.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = given[i].value();
      }
      System.arraycopy(solver.solver().apply(values), 0, found, 0, found.length);
    }
  }

  /**
   * @param end what the forces at the member end are called where they feed runs, from N to M_z
   * @param solvers between runs
   */
  JointReplay(Function<String, String> end, List<JointSolver> solvers) {
    for (int i = 0; i < atEnd.length; i++) {
      endNames.put(end.apply(JointSolver.FORCES.get(i)), i);
    }
    for (JointSolver solver : solvers) {
      Solve solve = new Solve(solver);
      for (int i = 0; i < solver.names().size(); i++) {
        solvedNames.put(solver.names().get(i), new Solved(solve, i));
      }
    }
  }

  /**
   * Where the values of a run stand after {@link #play}, with all that it needs; empty if it does
   * not hang on loads.
   *
   * @throws UnsupportedOperationException if it is fed by a solver that is not known here
   */
  Optional<double[]> values(Working working) {
    Optional<double[]> before = known.get(working);
    if (before != null) {
      return before;
    }
    List<Feed> feeds = working.feeds();
    int[] inputs = new int[feeds.size()];
    At[] from = new At[feeds.size()];
    int loaded = 0;
    for (int i = 0; i < inputs.length; i++) {
      Optional<At> at = at(feeds.get(i));
      if (at.isPresent()) {
        inputs[loaded] = i;
        from[loaded++] = at.get();
      }
    }
    Optional<double[]> values = loaded > 0 ? Optional.of(working.values()) : Optional.empty();
    known.put(working, values);
    if (loaded > 0) {
      steps.add(
          new Run(
              working.procedure(),
              values.get(),
              Arrays.copyOf(inputs, loaded),
              Arrays.copyOf(from, loaded)));
    }
    return values;
  }

  private Optional<At> at(Feed feed) {
    if (feed instanceof Feed.Result result) {
      return values(result.from())
          .map(values -> new At(values, result.from().procedure().slot(result.symbol())));
    }
    if (feed instanceof Feed.Given given) {
      if (given.source().equals(JointFeeds.AT_END)) {
        return Optional.of(new At(atEnd, place(endNames.get(given.origin()), given)));
      }
      if (given.source().equals(JointFeeds.SOLVED)) {
        Solved solved = solvedNames.get(given.origin());
        if (solved == null) {
          throw unknown(given);
        }
        prepare(solved.solve());
        return Optional.of(new At(solved.solve().found, solved.which()));
      }
      return Optional.empty();
    }
    throw new UnsupportedOperationException("A feed of a joint hangs on a cut.");
  }

  private void prepare(Solve solve) {
    if (solve.given.length > 0) {
      return;
    }
    At[] given = new At[solve.solver.given().size()];
    for (int i = 0; i < given.length; i++) {
      Feed.Result result = solve.solver.given().get(i);
      double[] values = values(result.from()).orElseGet(result.from()::values);
      given[i] = new At(values, result.from().procedure().slot(result.symbol()));
    }
    solve.given = given;
    steps.add(solve);
  }

  private static int place(@Nullable Integer place, Feed.Given given) {
    if (place == null) {
      throw unknown(given);
    }
    return place;
  }

  private static UnsupportedOperationException unknown(Feed.Given given) {
    return new UnsupportedOperationException("Nobody works out " + given.origin() + " anew.");
  }

  /**
   * Works all of them out.
   *
   * @param forces N, V_y, V_z, T, M_y, M_z at the member end; not modified
   * @throws IllegalArgumentException if the joint cannot bear such forces, or a value is out of its
   *     domain
   */
  void play(double[] forces) {
    System.arraycopy(forces, 0, atEnd, 0, atEnd.length);
    for (Step step : steps) {
      step.play();
    }
  }
}
