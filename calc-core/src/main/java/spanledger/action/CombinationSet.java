package spanledger.action;

import java.util.List;
import java.util.Optional;

/**
 * The combination rules of a standard.
 *
 * @param id short name, for example {@code en-1990}
 * @param title the standard
 * @param templates its lines in order
 * @param equilibrium its lines for tipping and sliding of the whole structure, in order; none if it
 *     has none
 * @param format the format of safety that its factors belong to, the same words in the rule sets
 *     and codes that go with it; empty if it does not say
 */
public record CombinationSet(
    String id,
    String title,
    List<CombinationTemplate> templates,
    List<EquilibriumRule> equilibrium,
    Optional<String> format) {
  public CombinationSet {
    templates = List.copyOf(templates);
    equilibrium = List.copyOf(equilibrium);
  }

  /** A set without lines for tipping and sliding. */
  public CombinationSet(String id, String title, List<CombinationTemplate> templates) {
    this(id, title, templates, List.of());
  }

  /** A set that does not say its format. */
  public CombinationSet(
      String id,
      String title,
      List<CombinationTemplate> templates,
      List<EquilibriumRule> equilibrium) {
    this(id, title, templates, equilibrium, Optional.empty());
  }
}
