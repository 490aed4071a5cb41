package spanledger.deck;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Planks by their section: forces and deflection of one plank as a simple beam. A load at one place
 * stands on a square patch, in the middle of the span for moment and deflection and against a
 * support for shear; a plank takes of it what of the patch lies on it, at most.
 */
public final class PlankProcedures {

  private static final Source BEAM =
      Source.derived("Simple beam with a load spread over a part (docs/theory/deck.md)");
  private static final Source RULES = Source.declared("combination rules");

  /** Load on all of the deck; steps w_E, V, M, w_k, δ. */
  public static final Procedure AREA = uniform(false);

  /** Line load along one plank; steps w_E, V, M, w_k, δ. */
  public static final Procedure LINE = uniform(true);

  /** Load at one place beside the weight; steps w_E, s, c, F_E, V, M, δ_g, δ. */
  public static final Procedure POINT = point();

  private PlankProcedures() {}

  /** The inputs that all planks have. */
  private record Plank(
      Reference span,
      Reference width,
      Reference modulus,
      Reference secondMoment,
      Reference shearModulus,
      Reference shearArea,
      Reference weight,
      Reference permanent,
      Reference factor) {

    static Plank in(Procedure.Builder p) {
      return new Plank(
          p.input("L", "span", Dimension.LENGTH, Domain.POSITIVE),
          p.input("b", "width of floor that one plank carries", Dimension.LENGTH, Domain.POSITIVE),
          p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE),
          p.input("I_y", "second moment of area", Dimension.SECOND_MOMENT, Domain.POSITIVE),
          p.input("G", "shear modulus", Dimension.STRESS, Domain.POSITIVE),
          p.input("A_v_z", "shear area", Dimension.AREA, Domain.POSITIVE),
          p.input("g", "weight", Dimension.STRESS, Domain.NOT_NEGATIVE),
          p.input("γ_G", "factor on permanent actions", Dimension.NONE, Domain.POSITIVE),
          p.input("γ_Q", "factor on imposed actions", Dimension.NONE, Domain.POSITIVE));
    }

    Expression bending() {
      return modulus.times(secondMoment);
    }

    Expression shear() {
      return shearModulus.times(shearArea);
    }

    /** Deflection in the middle under a load per length. */
    Expression deflection(Expression load) {
      return load.times(span.pow(4))
          .times(5)
          .over(bending().times(384))
          .plus(load.times(span.pow(2)).over(shear().times(8)));
    }
  }

  private static Procedure uniform(boolean line) {
    Procedure.Builder p =
        Procedure.named(
            line ? "plank-line-load" : "plank-area-load",
            line ? "Planks under a line load" : "Planks under a load on all of them");
    Plank plank = Plank.in(p);
    Expression imposed =
        line
            ? p.input("p_k", "line load", Dimension.LINE_LOAD, Domain.NOT_NEGATIVE)
            : p.input("q_k", "imposed load", Dimension.STRESS, Domain.NOT_NEGATIVE)
                .times(plank.width());
    Expression dead = plank.weight().times(plank.width());
    Reference design =
        p.step(
            "w_E",
            "load per length, with factors",
            Dimension.LINE_LOAD,
            plank.permanent().times(dead).plus(plank.factor().times(imposed)),
            RULES);
    p.step("V", "greatest shear", Dimension.FORCE, design.times(plank.span()).over(2), BEAM);
    p.step(
        "M", "greatest moment", Dimension.MOMENT, design.times(plank.span().pow(2)).over(8), BEAM);
    Reference service =
        p.step(
            "w_k",
            "load per length, without factors",
            Dimension.LINE_LOAD,
            dead.plus(imposed),
            RULES);
    p.step("δ", "deflection", Dimension.LENGTH, plank.deflection(service), BEAM);
    return p.build();
  }

  private static Procedure point() {
    Procedure.Builder p = Procedure.named("plank-point-load", "Planks under a load at one place");
    Plank plank = Plank.in(p);
    Reference load = p.input("P_k", "load at one place", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference patch =
        p.input("a", "side of its square patch, 0 if none", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference span = plank.span();
    Reference dead =
        p.step(
            "w_E",
            "weight per length, with factor",
            Dimension.LINE_LOAD,
            plank.permanent().times(plank.weight()).times(plank.width()),
            RULES);
    Reference share =
        p.step(
            "s",
            "share of the load on one plank",
            Dimension.NONE,
            choose(less(plank.width(), patch), plank.width().over(patch), number(1)),
            BEAM);
    Reference along =
        p.step("c", "length of the patch on the span", Dimension.LENGTH, min(patch, span), BEAM);
    Reference onPlank =
        p.step("F_k", "load on one plank", Dimension.FORCE, load.times(share), BEAM);
    Reference design =
        p.step(
            "F_E", "the same, with factor", Dimension.FORCE, plank.factor().times(onPlank), RULES);
    p.step(
        "V",
        "greatest shear, patch against a support",
        Dimension.FORCE,
        dead.times(span).over(2).plus(design.times(number(1).minus(along.over(span.times(2))))),
        BEAM);
    p.step(
        "M",
        "greatest moment, patch in the middle",
        Dimension.MOMENT,
        dead.times(span.pow(2)).over(8).plus(design.times(span.over(4).minus(along.over(8)))),
        BEAM);
    Reference byWeight =
        p.step(
            "δ_g",
            "deflection by weight",
            Dimension.LENGTH,
            plank.deflection(plank.weight().times(plank.width())),
            BEAM);
    Expression shape =
        span.pow(3).times(8).minus(span.times(along.pow(2)).times(4)).plus(along.pow(3));
    p.step(
        "δ",
        "deflection",
        Dimension.LENGTH,
        byWeight
            .plus(onPlank.times(shape).over(plank.bending().times(384)))
            .plus(onPlank.times(span.over(4).minus(along.over(8))).over(plank.shear())),
        BEAM);
    return p.build();
  }
}
