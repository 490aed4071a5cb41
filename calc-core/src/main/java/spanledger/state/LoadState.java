package spanledger.state;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;

/**
 * Loads at fixed places that act together. Results of states cannot be added.
 *
 * @param name unique in its job
 * @param parts load cases with their factors
 */
public record LoadState(String name, List<Part> parts) {

  /**
   * A load case in a state.
   *
   * @param loads the case
   * @param factor on all its loads
   */
  public record Part(LoadCase loads, double factor) {}

  public LoadState {
    parts = List.copyOf(parts);
  }

  /** One case alone. */
  public static LoadState of(LoadCase loads) {
    return new LoadState(loads.name(), List.of(new Part(loads, 1)));
  }

  /** The fixed part of a combination. */
  public static LoadState of(Combination combination) {
    return new LoadState(
        combination.name(),
        combination.terms().stream()
            .map(term -> new Part(term.loadCase(), combination.factor(term)))
            .toList());
  }

  /** This with a load standing somewhere. */
  public LoadState with(String where, SegmentLoad standing, double factor) {
    return with(where, List.of(standing), factor);
  }

  /** This with loads standing somewhere. */
  public LoadState with(String where, List<SegmentLoad> standing, double factor) {
    List<Part> all = new ArrayList<>(parts);
    all.add(new Part(new LoadCase(where, List.of(), standing), factor));
    return new LoadState(name + ", " + where, all);
  }

  /** This with more loads. */
  public LoadState with(LoadCase loads, double factor) {
    List<Part> all = new ArrayList<>(parts);
    all.add(new Part(loads, factor));
    return new LoadState(name + ", " + loads.name(), all);
  }
}
