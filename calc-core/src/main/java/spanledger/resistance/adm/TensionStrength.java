package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Axial tension by the Aluminum Design Manual 2020, chapter D: yielding of the gross section and
 * rupture of the net section.
 *
 * <p>Inputs A, A_e (effective net area: holes and shear lag taken off), A_w,l (area within 1 in. of
 * welds that run along the member), A_w (area within 1 in. of any weld at the place of rupture),
 * F_ty, F_tu, F_tyw, F_tuw, k_t, φ_y, Ω_y, φ_u, Ω_u; steps P_ty, P_tu, P_t. Without welds both
 * areas beside welds are 0 and the strengths beside welds do not enter.
 */
public final class TensionStrength {

  private static final String WORK = "Aluminum Design Manual 2020";

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private TensionStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("adm-tension", "Axial tension, Aluminum Design Manual");
    Reference gross = Symbols.area(p, "A", "area");
    Reference net = Symbols.area(p, "A_e", "effective net area");
    Reference along =
        p.input(
            "A_w_l",
            "area within 1 in. of welds along the member",
            Dimension.AREA,
            Domain.NOT_NEGATIVE);
    Reference beside =
        p.input("A_w", "net area within 1 in. of any weld", Dimension.AREA, Domain.NOT_NEGATIVE);
    Reference yield = Symbols.tensionYield(p);
    Reference ultimate = Symbols.tensionUltimate(p);
    Reference weldYield = Symbols.stress(p, "F_tyw", "tensile yield strength beside welds");
    Reference weldUltimate = Symbols.stress(p, "F_tuw", "tensile ultimate strength beside welds");
    Reference notch = Symbols.ratio(p, "k_t", "tension coefficient of the alloy");
    Factors yielding = Factors.inputs(p, "y", "yielding");
    Factors rupture = Factors.inputs(p, "u", "rupture");
    Reference yieldForce =
        p.step(
            "P_nty",
            "nominal strength, yielding of the gross section",
            Dimension.FORCE,
            yield.times(gross.minus(along)).plus(weldYield.times(along)),
            Source.fromMemory(WORK, "D.2(a); with welds along the member also D.2(a)"));
    Reference ruptureForce =
        p.step(
            "P_ntu",
            "nominal strength, rupture of the net section",
            Dimension.FORCE,
            ultimate.times(net.minus(beside)).over(notch).plus(weldUltimate.times(beside)),
            Source.fromMemory(WORK, "D.2(b); with welds also D.2(b), k_t = 1 beside them"));
    Reference usableYield =
        p.step(
            "P_ty",
            "design strength, yielding",
            Dimension.FORCE,
            yielding.applied(yieldForce),
            Source.fromMemory(WORK, "D.1"));
    Reference usableRupture =
        p.step(
            "P_tu",
            "design strength, rupture",
            Dimension.FORCE,
            rupture.applied(ruptureForce),
            Source.fromMemory(WORK, "D.1"));
    p.step(
        "P_t",
        "design strength in tension",
        Dimension.FORCE,
        min(usableYield, usableRupture),
        Source.fromMemory(WORK, "D.1"));
    return p.build();
  }
}
