package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Condition;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * A concentrated load on a flange, in the plane of the web: crushing of stocky webs, buckling of
 * slender ones, and both with bending.
 *
 * <p>The flange's resistance m_2 counts only where λ_F is above ½. λ_F is first worked out with it;
 * where that gives no more than ½, without it. Near ½ that is a small step, as in the standard.
 */
final class WebBearing {

  static final Procedure PROCEDURE = define();

  private WebBearing() {}

  private static Procedure define() {
    Steps p = new Steps("web-bearing", "Concentrated load on a web, EN 1999-1-1");
    Reference force = p.notNegative("F", "load on one web", Dimension.FORCE);
    Reference bending =
        p.number("η_M", "use of the bending resistance there, axial force included");
    Reference kind =
        p.input(
            "kind",
            "1 load inside the span, 2 load passed on to the other flange, 3 load at an end",
            Dimension.NONE,
            new Domain(1, true, 3));
    Reference stiff = p.notNegative("s_s", "length that the load stands on", Dimension.LENGTH);
    Reference edge =
        p.notNegative("c", "from the end of the member to that length", Dimension.LENGTH);
    Reference panel = p.size("a", "distance of stiffeners, or the span if there are none");
    Reference depth = p.size("h_w", "clear depth of the web");
    Reference web = p.size("t_w", "thickness of the web");
    Reference flange = p.size("t_f", "thickness of the flange");
    Reference width = p.size("b_f", "width of flange that belongs to the web");
    Reference sides = p.factor("n_f", "sides of the web that the flange reaches to");
    Reference strength = p.proofStrength();
    Reference modulus = p.youngsModulus();
    Reference partial = p.yieldFactor();

    Condition atEnd = greater(kind, number(2.5));
    Reference k =
        p.step(
            "k_F",
            "buckling factor",
            choose(
                less(kind, number(1.5)),
                number(6).plus(depth.over(panel).pow(2).times(2)),
                choose(
                    atEnd,
                    min(number(6), number(2).plus(stiff.plus(edge).over(depth).times(6))),
                    number(3.5).plus(depth.over(panel).pow(2).times(2)))),
            Clause.of("6.7.5, Figure 6.32"));
    Reference critical =
        p.step(
            "F_cr",
            "elastic critical load",
            k.times(0.9).times(modulus).times(web.pow(3)).over(depth),
            Clause.of("6.7.5, eq. 6.142"));
    Reference counts =
        p.step(
            "b_F",
            "width of flange that counts",
            min(
                width,
                sides
                    .times(15)
                    .times(sqrt(constant(250, Dimension.STRESS).over(strength)))
                    .times(flange)),
            Clause.of("6.7.5; at most 15 ε t_f to each side, as in EN 1993-1-5, 6.5"));
    Reference m1 = p.step("m_1", "flange per web", counts.over(web), Clause.of("6.7.5, eq. 6.143"));
    Reference m2 =
        p.step(
            "m_2",
            "depth per flange",
            depth.over(flange).pow(2).times(0.02),
            Clause.of("6.7.5, eq. 6.144"));
    Reference loaded =
        p.step(
            "l_e",
            "length at an end",
            min(
                k.times(modulus).times(web.pow(2)).over(strength.times(depth).times(2)),
                stiff.plus(edge)),
            Clause.of("6.7.5, eq. 6.147"));
    Reference first =
        p.step(
            "l_1",
            "loaded length with m_2",
            length(atEnd, stiff, panel, flange, m1, m2, loaded),
            Clause.of("6.7.5, eq. 6.145, 6.146"));
    Reference slenderness =
        p.step(
            "λ_1",
            "slenderness with m_2",
            slender(first, web, strength, critical),
            Clause.of("6.7.5"));
    Reference bare =
        p.step(
            "l_2",
            "loaded length without m_2",
            length(atEnd, stiff, panel, flange, m1, number(0), loaded),
            Clause.of("6.7.5, eq. 6.145, 6.146"));
    Reference length =
        p.step(
            "l_y",
            "effective loaded length",
            choose(atMost(slenderness, number(0.5)), bare, first),
            Clause.of("6.7.5"));
    Reference lambda =
        p.step(
            "λ_F",
            "slenderness",
            slender(length, web, strength, critical),
            Clause.of("6.7.5, eq. 6.141"));
    Reference chi =
        p.step(
            "χ_F",
            "reduction for buckling",
            min(number(1), number(0.5).over(max(lambda, number(0.001)))),
            Clause.of("6.7.5, eq. 6.140"));
    Reference resistance =
        p.step(
            "F_Rd",
            "resistance of one web",
            chi.times(length).times(web).times(strength).over(partial),
            Clause.of("6.7.5, eq. 6.138, 6.139"));
    Reference alone =
        p.step("η_F", "concentrated load", force.over(resistance), Clause.of("6.7.5"));
    p.step(
        "η_FM",
        "concentrated load with bending",
        alone.plus(bending.times(0.8)).over(number(1.4)),
        Clause.of("6.7.6.2, eq. 6.151"));
    return p.build();
  }

  private static Expression length(
      Condition atEnd,
      Reference stiff,
      Reference panel,
      Reference flange,
      Reference m1,
      Expression m2,
      Reference loaded) {
    Expression inside =
        min(panel, stiff.plus(flange.times(2).times(number(1).plus(sqrt(m1.plus(m2))))));
    Expression bent =
        loaded.plus(flange.times(sqrt(m1.over(2).plus(loaded.over(flange).pow(2)).plus(m2))));
    Expression pushed = loaded.plus(flange.times(sqrt(m1.plus(m2))));
    return choose(atEnd, min(inside, bent, pushed), inside);
  }

  private static Expression slender(
      Reference length, Reference web, Reference strength, Reference critical) {
    return sqrt(length.times(web).times(strength).over(critical));
  }
}
