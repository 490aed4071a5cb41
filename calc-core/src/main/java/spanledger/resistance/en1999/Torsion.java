package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Torsion: Saint-Venant's shear in full, and a bound of the stresses along the member where warping
 * is held.
 *
 * <p>All the torque is counted as Saint-Venant's. Where a section is kept from warping, the
 * bimoment of a torque T that is constant along the way is T·l_w·tanh(L_T/l_w) with l_w = √(E I_w /
 * (G I_t)), less than both T·l_w and T·L_T.
 */
final class Torsion {

  static final Procedure PROCEDURE = define();

  private Torsion() {}

  private static Procedure define() {
    Steps p = new Steps("torsion", "Torsion resistance of a section, EN 1999-1-1");
    Reference modulus = p.positive("W_t", "torsion modulus", Dimension.SECTION_MODULUS);
    Reference constant = p.positive("I_t", "torsion constant", Dimension.SECOND_MOMENT);
    Reference warping = p.notNegative("I_w", "warping constant", Dimension.WARPING_CONSTANT);
    Reference ordinate = p.notNegative("ω_w", "greatest warping", Dimension.AREA);
    Reference length = p.size("L_T", "length between points that cannot twist");
    Reference e = p.youngsModulus();
    Reference g = p.positive("G", "shear modulus", Dimension.STRESS);
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    p.step(
        "T_Rd",
        "torsion resistance",
        modulus.times(strength).over(sqrt(number(3)).times(partial)),
        Clause.of("6.2.7.2, eq. 6.32"));
    Reference reach =
        p.step(
            "l_w",
            "length over which warping dies away, at most L_T",
            min(sqrt(e.times(warping).over(g.times(constant))), length),
            Clause.BEAM);
    p.step(
        "c_w",
        "bound of the stress along the member per torque",
        choose(
            atMost(warping, Steps.zero(Dimension.WARPING_CONSTANT)),
            Steps.zero(Dimension.whole(-3, 0, 0, 0)),
            ordinate.times(reach).over(warping)),
        Clause.BEAM);
    return p.build();
  }
}
