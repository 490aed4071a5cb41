package spanledger.action;

import java.util.List;

/**
 * All actions of a job: fixed load cases, loads that may stand anywhere, and their combinations.
 *
 * @param cases the fixed cases in order
 * @param movingLoads the loads that may stand anywhere
 * @param combinations the combinations in order
 */
public record Actions(
    List<CategorisedCase> cases, List<MovingLoad> movingLoads, List<Combination> combinations) {
  public Actions {
    cases = List.copyOf(cases);
    movingLoads = List.copyOf(movingLoads);
    combinations = List.copyOf(combinations);
  }
}
