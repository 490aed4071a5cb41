package spanledger.deck;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Panels by a table of what they carry. Between two rows a load on all of the panel is read by a
 * straight line, and by a straight line of load times span squared; the lesser counts. The first
 * alone is on the unsafe side for every panel that bends, since its load falls along a hollow
 * curve; the second is exact where bending governs. Loads at one place are read by a straight line
 * of load times span, which never lies above that of the load.
 */
public final class PanelProcedures {

  private static final Source READ =
      Source.derived("Straight line between two rows (docs/theory/deck.md)");
  private static final Source BENDING =
      Source.derived(
          "Moments of a simple beam are as load times span² or span (docs/theory/deck.md)");
  private static final Source LINEAR = Source.derived("Deflections are as their loads");
  private static final Source SUM =
      Source.derived("Parts of both resistances add up (docs/theory/deck.md)");

  /** Load on all of a floor or tread; steps q_R, q_E, η_panel. */
  public static final Procedure AREA = uniform(false);

  /** Line load along a tread, spread over its going; steps q_R, q_E, η_panel. */
  public static final Procedure LINE = uniform(true);

  /** Load at one place beside the weight; steps P_R, P_E, q_R, q_E, η_panel. */
  public static final Procedure POINT = point();

  /** Deflection under a load on all of it; step δ. */
  public static final Procedure AREA_DEFLECTION = uniformDeflection(false);

  /** Deflection under a line load along a tread; step δ. */
  public static final Procedure LINE_DEFLECTION = uniformDeflection(true);

  /** Deflection under a load at one place beside the weight; step δ. */
  public static final Procedure POINT_DEFLECTION = pointDeflection();

  private PanelProcedures() {}

  private static Procedure uniform(boolean line) {
    Procedure.Builder p =
        Procedure.named(
            line ? "panel-line-load" : "panel-area-load",
            line ? "Tested treads under a line load" : "Tested panels under a load on all of them");
    Reading read = new Reading(p);
    Reference resistance = read.uniform(read.divisor());
    Reference effect = uniformEffect(p, line);
    p.step(
        "η_panel",
        "utilisation, panel",
        Dimension.NONE,
        effect.over(resistance),
        Source.derived("Effect per resistance"));
    return p.build();
  }

  private static Reference uniformEffect(Procedure.Builder p, boolean line) {
    Reference weight = p.input("g", "weight", Dimension.STRESS, Domain.NOT_NEGATIVE);
    Expression imposed = imposed(p, line);
    Reference permanent = factor(p, "γ_G", "factor on permanent actions");
    Reference factor = factor(p, "γ_Q", "factor on imposed actions");
    return p.step(
        "q_E",
        "effect",
        Dimension.STRESS,
        permanent.times(weight).plus(factor.times(imposed)),
        Source.declared("combination rules"));
  }

  private static Expression imposed(Procedure.Builder p, boolean line) {
    if (!line) {
      return p.input("q_k", "imposed load", Dimension.STRESS, Domain.NOT_NEGATIVE);
    }
    Reference load = p.input("p_k", "line load", Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
    Reference depth = p.input("b", "going", Dimension.LENGTH, Domain.POSITIVE);
    return load.over(depth);
  }

  private static Reference factor(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.NONE, Domain.POSITIVE);
  }

