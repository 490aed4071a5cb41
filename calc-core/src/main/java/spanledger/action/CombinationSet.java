package spanledger.action;

import java.util.List;

/**
 * The combination rules of a standard.
 *
 * @param id short name, for example {@code en-1990}
 * @param title the standard
 * @param templates its lines in order
 */
public record CombinationSet(String id, String title, List<CombinationTemplate> templates) {
  public CombinationSet {
    templates = List.copyOf(templates);
  }
}
