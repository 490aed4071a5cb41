package spanledger.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;

/**
 * A rule set of a user's, which may take over the figures of another one.
 *
 * @param file what messages call its file
 * @param id its short name
 * @param title the standards or the brief it stands for
 * @param inherits the id of the set whose figures hold where it gives none; empty if it stands
 *     alone
 * @param railDirections the directions of guardrail loads; those of the other set if empty
 * @param figures its own figures
 * @param format its format of safety, see {@link RuleSet#format}; if empty that of the other set,
 *     unless it has a figure of resistance of its own
 */
public record OwnRules(
    String file,
    String id,
    String title,
    Optional<String> inherits,
    List<RailDirection> railDirections,
    List<Figure> figures,
    Optional<String> format) {
  public OwnRules {
    railDirections = List.copyOf(railDirections);
    figures = List.copyOf(figures);
  }

  /**
   * The whole set.
   *
   * @param known the sets that it may inherit from, by id
   * @throws TableFormatException if the set that it inherits from is not among them
   */
  public RuleSet on(Map<String, RuleSet> known) {
    Map<String, Figure> all = new TreeMap<>();
    List<RailDirection> directions = railDirections;
    String from = "";
    boolean hasResistance = figures.stream().anyMatch(f -> RuleSet.isOfResistance(f.id()));
    Optional<String> whose = format;
    if (inherits.isPresent()) {
      RuleSet base = known.get(inherits.get());
      if (base == null) {
        throw new TableFormatException(
            file
                + ": \"inherits\" is \""
                + inherits.get()
                + "\", but no rule set has this id."
                + TableObject.choices(inherits.get(), known.keySet()));
      }
      all.putAll(base.figures());
      if (hasResistance) {
        // Either a factor or a divisor: the other set's would count besides.
        all.keySet().removeIf(RuleSet::isOfResistance);
      }
      whose = format.or(() -> hasResistance ? Optional.empty() : base.format());
      directions = directions.isEmpty() ? base.railDirections() : directions;
      from = " (other figures: " + base.id() + ")";
    }
    figures.forEach(figure -> all.put(figure.id(), figure));
    return new RuleSet(id, title + from, all, directions, whose);
  }
}
