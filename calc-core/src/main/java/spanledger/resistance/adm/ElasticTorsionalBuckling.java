package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Elastic buckling stresses of a compressed member about both principal axes, in torsion, and
 * coupled.
 *
 * <p>The coupled stress is the least root of the cubic equation for any section. With the shear
 * centre on an axis of symmetry it is that of the quadratic equation, with the shear centre in the
 * centroid the least of the three uncoupled ones; so no case has to be told apart.
 *
 * @param area A
 * @param modulus E
 * @param slendernessY L_cr,y over radius of gyration
 * @param slendernessZ L_cr,z over radius of gyration
 * @param coupled least elastic buckling stress, coupled
 */
public record ElasticTorsionalBuckling(
    Reference area,
    Reference modulus,
    Reference slendernessY,
    Reference slendernessZ,
    Reference coupled) {

  private static final Source EULER = Source.derived("Elastic buckling of bars (Euler)");
  private static final Source TORSION =
      Source.derived("Elastic torsional-flexural buckling (Timoshenko and Gere)");
  private static final Source CUBIC = Source.derived("Roots of a cubic equation by angles");

  /** Writes inputs A, I_y, I_z, I_t, I_w, y_s, z_s, E, G, L_cr_y, L_cr_z, L_cr_T and the steps. */
  public static ElasticTorsionalBuckling write(Procedure.Builder p) {
    Reference area = Symbols.area(p, "A", "area");
    Reference momentY = Symbols.secondMoment(p, "I_y", "second moment of area about y");
    Reference momentZ = Symbols.secondMoment(p, "I_z", "second moment of area about z");
    Reference torsion = Symbols.secondMoment(p, "I_t", "torsion constant");
    Reference warping =
        p.input("I_w", "warping constant", Dimension.WARPING_CONSTANT, Domain.NOT_NEGATIVE);
    Reference ys = p.input("y_s", "shear centre from the centroid, along y", Dimension.LENGTH);
    Reference zs = p.input("z_s", "shear centre from the centroid, along z", Dimension.LENGTH);
    Reference modulus = Symbols.modulus(p);
    Reference shearModulus = Symbols.shearModulus(p);
    Reference lengthY = Symbols.length(p, "L_cr_y", "effective length, buckling about y");
    Reference lengthZ = Symbols.length(p, "L_cr_z", "effective length, buckling about z");
    Reference lengthT = Symbols.length(p, "L_cr_T", "effective length, twisting");

    Reference slendernessY = slenderness(p, "y", lengthY, momentY, area);
    Reference slendernessZ = slenderness(p, "z", lengthZ, momentZ, area);
    Reference euler = euler(p, "y", modulus, slendernessY);
    Reference eulerZ = euler(p, "z", modulus, slendernessZ);
    Reference radius =
        p.step(
            "r_0",
            "polar radius of gyration about the shear centre",
            Dimension.LENGTH,
            sqrt(momentY.plus(momentZ).over(area).plus(ys.pow(2)).plus(zs.pow(2))),
            TORSION);
    Reference twist =
        p.step(
            "F_e_T",
            "elastic buckling stress in torsion",
            Dimension.STRESS,
            shearModulus
                .times(torsion)
                .plus(pi().pow(2).times(modulus).times(warping).over(lengthT.pow(2)))
                .over(area.times(radius.pow(2))),
            TORSION);
    Reference coupled =
        cubic(p, euler, eulerZ, twist, ys.over(radius).pow(2), zs.over(radius).pow(2));
    return new ElasticTorsionalBuckling(area, modulus, slendernessY, slendernessZ, coupled);
  }

  private static Reference slenderness(
      Procedure.Builder p, String axis, Reference length, Reference moment, Reference area) {
    return p.step(
        "λ_" + axis,
        "slenderness, buckling about " + axis,
        Dimension.NONE,
        length.over(sqrt(moment.over(area))),
        EULER);
  }

  private static Reference euler(
      Procedure.Builder p, String axis, Reference modulus, Reference slenderness) {
    return p.step(
        "F_e_" + axis,
        "elastic buckling stress about " + axis,
        Dimension.STRESS,
        pi().pow(2).times(modulus).over(slenderness.pow(2)),
        EULER);
  }

  /**
   * (F − F_y)(F − F_z)(F − F_T) − F²(F − F_z)(y_s/r_0)² − F²(F − F_y)(z_s/r_0)² = 0, scaled by the
   * largest of the three. All its roots are real.
   */
  private static Reference cubic(
      Procedure.Builder p,
      Reference y,
      Reference z,
      Reference t,
      Expression couplingY,
      Expression couplingZ) {
    Reference scale =
        p.step("F_0", "scale of the cubic equation", Dimension.STRESS, max(y, z, t), CUBIC);
    Reference cy =
        p.step("c_y", "coupling by the shear centre along y", Dimension.NONE, couplingY, TORSION);
    Reference cz =
        p.step("c_z", "coupling by the shear centre along z", Dimension.NONE, couplingZ, TORSION);
    Expression fy = y.over(scale);
    Expression fz = z.over(scale);
    Expression ft = t.over(scale);
    Reference lead =
        p.step(
            "a_3",
            "coefficient of the cube",
            Dimension.NONE,
            number(1).minus(cy).minus(cz),
            TORSION);
    Reference square =
        p.step(
            "a_2",
            "coefficient of the square, per a_3",
            Dimension.NONE,
            fz.times(cy).plus(fy.times(cz)).minus(fy).minus(fz).minus(ft).over(lead),
            TORSION);
    Reference linear =
        p.step(
            "a_1",
            "linear coefficient, per a_3",
            Dimension.NONE,
            fy.times(fz).plus(fy.times(ft)).plus(fz.times(ft)).over(lead),
            TORSION);
    Reference constant =
        p.step(
            "a_0",
            "constant, per a_3",
            Dimension.NONE,
            fy.times(fz).times(ft).over(lead).negated(),
            TORSION);
    Reference spread =
        p.step(
            "q_2",
            "spread of the roots",
            Dimension.NONE,
            max(square.pow(2).over(9).minus(linear.over(3)), number(0)),
            CUBIC);
    Expression middle =
        square.pow(3).over(27).minus(square.times(linear).over(6)).plus(constant.over(2));
    Reference cosine =
        p.step(
            "q_3",
            "cosine of three times the angle of the least root",
            Dimension.NONE,
            max(
                number(-1),
                min(number(1), middle.over(max(spread.times(sqrt(spread)), number(1e-15))))),
            CUBIC);
    Expression angle = angleOf(cosine, sqrt(number(1).minus(cosine.pow(2)))).over(3);
    return p.step(
        "F_e",
        "least elastic buckling stress of the member, coupled",
        Dimension.STRESS,
        scale.times(square.over(3).negated().minus(sqrt(spread).times(2).times(cos(angle)))),
        CUBIC);
  }
}
