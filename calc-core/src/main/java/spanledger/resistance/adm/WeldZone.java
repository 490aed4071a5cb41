package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a weld across the member asks at a cut: nothing, unless the cut is within its reach.
 *
 * <p>Inputs x, x_w, r_w, η_w (use of the strengths beside welds); step η_weld.
 */
public final class WeldZone {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private WeldZone() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("weld-zone", "Cut beside a weld across the member");
    Reference at = p.input("x", "place of the cut along the member", Dimension.LENGTH);
    Reference weld = p.input("x_w", "place of the weld along the member", Dimension.LENGTH);
    Reference reach = Symbols.length(p, "r_w", "reach of the softened zone to either side");
    Reference use =
        p.input("η_w", "use of the strengths beside welds", Dimension.NONE, Domain.NOT_NEGATIVE);
    p.step(
        "η_weld",
        "utilisation, beside the weld",
        Dimension.NONE,
        choose(atMost(abs(at.minus(weld)), reach), use, number(0)),
        Source.fromMemory(
            "Aluminum Design Manual 2020", "A.3 (AS/NZS 1664.1:1997, 6.4), 1 in. beside welds"));
    return p.build();
  }
}
