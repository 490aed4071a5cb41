package spanledger.overturning;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The friction that keeps a structure from sliding along its ground. */
final class SlidingBalance {

  /**
   * Inputs V (permanent weight), γ_inf, γ_sup, φ, α (slope of the ground), e_X, e_Y (downhill),
   * H_X, H_Y, U (level and upward variable forces, with their factors); steps H_e, H_c (downhill
   * and across), T (along the ground), N (onto the ground), μ_req.
   */
  static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /** Inputs μ_req, μ; step η. */
  static final Procedure USE = use();

  static final CompiledProcedure COMPILED_USE = USE.compile();

  /** Keeps the quotient finite where nothing presses on the ground, N. */
  private static final double NOTHING = 1;

  private SlidingBalance() {}

  private static Procedure procedure() {
    Source statics = Source.derived("Equilibrium on an inclined plane");
    Procedure.Builder p = Procedure.named("sliding-balance", "Friction needed against sliding");
    Reference weight = p.input("V", "permanent weight", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference favourable =
        p.input("γ_inf", "factor on weight that holds", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference unfavourable =
        p.input("γ_sup", "factor on weight that slides", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference sway =
        p.input("φ", "notional level force per weight", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference slope =
        p.input("α", "slope of the ground", Dimension.NONE, new Domain(0, true, Math.PI / 2));
    Reference downX = p.input("e_X", "downhill along X", Dimension.NONE);
    Reference downY = p.input("e_Y", "downhill along Y", Dimension.NONE);
    Reference levelX = p.input("H_X", "level forces along X, with factors", Dimension.FORCE);
    Reference levelY = p.input("H_Y", "level forces along Y, with factors", Dimension.FORCE);
    Reference up =
        p.input("U", "upward forces, with factors", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference down =
        p.step(
            "H_e",
            "level forces downhill",
            Dimension.FORCE,
            levelX.times(downX).plus(levelY.times(downY)),
            statics);
    Reference across =
        p.step(
            "H_c",
            "level forces across the slope",
            Dimension.FORCE,
            levelY.times(downX).minus(levelX.times(downY)),
            statics);
    Expression notional = sway.times(unfavourable).times(weight);
    Expression along = unfavourable.times(weight).times(sin(slope)).plus(down.times(cos(slope)));
    Reference tangential =
        p.step(
            "T",
            "force along the ground, the notional force the same way",
            Dimension.FORCE,
            sqrt(along.pow(2).plus(across.pow(2))).plus(notional.times(cos(slope))),
            statics);
    Reference normal =
        p.step(
            "N",
            "force onto the ground",
            Dimension.FORCE,
            favourable
                .times(weight)
                .minus(up)
                .times(cos(slope))
                .minus(down.plus(notional).times(sin(slope))),
            statics);
    p.step(
        "μ_req",
        "friction needed",
        Dimension.NONE,
        tangential.over(max(normal, constant(NOTHING, Dimension.FORCE))),
        statics);
    return p.build();
  }

  private static Procedure use() {
    Procedure.Builder p = Procedure.named("friction-use", "Use of the friction");
    Reference needed = p.input("μ_req", "friction needed", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference given = p.input("μ", "friction declared", Dimension.NONE, Domain.POSITIVE);
    p.step(
        "η",
        "friction needed per friction declared",
        Dimension.NONE,
        needed.over(given),
        Source.derived("Quotient of need and supply"));
    return p.build();
  }
}
