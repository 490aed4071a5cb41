package spanledger.jointdesign;

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

/**
 * The part of what a bolt carries that one ply bears, where plies lie in a fork.
 *
 * <p>Inputs n (planes in which the bolt is sheared), n_i (planes beside the ply and others of its
 * part that touch it), a_i, a_o (from the middle of the inner ply of a fork to that of this and of
 * the other outer one; 0 if the ply is no outer one of a fork), t, f_u, C_o (thickness times
 * strength of the plies that it lies flat on, of the same part); steps s_e, s_l, s_g, s_i.
 */
public final class PlyShare {

  private static final Source PLANES =
      Source.derived("Equal shear in every plane (docs/theory/joints.md, plies)");
  private static final Source LEVER =
      Source.derived("Equilibrium of a bolt on the middles of its plies (docs/theory/joints.md)");
  private static final Source TOGETHER =
      Source.derived("Plies of one part share by thickness and strength (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private PlyShare() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-ply-share", "What part of a bolt's force plies bear");
    Reference planes =
        p.input("n", "planes in which the bolt is sheared", Dimension.NONE, Domain.POSITIVE);
    Reference beside =
        p.input("n_i", "planes beside this ply and its like", Dimension.NONE, Domain.POSITIVE);
    Reference own =
        p.input(
            "a_i",
            "from the middle of the inner ply of a fork to this outer one, 0 if it is none",
            Dimension.LENGTH,
            Domain.NOT_NEGATIVE);
    Reference other =
        p.input(
            "a_o",
            "from the middle of the inner ply to the other outer one, 0 if this is none",
            Dimension.LENGTH,
            Domain.NOT_NEGATIVE);
    Reference thickness = p.input("t", "thickness of the ply", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("f_u", "ultimate strength of the ply", Dimension.STRESS, Domain.POSITIVE);
    Reference others =
        p.input(
            "C_o",
            "thickness times strength of plies of its part that it lies on",
            Dimension.LINE_LOAD,
            Domain.NOT_NEGATIVE);
    Reference equal =
        p.step("s_e", "part, equal in every plane", Dimension.NONE, beside.over(planes), PLANES);
    Reference lever =
        p.step(
            "s_l",
            "part, by the lever between the outer plies",
            Dimension.NONE,
            choose(greater(own, constant(0, Dimension.LENGTH)), other.over(own.plus(other)), equal),
            LEVER);
    Reference together =
        p.step(
            "s_g",
            "part of the ply and its like, the greater",
            Dimension.NONE,
            max(equal, lever),
            LEVER);
    Expression mine = thickness.times(strength).over(thickness.times(strength).plus(others));
    p.step("s_i", "part of the ply", Dimension.NONE, together.times(mine), TOGETHER);
    return p.build();
  }
}
