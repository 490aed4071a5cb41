package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.Symbols;

/**
 * Axial tension by AS/NZS 1664.1: yielding of the gross section, rupture of the net section.
 *
 * <p>Inputs A, A_e, A_w (area within reach of welds), F_ty, F_tu, F_tyw, F_tuw, k_t, φ_y, φ_u;
 * steps P_ty, P_tu, P_t.
 */
public final class Tension {

  private static final Source CLAUSE = Given.clause("3.4.2");
  private static final Source WELD = Given.clause("3.4.2 and 6.4");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private Tension() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("as-nzs-1664-tension", "Axial tension, AS/NZS 1664.1");
    Reference gross = Symbols.area(p, "A", "area");
    Reference net = Symbols.area(p, "A_e", "effective net area");
    Reference beside =
        p.input("A_w", "area within reach of welds", Dimension.AREA, Domain.NOT_NEGATIVE);
    Reference yield = Symbols.tensionYield(p);
    Reference ultimate = Symbols.tensionUltimate(p);
    Reference weldYield = Symbols.stress(p, "F_tyw", "tensile yield strength beside welds");
    Reference weldUltimate = Symbols.stress(p, "F_tuw", "tensile ultimate strength beside welds");
    Reference notch = Symbols.ratio(p, "k_t", "tension coefficient of the alloy");
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference rupture = Given.factor(p, "u", "rupture");
    Reference byYield =
        p.step(
            "P_ty",
            "design strength, yielding",
            Dimension.FORCE,
            yielding.times(yield.times(gross.minus(beside)).plus(weldYield.times(beside))),
            WELD);
    Reference byRupture =
        p.step(
            "P_tu",
            "design strength, rupture",
            Dimension.FORCE,
            rupture.times(
                ultimate.times(net.minus(beside)).over(notch).plus(weldUltimate.times(beside))),
            WELD);
    p.step("P_t", "design strength in tension", Dimension.FORCE, min(byYield, byRupture), CLAUSE);
    return p.build();
  }
}
