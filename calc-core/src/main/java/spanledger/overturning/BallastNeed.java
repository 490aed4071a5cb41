package spanledger.overturning;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The mass that has to be added so that what holds is as much as what tips. */
final class BallastNeed {

  /**
   * Inputs M_stb, M_dst, γ_inf, γ_sup, φ, k_in, k_out, k_z (moments about the line per mass of
   * ballast, as in {@link LineWeight}); steps k (moment gained per mass), m (mass; 0 if none is
   * needed, -1 if no mass at these places helps).
   */
  static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private BallastNeed() {}

  private static Procedure procedure() {
    Source statics = Source.derived("Mass whose moment closes the gap");
    Procedure.Builder p = Procedure.named("ballast-against-tipping", "Ballast against tipping");
    Reference holds = p.input("M_stb", "what holds", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference tips = p.input("M_dst", "what tips", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference favourable =
        p.input("γ_inf", "factor on weight that holds", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference unfavourable =
        p.input("γ_sup", "factor on weight that tips", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference sway =
        p.input("φ", "notional level force per weight", Dimension.NONE, Domain.NOT_NEGATIVE);
    Dimension perMass = Dimension.MOMENT.per(Dimension.MASS);
    Reference within =
        p.input("k_in", "moment per mass of ballast that holds", perMass, Domain.NOT_NEGATIVE);
    Reference beyond =
        p.input("k_out", "moment per mass of ballast that tips", perMass, Domain.NOT_NEGATIVE);
    Reference above = p.input("k_z", "weight times height above the line, per mass", perMass);
    Expression level = sway.times(max(above, constant(0, perMass)));
    Reference gain =
        p.step(
            "k",
            "moment gained per mass",
            perMass,
            favourable.times(within).minus(unfavourable.times(beyond.plus(level))),
            statics);
    Expression gap = tips.minus(holds);
    Expression noMoment = constant(0, Dimension.MOMENT);
    p.step(
        "m",
        "mass to add; 0 if none is needed, -1 if none helps here",
        Dimension.MASS,
        choose(
            greater(gap, noMoment),
            choose(
                greater(gain, constant(0, gain.dimension())),
                gap.over(gain),
                constant(-1, Dimension.MASS)),
            constant(0, Dimension.MASS)),
        statics);
    return p.build();
  }
}
