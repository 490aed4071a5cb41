package spanledger.deck;

import java.util.Comparator;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.RuleSet;

/** The loads and limits of decks and treads in a rule set, and the factors on them. */
final class DeckLoads {

  private final RuleSet rules;
  private final CombinationSet combinations;

  DeckLoads(RuleSet rules, CombinationSet combinations) {
    this.rules = rules;
    this.combinations = combinations;
  }

  /** The load of a kind, if the rule set has one for floors or treads. */
  Optional<Figure> load(DeckUse.Kind kind, DeckLoad load) {
    boolean treads = kind == DeckUse.Kind.TREADS;
    return switch (load) {
      case AREA -> rules.find(RuleSet.FLOOR_AREA);
      case POINT ->
          treads
              ? rules.find(RuleSet.TREAD_POINT).or(() -> rules.find(RuleSet.FLOOR_POINT))
              : rules.find(RuleSet.FLOOR_POINT);
      case LINE -> treads ? rules.find(RuleSet.TREAD_LINE) : Optional.empty();
    };
  }

  /** The side of the patch of the load at one place, if the rule set says it. */
  Optional<Figure> patch(DeckUse.Kind kind) {
    Optional<Figure> deck =
        rules.find(RuleSet.DECK_POINT_PATCH).or(() -> rules.find(RuleSet.FLOOR_POINT_PATCH));
    return kind == DeckUse.Kind.TREADS
        ? rules.find(RuleSet.TREAD_POINT_PATCH).or(() -> deck)
        : deck;
  }

  /** The deflection allowed as a part of the span. */
  Optional<Figure> deflectionRatio(DeckUse.Kind kind) {
    return rules.find(
        ownTreadLimit(kind) ? RuleSet.TREAD_DEFLECTION_RATIO : RuleSet.FLOOR_DEFLECTION_RATIO);
  }

  /** The greatest deflection allowed. */
  Optional<Figure> deflectionMost(DeckUse.Kind kind) {
    return rules.find(ownTreadLimit(kind) ? RuleSet.TREAD_DEFLECTION : RuleSet.FLOOR_DEFLECTION);
  }

  private boolean ownTreadLimit(DeckUse.Kind kind) {
    return kind == DeckUse.Kind.TREADS && rules.find(RuleSet.TREAD_DEFLECTION_RATIO).isPresent();
  }

  /** The strength combination whose factors make most of a weight and a load, in one unit. */
  CombinationTemplate worst(double weight, double load) {
    return combinations.templates().stream()
        .filter(t -> t.limitState() == LimitState.STRENGTH && t.leading() == LeadingAction.FLOOR)
        .max(
            Comparator.comparingDouble(
                t ->
                    t.factor(ActionCategory.PERMANENT) * weight
                        + t.factor(ActionCategory.IMPOSED) * load))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Combination set "
                        + combinations.id()
                        + " has no strength combination that"
                        + " floor loads lead."));
  }
}
