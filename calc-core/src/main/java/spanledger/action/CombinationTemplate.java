package spanledger.action;

import java.util.Map;
import spanledger.provenance.Source;

/**
 * One line of a combination rule, before it is spread over load cases, places and directions.
 *
 * @param name unique in its set, for example {@code 1.2G+1.5Q}
 * @param limitState what it is for
 * @param leading the leading action
 * @param factors the factor of each category that takes part; absent categories are left out
 * @param withNotionalSway whether notional level forces act with it, each way in turn
 * @param source clause
 */
public record CombinationTemplate(
    String name,
    LimitState limitState,
    LeadingAction leading,
    Map<ActionCategory, Figure> factors,
    boolean withNotionalSway,
    Source source) {
  public CombinationTemplate {
    factors = Map.copyOf(factors);
  }

  /** The factor of a category, 0 if it does not take part. */
  public double factor(ActionCategory category) {
    Figure figure = factors.get(category);
    return figure == null ? 0 : figure.value();
  }
}
