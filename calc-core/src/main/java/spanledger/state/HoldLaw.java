package spanledger.state;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Restraint;

/**
 * How a hold with play, or one that acts one way, resists: straight branches, one after another.
 */
final class HoldLaw {

  /**
   * A branch: force = stiffness · (movement − origin).
   *
   * @param from least movement on it
   * @param to greatest movement on it
   * @param stiffness infinite if rigid, 0 if nothing resists
   * @param origin where the force is zero
   * @param condition what is said of the hold on this branch
   */
  record Branch(double from, double to, double stiffness, double origin, Condition condition) {
    boolean isRigid() {
      return Double.isInfinite(stiffness);
    }
  }

  private final List<Branch> branches;

  private HoldLaw(List<Branch> branches) {
    this.branches = List.copyOf(branches);
  }

  static HoldLaw of(Restraint.OneWay hold) {
    double at = hold.against().sign() * hold.gap();
    double inf = Double.POSITIVE_INFINITY;
    Branch bears =
        hold.against() == Restraint.Way.POSITIVE
            ? new Branch(at, inf, hold.stiffness(), at, Condition.BEARS)
            : new Branch(-inf, at, hold.stiffness(), at, Condition.BEARS);
    return hold.against() == Restraint.Way.POSITIVE
        ? new HoldLaw(List.of(new Branch(-inf, at, 0, 0, Condition.OPEN), bears))
        : new HoldLaw(List.of(bears, new Branch(at, inf, 0, 0, Condition.OPEN)));
  }

  static HoldLaw of(Restraint.Play hold) {
    double inf = Double.POSITIVE_INFINITY;
    double play = hold.freePlay();
    double k = hold.stiffness();
    double second = Double.isInfinite(k) ? inf : hold.secondFrom();
    double k2 = hold.secondStiffness();
    double origin2 = Double.isInfinite(k2) ? second : second - k * (second - play) / k2;
    List<Branch> all = new ArrayList<>();
    boolean stepped = second < inf;
    if (stepped) {
      all.add(new Branch(-inf, -second, k2, -origin2, Condition.SECOND_STIFFNESS));
    }
    all.add(new Branch(stepped ? -second : -inf, -play, k, -play, Condition.ENGAGED));
    if (play > 0) {
      all.add(new Branch(-play, play, 0, 0, Condition.IN_PLAY));
    }
    all.add(new Branch(play, stepped ? second : inf, k, play, Condition.ENGAGED));
    if (stepped) {
      all.add(new Branch(second, inf, k2, origin2, Condition.SECOND_STIFFNESS));
    }
    return new HoldLaw(all);
  }

  Branch branch(int index) {
    return branches.get(index);
  }

  /** The branch on which a movement lies, the first if on two. */
  int branchOf(double movement) {
    for (int i = 0; i < branches.size(); i++) {
      if (movement <= branches.get(i).to()) {
        return i;
      }
    }
    return branches.size() - 1;
  }

  /**
   * The branch to go on with.
   *
   * @param now the present one
   * @param movement what it does there
   * @param force what it bears there; of a rigid branch, which has no movement to tell by
   * @param slackMovement movement that rounding explains
   * @param slackForce force that rounding explains
   */
  int next(int now, double movement, double force, double slackMovement, double slackForce) {
    Branch branch = branches.get(now);
    if (branch.isRigid()) {
      boolean upper = Double.isInfinite(branch.to()) && !Double.isInfinite(branch.from());
      if (upper && force < -slackForce) {
        return Math.max(0, now - 1);
      }
      if (!upper && force > slackForce) {
        return Math.min(branches.size() - 1, now + 1);
      }
      return now;
    }
    if (movement < branch.from() - slackMovement || movement > branch.to() + slackMovement) {
      return branchOf(movement);
    }
    return now;
  }

  /** The branch to begin with, by the force that it bears as if there were no play. */
  int first(double force, double slackForce) {
    if (Math.abs(force) <= slackForce) {
      for (int i = 0; i < branches.size(); i++) {
        if (branches.get(i).stiffness() == 0) {
          return i;
        }
      }
    }
    for (int i = 0; i < branches.size(); i++) {
      int at = force > 0 ? branches.size() - 1 - i : i;
      Condition condition = branches.get(at).condition();
      if (condition != Condition.SECOND_STIFFNESS) {
        return at;
      }
    }
    return 0;
  }
}
