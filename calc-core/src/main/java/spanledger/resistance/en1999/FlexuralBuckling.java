package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** Flexural buckling about one axis. */
final class FlexuralBuckling {

  static final Procedure PROCEDURE = define();

  private FlexuralBuckling() {}

  private static Procedure define() {
    Steps p = new Steps("flexural-buckling", "Flexural buckling, EN 1999-1-1");
    Reference inertia =
        p.positive("I", "second moment of the full section", Dimension.SECOND_MOMENT);
    Reference length = p.size("L_cr", "buckling length");
    Reference area = p.positive("A_eff", "area that local buckling leaves", Dimension.AREA);
    Reference modulus = p.youngsModulus();
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    BucklingCurve.Inputs curve = BucklingCurve.inputs(p);
    Reference welded = p.yes("w", "welded along its length");
    Reference classB = p.yes("B", "alloy of buckling class B");
    Reference left =
        p.input(
            "a_1",
            "area less softening per area, (A - A_haz (1 - ρ_o,haz)) / A",
            Dimension.NONE,
            Domain.FRACTION);

    Reference critical =
        p.step(
            "N_cr",
            "elastic critical force",
            pi().pow(2).times(modulus).times(inertia).over(length.pow(2)),
            Clause.of("6.3.1.2; Euler"));
    BucklingCurve.Result chi =
        BucklingCurve.steps(p, curve, area.times(strength), critical, "6.3.1.2");
    Reference slenderness = chi.slenderness();
    Reference weldedA =
        p.step(
            "κ_A",
            "softening beside welds along it, class A",
            min(
                number(1),
                number(1)
                    .minus(number(1).minus(left).times(number(10).pow(slenderness.negated())))
                    .minus(
                        number(0.05)
                            .plus(left.times(0.1))
                            .times(slenderness.pow(number(1).minus(slenderness).times(1.3))))),
            Clause.of("Table 6.5"));
    Reference weldedB =
        p.step(
            "κ_B",
            "softening beside welds along it, class B",
            choose(
                atMost(slenderness, number(0.2)),
                number(1),
                min(
                    number(1),
                    number(1)
                        .plus(slenderness.times(4).pow(number(0.5).minus(slenderness)).times(0.04))
                        .minus(
                            slenderness.pow(number(1).minus(slenderness).times(1.4)).times(0.22)))),
            Clause.of("Table 6.5"));
    Reference kappa =
        p.step(
            "κ",
            "factor for welds along it",
            choose(
                greater(welded, number(0.5)),
                choose(greater(classB, number(0.5)), weldedB, weldedA),
                number(1)),
            Clause.of("6.3.1.1(2), Table 6.5"));
    Reference factor =
        p.step("κχ", "both reductions", kappa.times(chi.reduction()), Clause.of("6.3.1.1"));
    p.step(
        "μ",
        "moment of the bow that the buckling curve stands for, per M_Rd where N is N_Rd",
        number(1)
            .over(factor)
            .minus(number(1))
            .times(max(number(0), number(1).minus(factor.times(slenderness.pow(2))))),
        Clause.SECOND_ORDER);
    p.step(
        "N_b_Rd",
        "buckling resistance",
        kappa.times(chi.reduction()).times(area).times(strength).over(partial),
        Clause.of("6.3.1.1, eq. 6.49"));
    return p.build();
  }
}
