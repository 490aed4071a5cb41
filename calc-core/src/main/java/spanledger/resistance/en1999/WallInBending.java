package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * One wall of a section in bending: class, effective thickness of its compressed part, and what
 * that takes from the section.
 *
 * <p>Coordinates v run from the centroid of the full section towards the compressed side. Sums run
 * from wall to wall: A_0, S_0, I_0, class_0, r_0 are those before this wall, A, S, I, class_s, r_s
 * those after it.
 */
final class WallInBending {

  static final Procedure PROCEDURE = define();

  private WallInBending() {}

  private static Procedure define() {
    Steps p = new Steps("wall-in-bending", "A wall of a section in bending, EN 1999-1-1");
    Reference v1 = p.place("v_1", "start of the wall's midline (root of an outstand)");
    Reference v2 = p.place("v_2", "end of the wall's midline (toe of an outstand)");
    Reference width = p.size("b", "flat width");
    Reference thickness = p.size("t", "thickness");
    Reference outstand = p.yes("o", "outstand");
    Reference axis = p.place("v_n", "neutral axis");
    WallSums.Before before = WallSums.before(p);
    WallClass.Limits limits = WallClass.limits(p);

    Reference s1 = p.step("s_1", "start from the neutral axis", v1.minus(axis), Clause.GEOMETRY);
    Reference s2 = p.step("s_2", "end from the neutral axis", v2.minus(axis), Clause.GEOMETRY);
    Reference peak = p.step("s_p", "more compressed edge", max(s1, s2), Clause.GEOMETRY);
    Reference other = p.step("s_q", "other edge", min(s1, s2), Clause.GEOMETRY);
    Expression nothing = Steps.zero(Dimension.LENGTH);
    Reference compressed =
        p.step(
            "c",
            "compressed part of the width",
            choose(
                atMost(peak, nothing),
                number(0),
                choose(atLeast(other, nothing), number(1), peak.over(peak.minus(other)))),
            Clause.GEOMETRY);
    Reference ratio =
        p.step(
            "ψ",
            "stress at the other edge per stress at the more compressed one",
            choose(greater(peak, nothing), other.over(peak), number(1)),
            Clause.of("6.1.4.3, Figure 6.2"));
    Reference gradient =
        p.step(
            "η",
            "factor for the stress gradient",
            choose(
                greater(ratio, number(-1)),
                number(0.70).plus(ratio.times(0.30)),
                number(0.80).over(number(1).minus(ratio))),
            Clause.of("6.1.4.3, eq. 6.7"));
    Reference slenderness =
        p.step(
            "β",
            "slenderness parameter",
            choose(
                atMost(peak, nothing),
                number(0),
                choose(greater(outstand, number(0.5)).and(atLeast(s2, s1)), number(1), gradient)
                    .times(width)
                    .over(thickness)),
            Clause.of("6.1.4.3; toe most compressed: b/t"));
    WallClass wall = WallClass.of(p, limits, slenderness);
    Reference height =
        p.step(
            "Δv",
            "extent of the compressed part along v",
            compressed.times(peak.minus(other)),
            Clause.GEOMETRY);
    Reference middle =
        p.step(
            "v_c",
            "middle of the compressed part",
            max(v1, v2).minus(height.over(2)),
            Clause.GEOMETRY);
    Reference lost =
        p.step(
            "ΔA",
            "area that local buckling takes",
            number(1).minus(wall.factor()).times(thickness).times(width).times(compressed),
            Clause.of("6.1.5"));
    WallSums.after(p, before, lost, middle, height);
    p.step(
        "class_s",
        "class of the section so far",
        max(before.number(), wall.grade()),
        Clause.of("6.1.4.4"));
    p.step(
        "r_s",
        "plastic reserve of the section so far",
        min(before.reserve(), wall.reserve()),
        Clause.of("6.2.5.1"));
    return p.build();
  }
}
