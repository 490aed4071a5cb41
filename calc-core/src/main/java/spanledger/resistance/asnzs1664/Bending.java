package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.Symbols;

/**
 * Bending about one axis towards one side by AS/NZS 1664.1, elastic: the stretched fibre against
 * yielding and rupture, the compressed elements against their design stresses.
 *
 * <p>Inputs I, c_c, c_t (fibres from the neutral axis), F_ty, F_tu, k_t, k_y, k_u (1.0 and 1.0 for
 * flat flanges, 1.17 and 1.24 for round tubes, 1.30 and 1.42 for solid bars), M_lb, φ_y, φ_u; steps
 * W_c, W_t, M_t, M_c.
 */
public final class Bending {

  private static final Source STRETCHED = Given.clause("3.4.2, 3.4.3 and 3.4.4");
  private static final Source DEFINITION = Source.derived("Definition of the elastic modulus");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private Bending() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-bending", "Bending without lateral buckling, AS/NZS 1664.1");
    Reference moment = Symbols.secondMoment(p, "I", "second moment of area");
    Reference compressed = Symbols.length(p, "c_c", "most compressed fibre from the neutral axis");
    Reference stretched = Symbols.length(p, "c_t", "most stretched fibre from the neutral axis");
    Reference yield = Symbols.tensionYield(p);
    Reference ultimate = Symbols.tensionUltimate(p);
    Reference notch = Symbols.ratio(p, "k_t", "tension coefficient of the alloy");
    Reference yieldShape = Symbols.ratio(p, "k_y", "factor of the shape on yielding");
    Reference ruptureShape = Symbols.ratio(p, "k_u", "factor of the shape on rupture");
    Reference local =
        p.input("M_lb", "design strength, compressed elements", Dimension.MOMENT, Domain.POSITIVE);
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference rupture = Given.factor(p, "u", "rupture");
    p.step(
        "W_c",
        "elastic modulus, compressed side",
        Dimension.SECTION_MODULUS,
        moment.over(compressed),
        DEFINITION);
    Reference modulus =
        p.step(
            "W_t",
            "elastic modulus, stretched side",
            Dimension.SECTION_MODULUS,
            moment.over(stretched),
            DEFINITION);
    Reference tension =
        p.step(
            "M_t",
            "design strength, stretched fibre",
            Dimension.MOMENT,
            modulus.times(
                min(
                    yielding.times(yieldShape).times(yield),
                    rupture.times(ruptureShape).times(ultimate).over(notch))),
            STRETCHED);
    p.step(
        "M_c",
        "design strength in bending without lateral buckling",
        Dimension.MOMENT,
        min(tension, local),
        STRETCHED);
    return p.build();
  }
}
