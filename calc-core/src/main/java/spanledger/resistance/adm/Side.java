package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.choose;

import spanledger.procedure.Condition;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Chooses what holds for the side towards which a moment bends. A positive M_y stretches the fibres
 * at +z.
 *
 * @param moment that decides
 */
public record Side(Reference moment) {

  /** Whether the moment is positive or zero. */
  private Condition isPositive() {
    return atLeast(moment, moment.times(0));
  }

  /** One of two by the sign of the moment. */
  public Expression of(Expression positive, Expression negative) {
    return choose(isPositive(), positive, negative);
  }

  /**
   * Declares inputs for both sides, marked {@code _pos} and {@code _neg}, and a step that chooses.
   */
  public Reference chosen(
      Procedure.Builder p, String symbol, String words, Dimension dimension, Source source) {
    Reference positive =
        p.input(symbol + "_pos", words + ", positive moment", dimension, Domain.POSITIVE);
    Reference negative =
        p.input(symbol + "_neg", words + ", negative moment", dimension, Domain.POSITIVE);
    return p.step(symbol, words, dimension, of(positive, negative), source);
  }
}
