package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.constant;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Writes procedures with the same words for the same symbol everywhere. */
final class Steps {

  private final Procedure.Builder builder;

  Steps(String name, String title) {
    builder = Procedure.named("en1999-" + name, title);
  }

  Reference input(String symbol, String words, Dimension dimension, Domain domain) {
    return builder.input(symbol, words, dimension, domain);
  }

  /** A length above zero. */
  Reference size(String symbol, String words) {
    return builder.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  /** A coordinate or any other length. */
  Reference place(String symbol, String words) {
    return builder.input(symbol, words, Dimension.LENGTH, Domain.ANY);
  }

  /** A number of at least 0. */
  Reference number(String symbol, String words) {
    return builder.input(symbol, words, Dimension.NONE, Domain.NOT_NEGATIVE);
  }

  /** A number above 0. */
  Reference factor(String symbol, String words) {
    return builder.input(symbol, words, Dimension.NONE, Domain.POSITIVE);
  }

  /** 1 for yes, 0 for no. */
  Reference yes(String symbol, String words) {
    return builder.input(symbol, words + ": 1 yes, 0 no", Dimension.NONE, Domain.FRACTION);
  }

  Reference positive(String symbol, String words, Dimension dimension) {
    return builder.input(symbol, words, dimension, Domain.POSITIVE);
  }

  Reference notNegative(String symbol, String words, Dimension dimension) {
    return builder.input(symbol, words, dimension, Domain.NOT_NEGATIVE);
  }

  Reference any(String symbol, String words, Dimension dimension) {
    return builder.input(symbol, words, dimension, Domain.ANY);
  }

  Reference proofStrength() {
    return positive("f_o", "0.2 % proof strength", Dimension.STRESS);
  }

  Reference ultimateStrength() {
    return positive("f_u", "ultimate strength", Dimension.STRESS);
  }

  Reference yieldFactor() {
    return factor("γ_M1", "partial factor of yielding and buckling");
  }

  Reference ruptureFactor() {
    return factor("γ_M2", "partial factor of rupture");
  }

  Reference youngsModulus() {
    return positive("E", "Young's modulus", Dimension.STRESS);
  }

  Reference step(String symbol, String words, Expression formula, Source source) {
    return builder.step(symbol, words, formula.dimension(), formula, source);
  }

  Procedure build() {
    return builder.build();
  }

  static Expression zero(Dimension dimension) {
    return constant(0, dimension);
  }
}
