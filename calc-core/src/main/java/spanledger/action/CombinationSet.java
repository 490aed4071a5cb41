package spanledger.action;

import java.util.List;

/**
 * The combination rules of a standard.
 *
 * @param id short name, for example {@code en-1990}
 * @param title the standard
 * @param templates its lines in order
 * @param equilibrium its lines for tipping and sliding of the whole structure, in order; none if it
 *     has none
 */
public record CombinationSet(
    String id,
    String title,
    List<CombinationTemplate> templates,
    List<EquilibriumRule> equilibrium) {
  public CombinationSet {
    templates = List.copyOf(templates);
    equilibrium = List.copyOf(equilibrium);
  }

  /** A set without lines for tipping and sliding. */
  public CombinationSet(String id, String title, List<CombinationTemplate> templates) {
    this(id, title, templates, List.of());
  }
}
