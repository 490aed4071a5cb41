package spanledger.jointdesign;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The pull of a bracket leg on one bolt without prying: its tension less its share of what the edge
 * beyond the bolts presses, which the sharing has in the tension already.
 *
 * <p>Inputs F_B (tension of the bolt), T_B (of all bolts of the leg), C_e (pressing beyond all of
 * them); step F.
 */
public final class LegPull {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LegPull() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-leg-pull", "Pull of a leg on its bolts, without prying");
    Reference own = p.input("F_B", "tension of the bolt by the sharing", Dimension.FORCE);
    Reference all = p.input("T_B", "tension of all bolts of the leg", Dimension.FORCE);
    Reference edge = p.input("C_e", "pressing of the edge beyond them", Dimension.FORCE);
    p.step(
        "F",
        "pull on the leg at this bolt",
        Dimension.FORCE,
        own.times(
            max(number(0), number(1).minus(edge.over(max(all, constant(1e-6, Dimension.FORCE)))))),
        STATICS);
    return p.build();
  }
}
