package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Expression;

/** Formulas that several interactions share. */
final class Interaction {

  private Interaction() {}

  /** Both moments on a hollow or solid section, each per its resistance. */
  static Expression ofMoments(Expression aboutY, Expression aboutZ) {
    return aboutY.pow(number(1.7)).plus(aboutZ.pow(number(1.7))).pow(number(0.6));
  }
}
