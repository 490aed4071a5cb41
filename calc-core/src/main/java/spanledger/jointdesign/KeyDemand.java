package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The force for which a whole key is checked: twice that on its half that bears more. Inputs B_1,
 * B_2; step F_k.
 */
public final class KeyDemand {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private KeyDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-key-demand", "What each key carries");
    Reference first = p.input("B_1", "bearing on the first half", Dimension.FORCE);
    Reference second = p.input("B_2", "bearing on the second half", Dimension.FORCE);
    p.step(
        "F_k",
        "force on the key, as if both halves bore what the worse one does",
        Dimension.FORCE,
        max(abs(first), abs(second)).times(2),
        Source.derived("Equilibrium (docs/theory/joints.md)"));
    return p.build();
  }
}
