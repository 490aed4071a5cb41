package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
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
 * Lateral-torsional buckling for one sense of bending about the stronger axis, here called y; for
 * sections symmetric about both axes or about the plane of bending.
 */
final class LateralTorsional {

  static final Procedure PROCEDURE = define();

  private LateralTorsional() {}

  private static Procedure define() {
    Steps p = new Steps("lateral-torsional", "Lateral-torsional buckling, EN 1999-1-1");
    Reference major =
        p.positive("I_y", "second moment about the axis of bending", Dimension.SECOND_MOMENT);
    Reference minor =
        p.positive("I_z", "second moment about the other axis", Dimension.SECOND_MOMENT);
    Reference it = p.positive("I_t", "torsion constant", Dimension.SECOND_MOMENT);
    Reference iw = p.notNegative("I_w", "warping constant", Dimension.WARPING_CONSTANT);
    Reference zj =
        p.place("z_j", "asymmetry, positive if the compressed side is the one with more I_z");
    Reference length = p.size("L_LT", "length between lateral restraints");
    Reference c1 = p.factor("C1", "factor of the moment diagram");
    Reference c2 = p.number("C2", "factor of the load's height");
    Reference c3 = p.number("C3", "factor of asymmetry");
    Reference kz = p.factor("k_z", "length factor of bending about z at the restraints");
    Reference kw = p.factor("k_w", "length factor of warping at the restraints");
    Reference zg =
        p.place(
            "z_g", "height of the load over the shear centre, positive if it pushes towards it");
    Reference elastic = p.positive("W_el", "elastic modulus", Dimension.SECTION_MODULUS);
    Reference shape = p.factor("α_W", "shape factor of the section");
    Reference moment = p.positive("M_Rd", "moment resistance of the section", Dimension.MOMENT);
    Reference number =
        p.input("class_s", "class of the section", Dimension.NONE, new Domain(1, true, 4));
    Reference e = p.youngsModulus();
    Reference g = p.positive("G", "shear modulus", Dimension.STRESS);
    Reference strength = p.proofStrength();
    Reference stocky = p.number("α_12", "imperfection factor, class 1 and 2");
    Reference stockyPlateau = p.number("λ_0_12", "slenderness without loss, class 1 and 2");
    Reference slender = p.number("α_34", "imperfection factor, class 3 and 4");
    Reference slenderPlateau = p.number("λ_0_34", "slenderness without loss, class 3 and 4");

    Source annex = Clause.of("Annex I.1.2, eq. I.2, I.3");
    Expression torsional = g.times(it);
    Reference warping =
        p.step(
            "κ_wt",
            "warping",
            pi().over(kw.times(length)).times(sqrt(e.times(iw).over(torsional))),
            annex);
    Expression scale = pi().over(kz.times(length)).times(sqrt(e.times(minor).over(torsional)));
    Reference high = p.step("ζ_g", "height of the load", scale.times(zg), annex);
    Reference asymmetry = p.step("ζ_j", "asymmetry of the section", scale.times(zj), annex);
    Reference offset =
        p.step("ζ", "both together", c2.times(high).minus(c3.times(asymmetry)), annex);
    Reference mu =
        p.step(
            "μ_cr",
            "relative critical moment",
            c1.over(kz)
                .times(sqrt(number(1).plus(warping.pow(2)).plus(offset.pow(2))).minus(offset)),
            annex);
    Reference critical =
        p.step(
            "M_cr",
            "elastic critical moment",
            mu.times(pi()).times(sqrt(e.times(minor).times(torsional))).over(length),
            annex);
    Reference alpha =
        p.step(
            "α",
            "imperfection factor",
            choose(less(number, number(2.5)), stocky, slender),
            Clause.of("6.3.2.2"));
    Reference plateau =
        p.step(
            "λ_0",
            "slenderness without loss",
            choose(less(number, number(2.5)), stockyPlateau, slenderPlateau),
            Clause.of("6.3.2.2"));
    BucklingCurve.Result chi =
        BucklingCurve.steps(
            p,
            new BucklingCurve.Inputs(alpha, plateau),
            shape.times(elastic).times(strength),
            critical,
            "6.3.2.2, 6.3.2.3");
    Reference reduction =
        p.step(
            "χ_LT",
            "reduction for lateral-torsional buckling",
            choose(atMost(major, minor), number(1), chi.reduction()),
            Clause.of("6.3.2.1; none about the weaker axis"));
    p.step(
        "M_b_Rd",
        "buckling resistance moment",
        reduction.times(moment),
        Clause.of("6.3.2.1, eq. 6.55"));
    return p.build();
  }
}
