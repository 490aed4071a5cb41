package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
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
 * <p>With the shear centre on an axis the coupled stress is the smaller root of a quadratic
 * equation, otherwise the least root of a cubic equation; in the centroid it is the least of the
 * three.
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

  /** A shear centre off an axis by less than a thousandth of r_0 counts as on it. */
  private static final double ON_AXIS = 1e-6;

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
        coupled(p, euler, eulerZ, twist, ys.over(radius).pow(2), zs.over(radius).pow(2));
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

  private static Reference coupled(
      Procedure.Builder p,
      Reference y,
      Reference z,
      Reference t,
      Expression couplingY,
      Expression couplingZ) {
    Reference cy =
        p.step("c_y", "coupling by the shear centre along y", Dimension.NONE, couplingY, TORSION);
    Reference cz =
        p.step("c_z", "coupling by the shear centre along z", Dimension.NONE, couplingZ, TORSION);
    Reference pairY = pair(p, "y", y, t, cy);
    Reference pairZ = pair(p, "z", z, t, cz);
    Expression all = cubic(p, y, z, t, cy, cz);
    return p.step(
        "F_e",
        "least elastic buckling stress of the member: shear centre on the y axis, on the z axis, or"
            + " on neither",
        Dimension.STRESS,
        choose(
            atMost(cz, number(ON_AXIS)),
            min(pairY, z),
            choose(atMost(cy, number(ON_AXIS)), min(pairZ, y), all)),
        TORSION);
  }

  /** The smaller root of (F − F_1)(F − F_T) = F² c, in the form that loses no digits. */
  private static Reference pair(
      Procedure.Builder p, String axis, Reference flexure, Reference twist, Reference coupling) {
    Expression sum = flexure.plus(twist);
    Expression product = flexure.times(twist);
    Expression root =
        sqrt(
            max(
                sum.pow(2).minus(product.times(4).times(number(1).minus(coupling))),
                product.times(0)));
    return p.step(
        "F_e_" + axis + "T",
        "elastic buckling stress about " + axis + " with torsion",
        Dimension.STRESS,
        product.times(2).over(sum.plus(root)),
        TORSION);
  }

  /**
   * (F − F_y)(F − F_z)(F − F_T) − F²(F − F_z)(y_s/r_0)² − F²(F − F_y)(z_s/r_0)² = 0, written for h
   * = F_0/F, where F_0 is the least of the three. All its roots are real; the largest h is wanted.
   */
  private static Expression cubic(
      Procedure.Builder p, Reference y, Reference z, Reference t, Reference cy, Reference cz) {
    Reference scale =
        p.step("F_0", "scale of the cubic equation", Dimension.STRESS, min(y, z, t), CUBIC);
    Expression fy = scale.over(y);
    Expression fz = scale.over(z);
    Expression ft = scale.over(t);
    Reference square =
        p.step(
            "a_2",
            "coefficient of the square, for F_0/F",
            Dimension.NONE,
            fy.plus(fz).plus(ft).negated(),
            TORSION);
    Expression one = number(1);
    Reference linear =
        p.step(
            "a_1",
            "linear coefficient, for F_0/F",
            Dimension.NONE,
            fz.times(ft)
                .times(one.minus(cz))
                .plus(fy.times(ft).times(one.minus(cy)))
                .plus(fy.times(fz)),
            TORSION);
    Reference constant =
        p.step(
            "a_0",
            "constant, for F_0/F",
            Dimension.NONE,
            fy.times(fz).times(ft).times(one.minus(cy).minus(cz)).negated(),
            TORSION);
    Reference spread =
        p.step(
            "q_2",
            "spread of the roots",
            Dimension.NONE,
            max(square.pow(2).over(9).minus(linear.over(3)), number(1e-12)),
            CUBIC);
    Expression middle =
        square.times(linear).over(6).minus(square.pow(3).over(27)).minus(constant.over(2));
    Reference cosine =
        p.step(
            "q_3",
            "cosine of three times the angle of the largest root",
            Dimension.NONE,
            max(number(-1), min(one, middle.over(spread.times(sqrt(spread))))),
            CUBIC);
    Expression angle = angleOf(cosine, sqrt(one.minus(cosine.pow(2)))).over(3);
    return scale.over(sqrt(spread).times(2).times(cos(angle)).minus(square.over(3)));
  }
}