  private static Procedure point() {
    Procedure.Builder p =
        Procedure.named("panel-point-load", "Tested panels under a load at one place");
    Reading read = new Reading(p);
    Reference divisor = read.divisor();
    Reference uniform = read.uniform(divisor);
    Reference resistance = read.point(divisor);
    Reference weight = p.input("g", "weight", Dimension.STRESS, Domain.NOT_NEGATIVE);
    Reference load = p.input("P_k", "load at one place", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference permanent = factor(p, "γ_G", "factor on permanent actions");
    Reference factor = factor(p, "γ_Q", "factor on imposed actions");
    Reference effect =
        p.step(
            "P_E",
            "effect of the load at one place",
            Dimension.FORCE,
            factor.times(load),
            Source.declared("combination rules"));
    Reference dead =
        p.step(
            "q_E",
            "effect of the weight",
            Dimension.STRESS,
            permanent.times(weight),
            Source.declared("combination rules"));
    p.step(
        "η_panel",
        "utilisation, panel",
        Dimension.NONE,
        effect.over(resistance).plus(dead.over(uniform)),
        SUM);
    return p.build();
  }

  private static Procedure uniformDeflection(boolean line) {
    Procedure.Builder p =
        Procedure.named(
            line ? "panel-line-deflection" : "panel-area-deflection",
            line
                ? "Deflection of tested treads under a line load"
                : "Deflection of tested panels under a load on all of them");
    Reading read = new Reading(p);
    Reference perLoad = read.perUniform();
    Reference weight = p.input("g", "weight", Dimension.STRESS, Domain.NOT_NEGATIVE);
    Expression imposed = imposed(p, line);
    p.step("δ", "deflection", Dimension.LENGTH, weight.plus(imposed).times(perLoad), LINEAR);
    return p.build();
  }

  private static Procedure pointDeflection() {
    Procedure.Builder p =
        Procedure.named(
            "panel-point-deflection", "Deflection of tested panels under a load at one place");
    Reading read = new Reading(p);
    Reference perUniform = read.perUniform();
    Reference perPoint = read.perPoint();
    Reference weight = p.input("g", "weight", Dimension.STRESS, Domain.NOT_NEGATIVE);
    Reference load = p.input("P_k", "load at one place", Dimension.FORCE, Domain.NOT_NEGATIVE);
    p.step(
        "δ",
        "deflection",
        Dimension.LENGTH,
        weight.times(perUniform).plus(load.times(perPoint)),
        LINEAR);
    return p.build();
  }

  /** Reads a table between the rows before and after the span. */
  private static final class Reading {
    private final Procedure.Builder p;
    private final Reference span;
    private final Reference before;
    private final Reference after;
    private final Reference share;

    Reading(Procedure.Builder p) {
      this.p = p;
      span = p.input("L", "span", Dimension.LENGTH, Domain.POSITIVE);
      before = row(PanelColumn.SPAN, 1);
      after = row(PanelColumn.SPAN, 2);
      share =
          p.step(
              "t",
              "share of the way from the row before to the row after",
              Dimension.NONE,
              span.minus(before).over(after.minus(before)),
              READ);
    }

    private Reference row(PanelColumn column, int which) {
      return p.input(
          column.symbol() + "_" + which,
          column.words() + (which == 1 ? ", row before" : ", row after"),
          column.dimension(),
          Domain.POSITIVE);
    }

    private Expression between(Expression first, Expression second) {
      return first.plus(second.minus(first).times(share));
    }

    Reference divisor() {
      return p.input("γ_M", "divisor of resistances", Dimension.NONE, Domain.POSITIVE);
    }

    Reference uniform(Reference divisor) {
      Reference first = row(PanelColumn.UNIFORM, 1);
      Reference second = row(PanelColumn.UNIFORM, 2);
      Reference straight =
          p.step("q_t", "load by a straight line", Dimension.STRESS, between(first, second), READ);
      Reference bending =
          p.step(
              "q_b",
              "load by a straight line of load times span²",
              Dimension.STRESS,
              between(first.times(before.pow(2)), second.times(after.pow(2))).over(span.pow(2)),
              BENDING);
      return p.step(
          "q_R", "resistance", Dimension.STRESS, min(straight, bending).over(divisor), READ);
    }

    Reference point(Reference divisor) {
      Reference first = row(PanelColumn.POINT, 1);
      Reference second = row(PanelColumn.POINT, 2);
      return p.step(
          "P_R",
          "resistance to the load at one place",
          Dimension.FORCE,
          between(first.times(before), second.times(after)).over(span).over(divisor),
          BENDING);
    }

    Reference perUniform() {
      return perLoad(PanelColumn.UNIFORM, PanelColumn.UNIFORM_DEFLECTION, "f_q");
    }

    Reference perPoint() {
      return perLoad(PanelColumn.POINT, PanelColumn.POINT_DEFLECTION, "f_P");
    }

    private Reference perLoad(PanelColumn load, PanelColumn deflection, String symbol) {
      Reference load1 = row(load, 1);
      Reference load2 = row(load, 2);
      Reference deflection1 = row(deflection, 1);
      Reference deflection2 = row(deflection, 2);
      return p.step(
          symbol,
          "deflection per " + load.words(),
          Dimension.LENGTH.per(load.dimension()),
          between(deflection1.over(load1), deflection2.over(load2)),
          READ);
    }
  }
}
