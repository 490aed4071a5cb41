package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * One wall along a shear force: what it adds to the shear area, with shear buckling of slender webs
 * without stiffeners and without rigid end posts.
 */
final class ShearWall {

  static final Procedure PROCEDURE = define();

  private ShearWall() {}

  private static Procedure define() {
    Steps p = new Steps("shear-wall", "A wall along a shear force, EN 1999-1-1");
    Reference width = p.size("b", "flat width");
    Reference thickness = p.size("t", "thickness");
    Reference height = p.size("h_w", "height of the wall along the force");
    Reference holes = p.notNegative("d_s", "height lost to holes", Dimension.LENGTH);
    Reference weld = p.notNegative("w_s", "height softened beside welds", Dimension.LENGTH);
    Reference soft =
        p.input("ρ_o", "strength beside welds per strength", Dimension.NONE, Domain.FRACTION);
    Reference before = p.notNegative("A_v0", "shear area before this wall", Dimension.AREA);
    Reference strength = p.proofStrength();
    Reference modulus = p.youngsModulus();
    Reference limit = p.factor("ξ_v", "b/t per ε above which webs buckle in shear");
    Reference xi =
        p.step(
            "ξ",
            "slenderness per ε",
            width.over(thickness).over(sqrt(constant(250, Dimension.STRESS).over(strength))),
            Clause.of("6.2.6(2)"));
    Reference slenderness =
        p.step(
            "λ_w",
            "shear slenderness",
            width.over(thickness).times(sqrt(strength.over(modulus))).times(0.35),
            Clause.of("6.7.4.1"));
    Reference factor =
        p.step(
            "ρ_v",
            "reduction for shear buckling",
            choose(atMost(xi, limit), number(1), min(number(1), number(0.83).over(slenderness))),
            Clause.of("6.2.6(2); 6.7.4, Table 6.13, no rigid end post, η = 1"));
    Reference clear =
        p.step(
            "h_v",
            "height that counts",
            max(
                height.minus(holes).minus(number(1).minus(soft).times(weld)),
                Steps.zero(Dimension.LENGTH)),
            Clause.of("6.2.6(2), eq. 6.30"));
    p.step(
        "A_v",
        "shear area so far",
        before.plus(factor.times(thickness).times(clear)),
        Clause.of("6.2.6(2), eq. 6.30"));
    return p.build();
  }
}
