package spanledger.action;

import java.util.Optional;

/**
 * A load case with the category whose factors it takes.
 *
 * @param loads the case
 * @param category its category
 * @param words what it is, for readers
 * @param vertical the case whose vertical loads it turns level, for notional sway
 */
public record CategorisedCase(
    LoadCase loads, ActionCategory category, String words, Optional<LoadCase> vertical) {

  /** A case of its own. */
  public CategorisedCase(LoadCase loads, ActionCategory category, String words) {
    this(loads, category, words, Optional.empty());
  }
}
