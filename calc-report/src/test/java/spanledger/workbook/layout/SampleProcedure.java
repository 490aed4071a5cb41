package spanledger.workbook.layout;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** A procedure of the usual kind, to fill sheets with: elastic stresses and a slender wall. */
final class SampleProcedure {

  private static final Source BEAM = Source.derived("Elastic bending and torsion of beams");

  static final Procedure STRESS = stress();

  private SampleProcedure() {}

  private static Procedure stress() {
    Procedure.Builder p = Procedure.named("sample-stress", "Elastic stresses in a beam");
    Reference n = p.input("N", "axial force, tension positive", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference my = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference area = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    Reference wy =
        p.input("W_el_y", "elastic modulus about y", Dimension.SECTION_MODULUS, Domain.POSITIVE);
    Reference av = p.input("A_τ_z", "area for peak shear along z", Dimension.AREA, Domain.POSITIVE);
    Reference fo = p.input("f_o", "proof strength", Dimension.STRESS, Domain.POSITIVE);
    Reference gamma = p.input("γ_M1", "partial factor", Dimension.NONE, Domain.POSITIVE);

    Reference axial = p.step("σ_N", "axial stress", Dimension.STRESS, n.over(area), BEAM);
    Reference bending =
        p.step("σ_My", "bending stress about y", Dimension.STRESS, abs(my).over(wy), BEAM);
    Reference sigma =
        p.step("σ", "greatest normal stress", Dimension.STRESS, abs(axial).plus(bending), BEAM);
    Reference tau = p.step("τ", "greatest shear stress", Dimension.STRESS, abs(vz).over(av), BEAM);
    Reference equivalent =
        p.step(
            "σ_eq",
            "equivalent stress",
            Dimension.STRESS,
            sqrt(sigma.pow(2).plus(tau.pow(2).times(3))),
            Source.fromMemory("EN 1999-1-1:2007", "6.2.1(5)"));
    Reference ratio =
        p.step(
            "ψ",
            "stress at the far edge of the wall per greatest compression",
            Dimension.NONE,
            choose(
                greater(bending.minus(axial), bending.times(number(0))),
                bending.plus(axial).negated().over(max(bending.minus(axial), bending)),
                number(-1)),
            Source.fromMemory("EN 1999-1-1:2007", "6.1.4.3"));
    p.step(
        "η_wall",
        "factor for the stress gradient",
        Dimension.NONE,
        gradient(ratio),
        Source.fromMemory("EN 1999-1-1:2007", "6.1.4.3"));
    p.step(
        "u",
        "utilisation of the section",
        Dimension.NONE,
        equivalent.times(gamma).over(fo),
        Source.fromMemory("EN 1999-1-1:2007", "6.2.1(5)"));
    return p.build();
  }

  private static Expression gradient(Reference ratio) {
    return choose(
        greater(ratio, number(-1)),
        number(0.70).plus(ratio.times(0.30)),
        number(0.80).over(number(1).minus(ratio)));
  }
}
