package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The section at a cut: axial force, moments, shear and torsion, each alone and together.
 *
 * <p>Shear above half of its resistance reduces all resistances to axial force and moments, not
 * only those of the sheared walls: on the safe side. The bound of the warping stress is added.
 */
final class SectionAtCut {

  static final Procedure PROCEDURE = define();

  /** Below this part a resistance is not reduced further, so that uses stay numbers. */
  private static final double LEAST = 0.001;

  private SectionAtCut() {}

  private static Procedure define() {
    Steps p = new Steps("section-at-cut", "Section at a cut, EN 1999-1-1");
    Reference n = p.any("N", "axial force, tension positive", Dimension.FORCE);
    Reference vy = p.any("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.any("V_z", "shear along z", Dimension.FORCE);
    Reference t = p.any("T", "torque", Dimension.MOMENT);
    Reference my = p.any("M_y", "bending moment about y", Dimension.MOMENT);
    Reference mz = p.any("M_z", "bending moment about z", Dimension.MOMENT);
    Reference omega =
        p.input("ω_0", "part of the resistances that is there", Dimension.NONE, Domain.FRACTION);
    Reference tension = p.positive("N_t_Rd", "tension resistance", Dimension.FORCE);
    Reference compression = p.positive("N_c_Rd", "compression resistance", Dimension.FORCE);
    Reference yUp = p.positive("M_y_Rd_pos", "moment resistance, +z stretched", Dimension.MOMENT);
    Reference yDown = p.positive("M_y_Rd_neg", "moment resistance, -z stretched", Dimension.MOMENT);
    Reference zUp = p.positive("M_z_Rd_pos", "moment resistance, -y stretched", Dimension.MOMENT);
    Reference zDown = p.positive("M_z_Rd_neg", "moment resistance, +y stretched", Dimension.MOMENT);
    Reference shearY = p.positive("V_y_Rd", "shear resistance along y", Dimension.FORCE);
    Reference shearZ = p.positive("V_z_Rd", "shear resistance along z", Dimension.FORCE);
    Reference torsion = p.positive("T_Rd", "torsion resistance", Dimension.MOMENT);
    Reference warping =
        p.notNegative(
            "c_w", "bound of the stress along the member per torque", Dimension.whole(-3, 0, 0, 0));
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    Reference hollow = p.yes("h", "hollow");
    Reference open = p.yes("o", "open");
    Reference linear = p.factor("e_0", "exponent of open sections");
    Reference psi = p.factor("ψ_0", "exponent of the axial force, hollow and solid");

    Reference twisted =
        p.step("η_T", "torsion", abs(t).over(torsion.times(omega)), Clause.of("6.2.7.1, eq. 6.31"));
    Reference warped =
        p.step(
            "η_w",
            "stress of held warping, at most",
            abs(t).times(warping).times(partial).over(strength.times(omega)),
            Clause.of("6.2.7.1(4); bound in docs/theory"));
    Reference left =
        p.step(
            "k_T",
            "shear resistance that torsion leaves",
            max(
                number(LEAST),
                choose(
                    greater(hollow, number(0.5)),
                    number(1).minus(twisted),
                    sqrt(max(number(0), number(1).minus(twisted.over(1.25)))))),
            Clause.of("6.2.7.3, eq. 6.35, 6.36"));
    Reference alongY = sheared(p, "y", vy, shearY.times(omega).times(left));
    Reference alongZ = sheared(p, "z", vz, shearZ.times(omega).times(left));
    Reference shear = p.step("η_V", "greater shear", max(alongY, alongZ), Clause.of("6.2.8"));
    Reference reduced =
        p.step(
            "k_V",
            "strength that shear leaves",
            choose(
                greater(shear, number(0.5)),
                max(
                    number(LEAST),
                    number(1).minus(min(shear, number(1)).times(2).minus(number(1)).pow(2))),
                number(1)),
            Clause.of("6.2.8, eq. 6.38; 6.2.10"));
    Expression there = omega.times(reduced);
    Reference axial =
        p.step(
            "η_N",
            "axial force",
            used(n, Dimension.FORCE, compression, tension).over(there),
            Clause.of("6.2.3, 6.2.4"));
    Reference aboutY = bent(p, "y", used(my, Dimension.MOMENT, yDown, yUp).over(there));
    Reference aboutZ = bent(p, "z", used(mz, Dimension.MOMENT, zDown, zUp).over(there));
    Reference sum =
        p.step(
            "η_1",
            "open",
            power(axial, linear).plus(power(aboutY, linear)).plus(power(aboutZ, linear)),
            Clause.of("6.2.9.1, eq. 6.40, 6.41"));
    Reference closed =
        p.step(
            "η_2",
            "hollow or solid",
            power(axial, psi).plus(Interaction.ofMoments(aboutY, aboutZ)),
            Clause.of("6.2.9.2, eq. 6.43"));
    p.step(
        "η_section",
        "axial force and moments together",
        choose(greater(open, number(0.5)), sum, closed).plus(warped),
        Clause.of("6.2.9"));
    return p.build();
  }

  private static Reference sheared(Steps p, String axis, Reference force, Expression resistance) {
    return p.step(
        "η_V" + axis,
        "shear along " + axis,
        abs(force).over(resistance),
        Clause.of("6.2.6, eq. 6.28"));
  }

  private static Reference bent(Steps p, String axis, Expression used) {
    return p.step("η_M" + axis, "moment about " + axis, used, Clause.of("6.2.5.1, eq. 6.23"));
  }

  /** Part of the resistance against the sign of the effect. */
  private static Expression used(
      Reference effect, Dimension dimension, Reference ifNegative, Reference ifPositive) {
    return abs(effect).over(choose(less(effect, Steps.zero(dimension)), ifNegative, ifPositive));
  }

  private static Expression power(Reference base, Reference exponent) {
    return base.pow(exponent);
  }
}
