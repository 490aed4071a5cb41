package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** What slides a post through its clamp. Input P_u; step F_a. */
public final class ClampDemand {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ClampDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("clamp-demand", "What slides a post through its clamp");
    Reference axial = p.input("P_u", "force along the post", Dimension.FORCE);
    p.step(
        "F_a",
        "its size",
        Dimension.FORCE,
        abs(axial),
        Source.derived("Equilibrium (docs/theory/joints.md)"));
    return p.build();
  }
}
