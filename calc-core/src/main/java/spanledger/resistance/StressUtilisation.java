package spanledger.resistance;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Elastic stresses as parts of what the alloy may bear. */
public final class StressUtilisation {

  /** Inputs σ_My, σ_Mz, τ, σ_eq, f_o, φ_R, γ_M; steps f_d, τ_d, η_bending, η_shear, η_combined. */
  public static final Procedure PROCEDURE = procedure();

  private StressUtilisation() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("stress-utilisation", "Elastic stresses against design strength");
    Reference aboutY = p.input("σ_My", "bending stress about y", Dimension.STRESS);
    Reference aboutZ = p.input("σ_Mz", "bending stress about z", Dimension.STRESS);
    Reference shear = p.input("τ", "greatest shear stress", Dimension.STRESS);
    Reference equivalent = p.input("σ_eq", "equivalent stress", Dimension.STRESS);
    Reference strength = p.input("f_o", "0.2 % proof strength", Dimension.STRESS, Domain.POSITIVE);
    Reference factor = p.input("φ_R", "factor on resistance", Dimension.NONE, Domain.FRACTION);
    Reference divisor = p.input("γ_M", "divisor of resistance", Dimension.NONE, Domain.POSITIVE);
    Reference design =
        p.step(
            "f_d",
            "design strength",
            Dimension.STRESS,
            factor.times(strength).over(divisor),
            Source.fromMemory(
                "EN 1999-1-1:2007", "6.1.3 (divisor); AS/NZS 1664.1, Table 3.4(A) (factor)"));
    Reference designShear =
        p.step(
            "τ_d",
            "design strength in shear",
            Dimension.STRESS,
            design.over(sqrt(number(3))),
            Source.fromMemory("EN 1999-1-1:2007", "6.2.1(5), yield criterion"));
    utilisation(p, "η_bending", "bending", aboutY.plus(aboutZ).over(design));
    utilisation(p, "η_shear", "shear and torsion", shear.over(designShear));
    utilisation(p, "η_combined", "all stresses together", equivalent.over(design));
    return p.build();
  }

  private static void utilisation(
      Procedure.Builder p, String symbol, String words, Expression formula) {
    p.step(
        symbol,
        "utilisation, " + words,
        Dimension.NONE,
        formula,
        Source.fromMemory("EN 1999-1-1:2007", "6.2.1(5), yield criterion"));
  }
}
