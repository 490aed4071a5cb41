package spanledger.behaviour;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.state.StateResult;
import spanledger.vibration.Vibration;

/** How the frame behaves under every combination that was looked at as a state. Immutable. */
public final class Behaviour {

  private final List<CombinationBehaviour> combinations;
  private final SecondOrder secondOrder;
  private final double limit;
  private final boolean linear;
  private final Optional<Vibration> vibration;
  private final Map<String, CombinationBehaviour> byWords = new HashMap<>();

  Behaviour(
      List<CombinationBehaviour> combinations,
      SecondOrder secondOrder,
      double limit,
      boolean linear,
      Optional<Vibration> vibration) {
    this.combinations = List.copyOf(combinations);
    this.secondOrder = secondOrder;
    this.limit = limit;
    this.linear = linear;
    this.vibration = vibration;
    combinations.forEach(c -> byWords.put(c.instance().words(), c));
  }

  /** The combinations in order: fixed ones as planned, then moving loads where they govern. */
  public List<CombinationBehaviour> combinations() {
    return combinations;
  }

  /** When second order was asked for. */
  public SecondOrder secondOrder() {
    return secondOrder;
  }

  /** The critical load factor from which first order suffices; infinite if it never does. */
  public double limit() {
    return limit;
  }

  /** Whether every joint and support is linear. */
  public boolean isLinear() {
    return linear;
  }

  /** How it vibrates; empty if nothing weighs on it. */
  public Optional<Vibration> vibration() {
    return vibration;
  }

  /** The behaviour under an instance, if it was looked at. */
  public Optional<CombinationBehaviour> of(Instance instance) {
    // By words, as comparing by value would compare all loads and members.
    return Optional.ofNullable(byWords.get(instance.words()));
  }

  /** Whether checks of an instance rest on its state and not on a sum over load cases. */
  public boolean isByState(Instance instance) {
    return of(instance).map(CombinationBehaviour::byState).orElse(false);
  }

  /** The state on which checks of an instance rest, if they do and it has a solution. */
  public Optional<StateResult> stateOf(Instance instance) {
    return of(instance).filter(CombinationBehaviour::byState).flatMap(CombinationBehaviour::result);
  }

  /** Those whose checks ought to rest on a state, but that have none. */
  public List<CombinationBehaviour> withoutState() {
    return combinations.stream().filter(c -> c.byState() && c.result().isEmpty()).toList();
  }

  /** The combination nearest to buckling, if any was looked at. */
  public Optional<CombinationBehaviour> nearestToBuckling() {
    CombinationBehaviour nearest = null;
    for (CombinationBehaviour one : combinations) {
      if (nearest == null || one.criticalFactor() < nearest.criticalFactor()) {
        nearest = one;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** Whether second order is missing where the critical load factor asks for it. */
  public boolean lacksSecondOrder() {
    return secondOrder == SecondOrder.NEVER
        && combinations.stream().anyMatch(c -> c.criticalFactor() < limit);
  }
}
