package spanledger.jointdesign;

import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The tension for which a bolt in a bracket leg is checked: the greater of two states of balance.
 * Inputs F_B (sharing, the leg rigid), F_Q (pull and prying of the leg at its hinge); step F_t.
 */
public final class PriedBolt {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PriedBolt() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-pried-bolt", "Tension of bolts with prying");
    Reference rigid = p.input("F_B", "by the sharing, edge pressing in it", Dimension.FORCE);
    Reference hinged = p.input("F_Q", "pull and prying of the leg at its hinge", Dimension.FORCE);
    p.step(
        "F_t",
        "the greater",
        Dimension.FORCE,
        max(rigid, hinged),
        Source.derived("Equilibrium of a stiff and of a yielding leg (docs/theory/joints.md)"));
    return p.build();
  }
}
