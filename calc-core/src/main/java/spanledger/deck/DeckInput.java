package spanledger.deck;

import spanledger.action.ActionCategory;
import spanledger.action.CombinationTemplate;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.section.Section;

/** A number that a calculation of decks starts from, and where it comes from. */
public sealed interface DeckInput {

  /** The number, in core units. */
  double value();

  /** A number that the description gives. */
  record Given(double value, Source source) implements DeckInput {}

  /** A size of the use. */
  record OfUse(DeckUse use, UseSize size) implements DeckInput {
    @Override
    public double value() {
      return size.of(use);
    }
  }

  /** A figure of the rule set, or a constant, by its id. */
  record OfFigure(String id, double value) implements DeckInput {}

  /** The factor of a combination rule on a category of actions. */
  record OfCombination(CombinationTemplate template, ActionCategory category) implements DeckInput {
    @Override
    public double value() {
      return template.factor(category);
    }
  }

  /**
   * A number of a capacity table, in the row before or after the span of a use.
   *
   * @param after whether it is the row after the span
   */
  record OfTable(DeckUse use, PanelColumn column, boolean after, double value)
      implements DeckInput {}

  /** A property of a section by its symbol. */
  record OfSection(Section section, String symbol, double value) implements DeckInput {}

  /** A property of an alloy by its symbol: f_o, E or G. */
  record OfAlloy(Alloy alloy, String symbol, double value) implements DeckInput {}

  /** An input or step of an earlier calculation. */
  record OfStep(DeckCalculation calculation, String symbol) implements DeckInput {
    @Override
    public double value() {
      return calculation.value(symbol);
    }
  }
}
