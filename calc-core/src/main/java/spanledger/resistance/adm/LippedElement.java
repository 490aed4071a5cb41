package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Local buckling of a flat element with one edge held and a straight lip along the other, Aluminum
 * Design Manual 2020, B.5.4.3: between that of an outstand and that of an element with both edges
 * held, by how stiff the lip is, and never above that of the lip.
 */
public final class LippedElement {

  private static final Source STIFFENED =
      Source.fromMemory("Aluminum Design Manual 2020", "B.5.4.3");

  /** Inputs b, t, d_s, t_s, θ_s, F_cy, E, aged, B_p, D_p, C_p; steps end in F_c and F_e. */
  public static final Procedure PROCEDURE = procedure();

  private LippedElement() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-lipped-element", "Flat element with one edge held and a lip");
    Reference width = Symbols.length(p, "b", "flat width of the element");
    Reference thickness = Symbols.length(p, "t", "thickness of the element");
    Reference depth = Symbols.length(p, "d_s", "flat width of the lip");
    Reference lipThickness = Symbols.length(p, "t_s", "thickness of the lip");
    Reference angle =
        p.input(
            "θ_s",
            "angle between element and lip, rad",
            Dimension.NONE,
            new Domain(0, false, Math.PI / 2));
    FlatConstants constants = FlatConstants.inputs(p);
    Reference slenderness =
        p.step("λ", "slenderness of the element", Dimension.NONE, width.over(thickness), STIFFENED);
    Reference lip =
        p.step(
            "λ_s", "slenderness of the lip", Dimension.NONE, depth.over(lipThickness), STIFFENED);
    FlatConstants.AfterBuckling after = constants.afterBuckling(p, UniformElement.POST);
    Strengths strengths = new Strengths(p, constants, after);
    Reference free =
        strengths.of("UT", "element as if without lip", slenderness, UniformElement.ONE_EDGE);
    Reference held =
        strengths.of(
            "ST", "element as if both edges were held", slenderness, UniformElement.BOTH_EDGES);
    Reference own = strengths.of("lip", "lip", lip, UniformElement.ONE_EDGE);
    Reference radius =
        p.step(
            "r_s",
            "radius of gyration of the lip about the middle of the element",
            Dimension.LENGTH,
            depth.times(sin(angle)).over(sqrt(number(3))),
            STIFFENED);
    Reference relative =
        p.step(
            "s_rel",
            "slenderness per 1.28 √(E/F_cy), which the need of the lip is measured by",
            Dimension.NONE,
            slenderness.over(sqrt(constants.modulus().over(constants.yield())).times(1.28)),
            STIFFENED);
    Reference effect =
        p.step(
            "ρ_ST",
            "effect of the lip, 1 for full support",
            Dimension.NONE,
            effect(relative, radius, thickness),
            STIFFENED);
    Reference counted =
        p.step(
            "ρ_s",
            "effect that counts: none for a lip deeper than 0.8 of the width",
            Dimension.NONE,
            choose(greater(depth, width.times(0.8)), number(0), effect),
            STIFFENED);
    p.step(
        "F_c",
        "strength, not above that of the lip",
        Dimension.STRESS,
        min(own, free.plus(max(held.minus(free), free.times(0)).times(counted))),
        STIFFENED);
    UniformElement.elastic(
        p,
        "F_e",
        "elastic buckling stress, help of the lip left out",
        constants.modulus(),
        max(slenderness, lip).times(UniformElement.ONE_EDGE));
    return p.build();
  }

  private static Expression effect(Reference relative, Reference radius, Reference thickness) {
    Expression stocky = radius.over(thickness.times(9).times(relative.minus(number(1).over(3))));
    Expression slender = radius.over(thickness.times(1.5).times(relative.plus(number(3))));
    return choose(
        atMost(relative, number(1).over(3)),
        number(1),
        choose(
            atMost(relative, number(1)),
            min(number(1), stocky),
            choose(less(relative, number(2)), min(number(1), slender), number(0))));
  }

  private record Strengths(
      Procedure.Builder p, FlatConstants constants, FlatConstants.AfterBuckling after) {

    Reference of(String mark, String what, Reference slenderness, double factor) {
      return constants
          .ranges(slenderness, number(factor), after)
          .write(
              p,
              new ThreeRanges.Names("λ_1_" + mark, "λ_2_" + mark, "F_" + mark, what),
              UniformElement.FLAT);
    }
  }
}
