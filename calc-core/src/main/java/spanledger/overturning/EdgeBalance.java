package spanledger.overturning;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** What holds against what tips, about one line under one rule. */
final class EdgeBalance {

  /**
   * Inputs M_in, M_out, M_z (permanent), φ, γ_inf, γ_sup, M_Q (variable, with their factors); steps
   * M_stb, M_dst, n (what holds per what tips), η (what tips per what holds).
   */
  static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /** Keeps quotients finite where nothing tips or nothing holds, N·mm. */
  private static final double NOTHING = 1;

  private EdgeBalance() {}

  private static Procedure procedure() {
    Source equilibrium =
        Source.fromMemory("EN 1990:2002", "6.4.2, static equilibrium: E_d,dst at most E_d,stb");
    Source quotient = Source.derived("Quotient of what holds and what tips");
    Procedure.Builder p = Procedure.named("tipping-balance", "Tipping about a line");
    Reference holds =
        p.input("M_in", "permanent parts that hold", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference tips =
        p.input("M_out", "permanent parts that tip", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference byHeight =
        p.input("M_z", "permanent weight times height above the line", Dimension.MOMENT);
    Reference sway =
        p.input("φ", "notional level force per weight", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference favourable =
        p.input(
            "γ_inf", "factor on permanent load that holds", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference unfavourable =
        p.input("γ_sup", "factor on permanent load that tips", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference variable =
        p.input(
            "M_Q",
            "variable loads that tip, with their factors",
            Dimension.MOMENT,
            Domain.NOT_NEGATIVE);
    Reference stabilising =
        p.step("M_stb", "what holds", Dimension.MOMENT, favourable.times(holds), equilibrium);
    Reference destabilising =
        p.step(
            "M_dst",
            "what tips",
            Dimension.MOMENT,
            unfavourable
                .times(tips)
                .plus(sway.times(unfavourable).times(max(byHeight, constant(0, Dimension.MOMENT))))
                .plus(variable),
            equilibrium);
    p.step(
        "n",
        "factor against tipping",
        Dimension.NONE,
        stabilising.over(max(destabilising, constant(NOTHING, Dimension.MOMENT))),
        quotient);
    p.step(
        "η",
        "what tips per what holds",
        Dimension.NONE,
        destabilising.over(max(stabilising, constant(NOTHING, Dimension.MOMENT))),
        quotient);
    return p.build();
  }
}
