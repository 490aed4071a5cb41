package spanledger.section;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Writes the procedure of a shape, with the same words and dimension for the same symbol
 * everywhere.
 */
final class SectionSteps {

  private final Procedure.Builder builder;

  SectionSteps(String name, String title) {
    this.builder = Procedure.named(name, title);
  }

  /** A size of the outline. */
  Reference size(String symbol, String words) {
    return builder.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  /** A property that is given. */
  Reference given(SectionSymbol symbol, Domain domain) {
    return builder.input(symbol.symbol(), symbol.words(), symbol.dimension(), domain);
  }

  /** Something else that is given. */
  Reference given(String symbol, String words, Dimension dimension, Domain domain) {
    return builder.input(symbol, words, dimension, domain);
  }

  /** A property. */
  Reference property(SectionSymbol symbol, Expression formula, Source source) {
    return builder.step(symbol.symbol(), symbol.words(), symbol.dimension(), formula, source);
  }

  /** A step on the way to a property. */
  Reference step(String symbol, String words, Expression formula, Source source) {
    return builder.step(symbol, words, formula.dimension(), formula, source);
  }

  /** The principal axes are those of the outline. */
  void notTurned() {
    property(
        SectionSymbol.PRINCIPAL_ROTATION,
        number(0),
        Source.derived("An axis of symmetry is a principal axis"));
  }

  /** The shape has no wall of that kind. */
  void noWall(SectionSymbol slenderness) {
    property(slenderness, number(0), SectionSources.NO_SUCH_WALL);
  }

  Procedure build() {
    return builder.build();
  }
}
