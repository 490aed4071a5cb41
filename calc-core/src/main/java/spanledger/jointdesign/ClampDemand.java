package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What slides a post through its clamp. Inputs P_u, P_v, P_w (the forces on the foot) and c_u, c_v,
 * c_w (cosines of the post with the axes of these); step F_a.
 */
public final class ClampDemand {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ClampDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("clamp-demand", "What slides a post through its clamp");
    Reference upright = p.input("P_u", "force upwards", Dimension.FORCE);
    Reference first = p.input("P_v", "force along the first level axis", Dimension.FORCE);
    Reference second = p.input("P_w", "force along the second level axis", Dimension.FORCE);
    Reference alongU = p.input("c_u", "cosine of the post with the upright", Dimension.NONE);
    Reference alongV = p.input("c_v", "with the first level axis", Dimension.NONE);
    Reference alongW = p.input("c_w", "with the second level axis", Dimension.NONE);
    p.step(
        "F_a",
        "force along the post",
        Dimension.FORCE,
        abs(upright.times(alongU).plus(first.times(alongV)).plus(second.times(alongW))),
        Source.derived("Equilibrium (docs/theory/joints.md)"));
    return p.build();
  }
}
