package spanledger.resistance;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Greatest elastic stresses of a section from its internal forces.
 *
 * <p>The largest bending stresses about both axes are added as if one fibre had both, and the
 * largest shear stress is taken to meet the largest normal stress. Both are on the safe side.
 */
public final class ElasticStress {

  private static final Source BEAM = Source.derived("Elastic bending and torsion of beams");

  /**
   * Inputs N .. M_z, then A, W_el_y, W_el_z, tau_A_y, tau_A_z, W_t; steps σ_N, σ_My, σ_Mz, σ, τ,
   * σ_eq.
   */
  public static final Procedure PROCEDURE = procedure();

  private ElasticStress() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("elastic-stress", "Elastic stresses in a section");
    Reference n = p.input("N", "axial force, tension positive", Dimension.FORCE);
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference t = p.input("T", "torque", Dimension.MOMENT);
    Reference my = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference mz = p.input("M_z", "bending moment about z", Dimension.MOMENT);
    Reference area = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    Reference wy =
        p.input("W_el_y", "elastic modulus about y", Dimension.SECTION_MODULUS, Domain.POSITIVE);
    Reference wz =
        p.input("W_el_z", "elastic modulus about z", Dimension.SECTION_MODULUS, Domain.POSITIVE);
    Reference ay =
        p.input(
            "tau_A_y",
            "area that gives the peak shear stress along y",
            Dimension.AREA,
            Domain.POSITIVE);
    Reference az =
        p.input(
            "tau_A_z",
            "area that gives the peak shear stress along z",
            Dimension.AREA,
            Domain.POSITIVE);
    Reference wt = p.input("W_t", "torsion modulus", Dimension.SECTION_MODULUS, Domain.POSITIVE);

    Reference axial = stress(p, "σ_N", "axial stress, tension positive", n.over(area));
    Reference aboutY = stress(p, "σ_My", "bending stress about y", abs(my).over(wy));
    Reference aboutZ = stress(p, "σ_Mz", "bending stress about z", abs(mz).over(wz));
    Reference normal =
        stress(p, "σ", "greatest normal stress", abs(axial).plus(aboutY).plus(aboutZ));
    Reference shear =
        stress(
            p,
            "τ",
            "greatest shear stress",
            abs(vy).over(ay).plus(abs(vz).over(az)).plus(abs(t).over(wt)));
    p.step(
        "σ_eq",
        "equivalent stress",
        Dimension.STRESS,
        sqrt(normal.pow(2).plus(shear.pow(2).times(3))),
        Source.fromMemory("EN 1999-1-1:2007", "6.2.1(5), yield criterion"));
    return p.build();
  }

  private static Reference stress(
      Procedure.Builder p, String symbol, String words, Expression formula) {
    return p.step(symbol, words, Dimension.STRESS, formula, BEAM);
  }
}
