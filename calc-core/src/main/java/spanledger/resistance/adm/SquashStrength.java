package spanledger.resistance.adm;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Compression of a section by itself, without buckling of the member, by the Aluminum Design Manual
 * 2020. Inputs P_lb, φ_c, Ω_c; step P_c.
 */
public final class SquashStrength {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private SquashStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-squash", "Compression of a section by itself, Aluminum Design Manual");
    Reference local =
        p.input("P_lb", "sum of the strengths of the elements", Dimension.FORCE, Domain.POSITIVE);
    Factors factors = Factors.inputs(p, "c", "compression");
    p.step(
        "P_c",
        "design strength in compression, member not buckling",
        Dimension.FORCE,
        factors.applied(local),
        Source.fromMemory("Aluminum Design Manual 2020", "E.1 and E.4"));
    return p.build();
  }
}
