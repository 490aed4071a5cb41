package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Combination;

/**
 * A combination with those of its free parts that act, and with its moving load, if it has one,
 * standing at one place.
 *
 * @param combination the combination
 * @param pattern its free parts that act, in the combination's order; the others are absent
 * @param standing where its moving load stands; present exactly if the combination has one
 */
public record Instance(
    Combination combination, List<Combination.Option> pattern, Optional<Standing> standing) {
  public Instance {
    pattern = List.copyOf(pattern);
    if (combination.moving().isPresent() != standing.isPresent()) {
      throw new IllegalArgumentException(
          "Combination " + combination.name() + " and its moving load do not fit together.");
    }
  }

  /** All cases that act, with their factors from the combination; the moving load is not in it. */
  public List<Combination.Term> terms() {
    List<Combination.Term> terms = new ArrayList<>(combination.terms());
    pattern.forEach(option -> terms.addAll(option.terms()));
    return terms;
  }

  /** The combination with its pattern and the place of the moving load, in words. */
  public String words() {
    String place = standing.map(s -> " at " + s.place()).orElse("");
    return combination.name() + place + (hasOptions() ? ", " + patternWords() : "");
  }

  private boolean hasOptions() {
    return !combination.options().isEmpty();
  }

  /** Which of the free parts act, in words; empty if the combination has none. */
  public String patternWords() {
    if (!hasOptions()) {
      return "";
    }
    if (pattern.isEmpty()) {
      return "no imposed load beside";
    }
    if (pattern.size() == combination.options().size()) {
      return "all imposed loads";
    }
    return "loaded: " + String.join(", ", pattern.stream().map(Combination.Option::words).toList());
  }

  /** The factor on the standing load, 0 if there is none. */
  public double standingFactor() {
    return combination.moving().map(combination::factor).orElse(0.0);
  }
}
