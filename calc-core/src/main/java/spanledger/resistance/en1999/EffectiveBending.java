package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The effective section in bending, from the sums over its walls, and the moment it bears.
 *
 * <p>A pass: the neutral axis found is the one assumed in the next, until it stands still (δ_n).
 */
final class EffectiveBending {

  static final Procedure PROCEDURE = define();

  private EffectiveBending() {}

  private static Procedure define() {
    Steps p = new Steps("effective-bending", "Bending resistance of a section, EN 1999-1-1");
    Reference assumed = p.place("v_0", "neutral axis assumed in this pass");
    Reference area = p.positive("A", "area left", Dimension.AREA);
    Reference first = p.any("S", "first moment left", Dimension.SECTION_MODULUS);
    Reference second = p.positive("I", "second moment left", Dimension.SECOND_MOMENT);
    Reference compression = p.size("e_c", "compressed fibre from the centroid");
    Reference tension = p.size("e_t", "stretched fibre from the centroid");
    Reference elastic = p.positive("W_el", "elastic modulus", Dimension.SECTION_MODULUS);
    Reference plastic = p.positive("W_pl", "plastic modulus", Dimension.SECTION_MODULUS);
    Reference number =
        p.input("class_s", "class of the section", Dimension.NONE, new Domain(1, true, 4));
    Reference reserve = p.input("r_s", "plastic reserve allowed", Dimension.NONE, Domain.FRACTION);
    Reference welded = p.yes("w", "welded along its length");
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();

    Reference axis =
        p.step("v_n", "neutral axis of the effective section", first.over(area), Clause.BEAM);
    p.step(
        "δ_n",
        "movement of the neutral axis in this pass per depth",
        abs(axis.minus(assumed)).over(compression.plus(tension)),
        Clause.GEOMETRY);
    Reference inertia =
        p.step(
            "I_eff",
            "second moment of the effective section",
            second.minus(area.times(axis.pow(2))),
            Clause.BEAM);
    Reference effective =
        p.step(
            "W_eff",
            "modulus of the effective section",
            min(inertia.over(compression.minus(axis)), inertia.over(tension.plus(axis))),
            Clause.of("6.2.5.2"));
    Expression plasticFactor = plastic.over(elastic);
    Reference shape =
        p.step(
            "α",
            "shape factor",
            choose(
                greater(welded, number(0.5)),
                effective.over(elastic),
                choose(
                    less(number, number(2.5)),
                    plasticFactor,
                    choose(
                        less(number, number(3.5)),
                        number(1).plus(reserve.times(plasticFactor.minus(number(1)))),
                        effective.over(elastic)))),
            Clause.of("Table 6.4; welded along: the elastic one of the softened section"));
    p.step(
        "M_Rd",
        "moment resistance",
        shape.times(elastic).times(strength).over(partial),
        Clause.of("6.2.5.1, eq. 6.25"));
    return p.build();
  }
}
