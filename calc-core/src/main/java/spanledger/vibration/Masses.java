package spanledger.vibration;

import java.util.List;
import spanledger.action.LoadCase;

/**
 * The mass that vibrates: what weighs down in load cases, each with the share that takes part.
 * Loads that do not act downward count for nothing.
 *
 * @param parts the cases
 */
public record Masses(List<Part> parts) {

  public Masses {
    parts = List.copyOf(parts);
  }

  /**
   * A case that takes part.
   *
   * @param loads its downward loads in global axes are masses
   * @param share 1 for what is always there; the declared share of what comes and goes
   */
  public record Part(LoadCase loads, double share) {}
}
