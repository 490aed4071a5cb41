package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Condition;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** Inputs that many of the procedures have in common, each under the same symbol and words. */
public final class Symbols {

  private Symbols() {}

  public static Reference tensionYield(Procedure.Builder p) {
    return p.input("F_ty", "tensile yield strength", Dimension.STRESS, Domain.POSITIVE);
  }

  public static Reference tensionUltimate(Procedure.Builder p) {
    return p.input("F_tu", "tensile ultimate strength", Dimension.STRESS, Domain.POSITIVE);
  }

  public static Reference compressionYield(Procedure.Builder p) {
    return p.input("F_cy", "compressive yield strength", Dimension.STRESS, Domain.POSITIVE);
  }

  public static Reference modulus(Procedure.Builder p) {
    return p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
  }

  public static Reference shearModulus(Procedure.Builder p) {
    return p.input("G", "shear modulus", Dimension.STRESS, Domain.POSITIVE);
  }

  /** The temper as a number, for {@link #isAged}. */
  public static Reference aged(Procedure.Builder p) {
    return p.input(
        "aged",
        "1 for tempers T5 to T9, 0 for others and beside welds",
        Dimension.NONE,
        Domain.FRACTION);
  }

  /** Whether the temper is one of T5 to T9. */
  public static Condition isAged(Reference aged) {
    return greater(aged, number(0.5));
  }

  /** A yes-or-no input, 1 or 0, for {@link #is}. */
  public static Reference flag(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words + ": 1 yes, 0 no", Dimension.NONE, Domain.FRACTION);
  }

  /** Whether a yes-or-no input says yes. */
  public static Condition is(Reference flag) {
    return greater(flag, number(0.5));
  }

  public static Reference stress(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.STRESS, Domain.POSITIVE);
  }

  public static Reference ratio(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.NONE, Domain.POSITIVE);
  }

  public static Reference length(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  public static Reference area(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.AREA, Domain.POSITIVE);
  }

  public static Reference modulusOfSection(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.SECTION_MODULUS, Domain.POSITIVE);
  }

  public static Reference secondMoment(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.SECOND_MOMENT, Domain.POSITIVE);
  }
}
