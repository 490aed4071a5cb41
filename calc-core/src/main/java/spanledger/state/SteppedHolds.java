package spanledger.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.stability.FrameStiffness;

/**
 * All holds of a frame whose stiffness changes in steps, and the search for what each does.
 *
 * <p>At first every hold that asks for another branch gets it. Once a set of branches comes back,
 * only the first in the frame's order is changed per round, which ends for one-way holds of a frame
 * that all holds together keep in place (the least-index rule). If even then a set comes back,
 * there is no end, and it is said so.
 *
 * <p>Reference: K. G. Murty, "Note on a Bard-type scheme for solving the complementarity problem",
 * Opsearch 11 (1974), pp. 123-130 (from memory).
 */
final class SteppedHolds {

  /** What a round of changes led to. */
  enum Change {
    NONE,
    MADE,
    ENDLESS
  }

  private final FrameStiffness stiffness;
  private final List<SteppedHold> holds = new ArrayList<>();
  private final Set<List<Integer>> seen = new HashSet<>();
  private final double[] origins;
  private boolean oneByOne;
  private boolean atFirst;

  SteppedHolds(FrameStiffness stiffness) {
    this.stiffness = stiffness;
    Frame frame = stiffness.frame();
    origins = new double[stiffness.size()];
    for (Support support : frame.supports()) {
      for (Freedom freedom : Freedom.values()) {
        if (!support.restraint(freedom).isLinear()) {
          int at = 6 * frame.indexOf(support.node()) + freedom.ordinal();
          holds.add(new SteppedHold.AtSupport(support, freedom, at));
        }
      }
    }
    for (Segment segment : frame.segments()) {
      addAlong(segment, segment.start().axial(), segment.end().axial());
      addAlong(segment, segment.end().axial(), segment.start().axial());
      for (int joint = 0; joint < 4; joint++) {
        if (!SteppedHold.AtJoint.restraint(segment, joint).isLinear()) {
          holds.add(new SteppedHold.AtJoint(segment, joint));
        }
      }
    }
  }

  private void addAlong(Segment segment, Restraint restraint, Restraint other) {
    if (!restraint.isLinear()) {
      double bar = stiffness.bar(segment.index()).model().stiffnessValue("s_a0");
      holds.add(new SteppedHold.Along(segment, restraint, other, bar));
    }
  }

  boolean isEmpty() {
    return holds.isEmpty();
  }

  /** Puts all holds as they are at first. */
  void reset() {
    seen.clear();
    oneByOne = false;
    if (holds.isEmpty() || atFirst) {
      return;
    }
    holds.forEach(SteppedHold::reset);
    apply();
    atFirst = true;
  }

  private void apply() {
    for (SteppedHold hold : holds) {
      hold.apply(stiffness);
    }
    Arrays.fill(origins, 0);
    Frame frame = stiffness.frame();
    for (Support support : frame.supports()) {
      if (support.freeWhenLifted()) {
        setOthers(support, isLifted(support));
      }
    }
    for (SteppedHold hold : holds) {
      if (hold instanceof SteppedHold.AtSupport own) {
        origins[own.freedomIndex()] = own.origin();
      }
    }
    stiffness.settle();
  }

  private boolean isLifted(Support support) {
    for (SteppedHold hold : holds) {
      if (hold instanceof SteppedHold.AtSupport own
          && own.support().equals(support)
          && own.condition() == Condition.OPEN) {
        return true;
      }
    }
    return false;
  }

  private void setOthers(Support support, boolean lifted) {
    for (Freedom freedom : Freedom.values()) {
      Restraint restraint = support.restraint(freedom);
      if (restraint.isLinear()) {
        int at = 6 * stiffness.frame().indexOf(support.node()) + freedom.ordinal();
        double holding =
            restraint instanceof Restraint.Fixed
                ? Double.POSITIVE_INFINITY
                : restraint instanceof Restraint.Spring spring ? spring.stiffness() : 0;
        stiffness.setSupport(at, lifted ? 0 : holding);
      }
    }
  }

  /** The movement of each freedom at which its support has no force; six per node. */
  double[] origins() {
    return origins;
  }

  /** Reads movements and forces of all holds from a solution. */
  void read(double[] movements, double[] supportForces) {
    for (SteppedHold hold : holds) {
      hold.read(stiffness, movements, supportForces);
    }
  }

  /** Changes what the solution last read asks for. */
  Change change(double slackMovement, double slackForce) {
    List<Integer> before = branches();
    List<SteppedHold> asking = new ArrayList<>();
    List<Integer> wanted = new ArrayList<>();
    for (SteppedHold hold : holds) {
      int branch = hold.wanted(slackMovement, slackForce);
      if (branch != hold.branch()) {
        asking.add(hold);
        wanted.add(branch);
      }
    }
    if (asking.isEmpty()) {
      return Change.NONE;
    }
    if (!seen.add(before)) {
      if (oneByOne) {
        return Change.ENDLESS;
      }
      oneByOne = true;
      seen.clear();
      seen.add(before);
    }
    int count = oneByOne ? 1 : asking.size();
    for (int i = 0; i < count; i++) {
      asking.get(i).take(wanted.get(i));
    }
    atFirst = false;
    apply();
    return Change.MADE;
  }

  /** Forgets which sets were seen; second order may come back to one of them. */
  void nextPhase() {
    seen.clear();
    oneByOne = false;
  }

  /** Puts all holds on given branches. */
  void restore(List<Integer> branches) {
    if (!branches.equals(branches())) {
      for (int i = 0; i < holds.size(); i++) {
        holds.get(i).take(branches.get(i));
      }
      atFirst = false;
      apply();
    }
  }

  /** The branch of each hold. */
  List<Integer> branches() {
    return holds.stream().map(SteppedHold::branch).toList();
  }

  /** What every hold does. */
  List<HoldReport> reports() {
    return holds.stream().map(SteppedHold::report).toList();
  }
}
