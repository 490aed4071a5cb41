package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Working;

/**
 * One joint under all states, of which only the first is worked out in full; under the others its
 * steps are replayed. The state of the greatest use and the last are worked out in full, too, and
 * must give the same; where they do not, or a joint cannot be replayed, all are worked out.
 */
final class JointSweep {

  /** How far a replayed value may be from its run in full, relative; rounding leaves nothing. */
  private static final double SAME = 1e-9;

  private final JointEnd end;
  private final Station station;
  private final List<MemberForces> states;
  private final BiFunction<Instance, double[], JointRun> calculation;
  private final double[][] forces;
  private final List<Checked> checked = new ArrayList<>();

  /** A check, with all its values under the state that is replayed. */
  private static final class Checked {
    private final int face;
    private final double[] values;
    private final boolean loaded;

    Checked(int face, Working working, Optional<double[]> replayed) {
      this.face = face;
      this.values = replayed.orElseGet(working::values);
      this.loaded = replayed.isPresent();
    }
  }

  private record Use(CheckPlace place, Checked check, int slot) {
    double value() {
      return check.values[slot];
    }
  }

  /** The worst so far of the uses of one kind. */
  private static final class Worst {
    private final List<Use> uses = new ArrayList<>();
    private double value = Double.NEGATIVE_INFINITY;
    private int state;
    private CheckPlace place;

    Worst(CheckPlace first) {
      place = first;
    }

    void see(int now, boolean all) {
      for (Use use : uses) {
        if ((all || use.check.loaded) && use.value() > value) {
          value = use.value();
          state = now;
          place = use.place;
        }
      }
    }
  }

  /**
   * @param calculation from the combination and N, V_y, V_z, T, M_y, M_z at the member end; the
   *     same run each time it is asked
   */
  JointSweep(
      JointEnd end,
      Station station,
      List<MemberForces> states,
      BiFunction<Instance, double[], JointRun> calculation) {
    this.end = end;
    this.station = station;
    this.states = states;
    this.calculation = calculation;
    forces = new double[states.size()][JointSolver.FORCES.size()];
    for (int i = 0; i < forces.length; i++) {
      states.get(i).at(station, forces[i]);
    }
  }

  /** Looks at all states and adds the worst of each check. */
  void into(WorstChecks worst, JointCalculation joint) {
    if (states.isEmpty()) {
      return;
    }
    try {
      JointRun first = run(0);
      Optional<List<JointFinding>> found = replayed(first, joint.replay(first));
      if (found.isPresent()) {
        for (int face = 0; face < first.faces().size(); face++) {
          worst.open(first, face);
        }
        worst.add(found.get());
        return;
      }
    } catch (IllegalArgumentException | UnsupportedOperationException inFull) {
      // Worked out in full, so that what is told is of the first state that stands in the way.
    }
    worst.over(end, station, states, calculation);
  }

  private JointRun run(int state) {
    return calculation.apply(states.get(state).instance(), forces[state]);
  }

  private Optional<List<JointFinding>> replayed(JointRun first, JointReplay replay) {
    List<Worst> kinds = kinds(first, replay);
    for (int i = 0; i < forces.length; i++) {
      replay.play(forces[i]);
      for (Worst kind : kinds) {
        kind.see(i, i == 0);
      }
    }
    int last = forces.length - 1;
    if (!agrees(first, replay, last) || !agrees(first, replay, worstState(kinds))) {
      return Optional.empty();
    }
    JointUnderLoad[] loaded = new JointUnderLoad[forces.length];
    List<JointFinding> found = new ArrayList<>();
    for (Worst kind : kinds) {
      int state = kind.state;
      Instance instance = states.get(state).instance();
      if (loaded[state] == null) {
        loaded[state] = new JointUnderLoad(instance, forces[state], calculation);
      }
      found.add(
          new JointFinding(
              end,
              first.joint(),
              loaded[state],
              kind.place,
              new Governing(instance, station, kind.value)));
    }
    return Optional.of(found);
  }

  /** Every kind of use, in the order in which the first run has them. */
  private List<Worst> kinds(JointRun first, JointReplay replay) {
    Map<String, Worst> kinds = new HashMap<>();
    List<Worst> inOrder = new ArrayList<>();
    for (int face = 0; face < first.faces().size(); face++) {
      List<JointCheck> checks = first.faces().get(face).checks();
      for (int i = 0; i < checks.size(); i++) {
        Working working = checks.get(i).working();
        Checked check = new Checked(face, working, replay.values(working));
        checked.add(check);
        for (JointUse use : checks.get(i).uses()) {
          CheckPlace place = CheckPlace.of(first, face, i, use);
          Worst kind = kinds.get(place.kind());
          if (kind == null) {
            kind = new Worst(place);
            kinds.put(place.kind(), kind);
            inOrder.add(kind);
          }
          kind.uses.add(new Use(place, check, working.procedure().slot(use.symbol())));
        }
      }
    }
    return inOrder;
  }

  private static int worstState(List<Worst> kinds) {
    int state = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Worst kind : kinds) {
      if (kind.place.hangsOnLoads() && kind.value > greatest) {
        greatest = kind.value;
        state = kind.state;
      }
    }
    return state;
  }

  /** Whether a run in full has the same checks, the same values and the same gaps as replayed. */
  private boolean agrees(JointRun first, JointReplay replay, int state) {
    JointRun full = run(state);
    replay.play(forces[state]);
    int next = 0;
    for (int face = 0; face < full.faces().size(); face++) {
      FaceRun run = full.faces().get(face);
      if (!run.open().equals(first.faces().get(face).open())) {
        return false;
      }
      for (JointCheck check : run.checks()) {
        Checked other = next < checked.size() ? checked.get(next++) : null;
        if (other == null || other.face != face || !same(check.working().values(), other.values)) {
          return false;
        }
      }
    }
    return next == checked.size();
  }

  private static boolean same(double[] full, double[] replayed) {
    if (Arrays.equals(full, replayed)) {
      return true;
    }
    if (full.length != replayed.length) {
      return false;
    }
    for (int i = 0; i < full.length; i++) {
      double size = Math.max(Math.abs(full[i]), Math.abs(replayed[i]));
      if (!(Math.abs(full[i] - replayed[i]) <= SAME * size)) {
        return false;
      }
    }
    return true;
  }
}
