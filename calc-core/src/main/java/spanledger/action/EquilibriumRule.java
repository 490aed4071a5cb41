package spanledger.action;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import spanledger.provenance.Source;

/**
 * One line of the rules by which a structure as a whole must not tip or slide. Permanent load has
 * two factors: parts that hold the structure down take one, parts that tip it the other.
 *
 * @param name unique in its set, for example {@code EQU G+1.5R}
 * @param leading the leading action
 * @param holding the factor on permanent load that holds down
 * @param overturning the factor on permanent load that tips or slides
 * @param factors the factor of each variable category that takes part where it makes things worse;
 *     absent categories are left out
 * @param withNotionalSway whether notional level forces act with it
 * @param source clause
 */
public record EquilibriumRule(
    String name,
    LeadingAction leading,
    Figure holding,
    Figure overturning,
    Map<ActionCategory, Figure> factors,
    boolean withNotionalSway,
    Source source) {

  public EquilibriumRule {
    factors = Map.copyOf(factors);
  }

  /** The factor of a variable category, 0 if it does not take part. */
  public double factor(ActionCategory category) {
    Figure figure = factors.get(category);
    return figure == null ? 0 : figure.value();
  }

  /** All its factors by id, in a fixed order. */
  public Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put(holding.id(), holding);
    all.put(overturning.id(), overturning);
    new TreeMap<>(factors).values().forEach(figure -> all.put(figure.id(), figure));
    return all;
  }

  /** The same with some of its factors replaced, by id. */
  public EquilibriumRule with(Map<String, Figure> replaced) {
    Map<ActionCategory, Figure> changed = new TreeMap<>(factors);
    changed.replaceAll((category, figure) -> replaced.getOrDefault(figure.id(), figure));
    return new EquilibriumRule(
        name,
        leading,
        replaced.getOrDefault(holding.id(), holding),
        replaced.getOrDefault(overturning.id(), overturning),
        changed,
        withNotionalSway,
        source);
  }
}
