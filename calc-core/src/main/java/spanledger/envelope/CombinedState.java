package spanledger.envelope;

import java.util.List;
import spanledger.action.Combination;
import spanledger.analysis.WeightedLoad;

/** Movements, end forces and loads of a combination. Arrays are shared, not copied: read only. */
final class CombinedState {

  private final Combination combination;
  private final double[] movements;
  private final double[] endForces;
  private final List<List<WeightedLoad>> loads;

  CombinedState(
      Combination combination,
      double[] movements,
      double[] endForces,
      List<List<WeightedLoad>> loads) {
    this.combination = combination;
    this.movements = movements;
    this.endForces = endForces;
    this.loads = loads;
  }

  Combination combination() {
    return combination;
  }

  /** Of all nodes, six each. */
  double[] movements() {
    return movements;
  }

  /** Of all segments, twelve each, in their axes. */
  double[] endForces() {
    return endForces;
  }

  /** On each segment, with their factors. */
  List<List<WeightedLoad>> loads() {
    return loads;
  }
}
