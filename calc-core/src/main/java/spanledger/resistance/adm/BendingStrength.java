package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Bending about one axis towards one side by the Aluminum Design Manual 2020, chapter F: yielding,
 * rupture and local buckling. {@link LateralBucklingStrength} goes on from it.
 *
 * <p>Inputs I, c_c, c_t (fibres from the neutral axis), W_pl, W_pl_n (net), F_cy, F_ty, F_tu, k_t,
 * M_lb, φ_b, Ω_b, φ_u, Ω_u; steps W_c, W_t, M_np, M_nu, M_n (all but rupture), M_u (design strength
 * by rupture), M_c.
 */
public final class BendingStrength {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source YIELD = Source.fromMemory(WORK, "F.2");
  private static final Source DESIGN = Source.fromMemory(WORK, "F.1");

  private static final Source DEFINITION = Source.derived("Definition of the elastic modulus");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BendingStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-bending", "Bending without lateral buckling, Aluminum Design Manual");
    Reference moment = Symbols.secondMoment(p, "I", "second moment of area");
    Reference near = Symbols.length(p, "c_c", "most compressed fibre from the neutral axis");
    Reference far = Symbols.length(p, "c_t", "most stretched fibre from the neutral axis");
    Reference plastic = Symbols.modulusOfSection(p, "W_pl", "plastic modulus");
    Reference net = Symbols.modulusOfSection(p, "W_pl_n", "plastic modulus of the net section");
    Reference compressionYield = Symbols.compressionYield(p);
    Reference tensionYield = Symbols.tensionYield(p);
    Reference ultimate = Symbols.tensionUltimate(p);
    Reference notch = Symbols.ratio(p, "k_t", "tension coefficient of the alloy");
    Reference local =
        p.input(
            "M_lb", "nominal strength, buckling of elements", Dimension.MOMENT, Domain.POSITIVE);
    Factors bending = Factors.inputs(p, "b", "bending");
    Factors rupture = Factors.inputs(p, "u", "rupture");
    Reference compressed =
        p.step(
            "W_c",
            "elastic modulus, compressed side",
            Dimension.SECTION_MODULUS,
            moment.over(near),
            DEFINITION);
    Reference stretched =
        p.step(
            "W_t",
            "elastic modulus, stretched side",
            Dimension.SECTION_MODULUS,
            moment.over(far),
            DEFINITION);
    Reference yielding =
        p.step(
            "M_np",
            "nominal strength, yielding",
            Dimension.MOMENT,
            min(
                plastic.times(compressionYield),
                stretched.times(tensionYield).times(1.5),
                compressed.times(compressionYield).times(1.5)),
            YIELD);
    Reference torn =
        p.step(
            "M_nu",
            "nominal strength, rupture",
            Dimension.MOMENT,
            net.times(ultimate).over(notch),
            YIELD);
    Reference nominal =
        p.step(
            "M_n",
            "nominal strength without rupture",
            Dimension.MOMENT,
            min(yielding, local),
            Source.fromMemory(WORK, "F.1, F.3"));
    Reference byRupture =
        p.step("M_u", "design strength, rupture", Dimension.MOMENT, rupture.applied(torn), DESIGN);
    p.step(
        "M_c",
        "design strength in bending without lateral buckling",
        Dimension.MOMENT,
        min(bending.applied(nominal), byRupture),
        DESIGN);
    return p.build();
  }
}
