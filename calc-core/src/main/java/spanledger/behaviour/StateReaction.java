package spanledger.behaviour;

import org.jspecify.annotations.Nullable;
import spanledger.analysis.Reaction;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.frame.Vector;

/** An extreme reaction of a support under solved states. */
final class StateReaction {

  private final ReactionFinding linear;
  private double extreme;
  private @Nullable Instance instance;

  /**
   * @param linear the extreme by sums over load cases
   * @param linearStays whether that is a result itself
   */
  StateReaction(ReactionFinding linear, boolean linearStays) {
    this.linear = linear;
    extreme =
        linearStays
            ? linear.value()
            : linear.greatest() ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  void look(CombinationBehaviour combination) {
    Reaction reaction = combination.result().orElseThrow().reaction(linear.support().node());
    Vector of = linear.freedom().isShift() ? reaction.force() : reaction.moment();
    double value =
        switch (linear.freedom()) {
          case SHIFT_X, TURN_X -> of.x();
          case SHIFT_Y, TURN_Y -> of.y();
          case SHIFT_Z, TURN_Z -> of.z();
        };
    if (linear.greatest() ? value > extreme : value < extreme) {
      extreme = value;
      instance = combination.instance();
    }
  }

  ReactionFinding found() {
    Instance governing = instance;
    return governing == null
        ? linear
        : new ReactionFinding(
            linear.support(),
            linear.freedom(),
            linear.greatest(),
            linear.limitState(),
            governing,
            extreme);
  }
}
