package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Torsional and torsional-flexural buckling of any section.
 *
 * <p>The critical force is the least root of
 *
 * <pre>i_s²(N − N_y)(N − N_z)(N − N_T) − N² z_s² (N − N_y) − N² y_s² (N − N_z) = 0</pre>
 *
 * (S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability). With one axis of symmetry or two
 * it is found in closed form. Without any, Newton's method from N = 0 rises towards the least root
 * and never passes it; eight steps are taken, so what is left is on the safe side, and shown.
 */
final class TorsionalBuckling {

  static final Procedure PROCEDURE = define();

  private static final int PASSES = 8;

  private TorsionalBuckling() {}

  private static Procedure define() {
    Steps p = new Steps("torsional-buckling", "Torsional-flexural buckling, EN 1999-1-1");
    Reference area = p.positive("A_g", "area of the full section", Dimension.AREA);
    Reference iy = p.positive("I_y", "second moment about y", Dimension.SECOND_MOMENT);
    Reference iz = p.positive("I_z", "second moment about z", Dimension.SECOND_MOMENT);
    Reference it = p.positive("I_t", "torsion constant", Dimension.SECOND_MOMENT);
    Reference iw = p.notNegative("I_w", "warping constant", Dimension.WARPING_CONSTANT);
    Reference ys = p.place("y_s", "shear centre from the centroid, along y");
    Reference zs = p.place("z_s", "shear centre from the centroid, along z");
    Reference length = p.size("L_T", "length between points that cannot twist");
    Reference ny = p.positive("N_cr_y", "critical force of bending about y", Dimension.FORCE);
    Reference nz = p.positive("N_cr_z", "critical force of bending about z", Dimension.FORCE);
    Reference effective = p.positive("A_eff", "area that counts for this mode", Dimension.AREA);
    Reference e = p.youngsModulus();
    Reference g = p.positive("G", "shear modulus", Dimension.STRESS);
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    BucklingCurve.Inputs curve = BucklingCurve.inputs(p);

    Source annex = Clause.of("Annex I.3; theory of elastic stability");
    Reference polar =
        p.step(
            "i_s",
            "polar radius about the shear centre",
            sqrt(iy.plus(iz).over(area).plus(ys.pow(2)).plus(zs.pow(2))),
            Clause.of("Annex I.3"));
    Reference twist =
        p.step(
            "N_cr_T",
            "critical force of twisting",
            g.times(it).plus(pi().pow(2).times(e).times(iw).over(length.pow(2))).over(polar.pow(2)),
            Clause.of("Annex I.3, eq. I.13"));
    Reference oy = p.step("o_y", "y_s per polar radius", abs(ys).over(polar), Clause.GEOMETRY);
    Reference oz = p.step("o_z", "z_s per polar radius", abs(zs).over(polar), Clause.GEOMETRY);
    Reference symmetricZ =
        p.step(
            "N_1",
            "twisting with bending about z, for sections symmetric about z",
            coupled(nz, twist, oz),
            annex);
    Reference symmetricY =
        p.step(
            "N_2",
            "twisting with bending about y, for sections symmetric about y",
            coupled(ny, twist, oy),
            annex);
    Reference search = newton(p, ny, nz, twist, oy, oz, annex);
    Expression small = number(0.001);
    Reference critical =
        p.step(
            "N_cr",
            "critical force of torsional-flexural buckling",
            choose(
                atMost(oy, small),
                choose(atMost(oz, small), twist, symmetricZ),
                choose(atMost(oz, small), symmetricY, search)),
            annex);
    BucklingCurve.Result chi =
        BucklingCurve.steps(p, curve, effective.times(strength), critical, "6.3.1.4");
    p.step(
        "N_b_Rd",
        "buckling resistance",
        chi.reduction().times(effective).times(strength).over(partial),
        Clause.of("6.3.1.1, eq. 6.49"));
    return p.build();
  }

  /** The lesser root of (1 − o²)N² − (N_b + N_T)N + N_b N_T = 0, in the form that stays exact. */
  private static Expression coupled(Reference bending, Reference twist, Reference offset) {
    Expression sum = bending.plus(twist);
    Expression rest = number(1).minus(offset.pow(2));
    return bending
        .times(twist)
        .times(2)
        .over(
            sum.plus(
                sqrt(
                    max(
                        sum.pow(2).minus(rest.times(bending).times(twist).times(4)),
                        Steps.zero(Dimension.FORCE.power(2))))));
  }

  private static Reference newton(
      Steps p,
      Reference ny,
      Reference nz,
      Reference twist,
      Reference oy,
      Reference oz,
      Source source) {
    Reference scale = p.step("N_0", "least of the three, as a scale", min(ny, nz, twist), source);
    Reference a = p.step("a", "scale per N_cr,y", scale.over(ny), source);
    Reference b = p.step("b", "scale per N_cr,z", scale.over(nz), source);
    Reference c = p.step("c", "scale per N_cr,T", scale.over(twist), source);
    // With n = N/N_0, the equation divided by the three forces:
    // (1 − a n)(1 − b n)(1 − c n) − n² c (b o_z² (1 − a n) + a o_y² (1 − b n)) = 0
    Expression third = a.times(b).times(c).times(number(1).minus(oy.pow(2)).minus(oz.pow(2)));
    Reference k3 = p.step("k_3", "coefficient of n³", third.negated(), source);
    Reference k2 =
        p.step(
            "k_2",
            "coefficient of n²",
            a.times(b)
                .plus(b.times(c).times(number(1).minus(oz.pow(2))))
                .plus(a.times(c).times(number(1).minus(oy.pow(2)))),
            source);
    Reference k1 = p.step("k_1", "coefficient of n", a.plus(b).plus(c).negated(), source);
    Reference n = p.step("n_1", "first pass from 0", number(1).over(k1.negated()), source);
    for (int i = 2; i <= PASSES; i++) {
      Expression value =
          k3.times(n.pow(3)).plus(k2.times(n.pow(2))).plus(k1.times(n)).plus(number(1));
      Expression slope = k3.times(n.pow(2)).times(3).plus(k2.times(n).times(2)).plus(k1);
      n =
          p.step(
              "n_" + i,
              "pass " + i,
              choose(less(slope, number(0)), n.minus(value.over(slope)), n),
              source);
    }
    p.step(
        "n_r",
        "what is left of the equation; positive is below the root",
        k3.times(n.pow(3)).plus(k2.times(n.pow(2))).plus(k1.times(n)).plus(number(1)),
        source);
    return p.step("N_3", "least root of the whole equation, from below", scale.times(n), source);
  }
}
