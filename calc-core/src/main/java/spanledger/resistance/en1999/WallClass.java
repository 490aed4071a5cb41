package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** The steps from a wall's slenderness to its class and effective thickness; used by all walls. */
record WallClass(Reference slenderness, Reference grade, Reference factor, Reference reserve) {

  /** The limits of a wall. */
  record Limits(
      Reference epsilon,
      Reference beta1,
      Reference beta2,
      Reference beta3,
      Reference c1,
      Reference c2,
      Reference unsymmetrical) {}

  static Limits limits(Steps p) {
    Reference strength = p.proofStrength();
    Reference beta1 = p.factor("β_1", "class 1 limit per ε");
    Reference beta2 = p.factor("β_2", "class 2 limit per ε");
    Reference beta3 = p.factor("β_3", "class 3 limit per ε");
    Reference c1 = p.factor("C_1", "first coefficient of the effective thickness");
    Reference c2 = p.factor("C_2", "second coefficient of the effective thickness");
    Reference unsymmetrical = p.yes("u", "outstand of an unsymmetrical section");
    Reference epsilon =
        p.step(
            "ε",
            "strength factor of slenderness",
            sqrt(constant(250, Dimension.STRESS).over(strength)),
            Clause.of("Table 6.2"));
    return new Limits(epsilon, beta1, beta2, beta3, c1, c2, unsymmetrical);
  }

  /**
   * Adds the steps ξ, class, ρ_c and r.
   *
   * @param beta the slenderness parameter β of the wall
   */
  static WallClass of(Steps p, Limits limits, Expression beta) {
    Reference xi =
        p.step("ξ", "slenderness per ε", beta.over(limits.epsilon()), Clause.of("6.1.4.4"));
    Reference grade =
        p.step(
            "class",
            "class of the wall",
            choose(
                atMost(xi, limits.beta1()),
                number(1),
                choose(
                    atMost(xi, limits.beta2()),
                    number(2),
                    choose(atMost(xi, limits.beta3()), number(3), number(4)))),
            Clause.of("6.1.4.4"));
    Reference curve =
        p.step(
            "ρ_4",
            "effective thickness per thickness, were it class 4",
            limits.c1().over(beyond(xi, limits)).minus(limits.c2().over(beyond(xi, limits).pow(2))),
            Clause.of("6.1.5, eq. 6.12"));
    Reference factor =
        p.step(
            "ρ_c",
            "effective thickness per thickness",
            choose(
                atMost(xi, limits.beta3()),
                number(1),
                choose(
                    greater(limits.unsymmetrical(), number(0.5)),
                    min(curve, number(120).over(xi.pow(2)), number(1)),
                    min(curve, number(1)))),
            Clause.of("6.1.5"));
    Reference reserve =
        p.step(
            "r",
            "part of the plastic reserve that the wall allows",
            choose(
                atMost(xi, limits.beta2()),
                number(1),
                choose(
                    atLeast(xi, limits.beta3()),
                    number(0),
                    limits.beta3().minus(xi).over(limits.beta3().minus(limits.beta2())))),
            Clause.of("6.2.5.1, eq. 6.26 (class 3)"));
    return new WallClass(xi, grade, factor, reserve);
  }

  /** The curve is only meant beyond class 3, so it is shown for no less. */
  private static Expression beyond(Reference xi, Limits limits) {
    return max(xi, limits.beta3());
  }
}
