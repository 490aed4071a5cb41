package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * A solver between the runs of a joint: it takes forces from some runs, and others are given what
 * it finds.
 *
 * @param names what each of the numbers that it finds is called where it feeds a run
 * @param given the numbers that it takes
 * @param solver from the one to the other
 */
record JointSolver(List<String> names, List<Feed.Result> given, UnaryOperator<double[]> solver) {

  /** The forces at a member end and on a face, by the symbols of their steps. */
  static final List<String> FORCES = List.of("N", "V_y", "V_z", "T", "M_y", "M_z");

  JointSolver {
    names = List.copyOf(names);
    given = List.copyOf(given);
  }

  /** Steps of a run that a solver takes. */
  static List<Feed.Result> of(Working run, List<String> symbols) {
    List<Feed.Result> all = new ArrayList<>();
    symbols.forEach(symbol -> all.add(new Feed.Result(run, symbol)));
    return all;
  }
}
