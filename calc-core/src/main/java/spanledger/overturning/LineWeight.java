package spanledger.overturning;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A weight spread evenly along a straight line, such as a member; or at one place, if both ends are
 * the same.
 *
 * @param name what weighs
 * @param from where it begins, global, mm
 * @param to where it ends, global, mm
 * @param weight of the whole, N, downward
 */
public record LineWeight(String name, Vector from, Vector to, double weight) implements Acting {

  /**
   * Inputs of {@link TippingEdge} (X_A, Y_A, Z_A, n_X, n_Y, t), then W, X_1, Y_1, Z_1, X_2, Y_2,
   * Z_2; steps d_1, d_2 (beyond the line), M_out, M_in (moments of the parts beyond and within),
   * M_z (weight times height above the line).
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private static Procedure procedure() {
    Source parts =
        Source.derived("Moment of an even weight, the parts on either side of the line apart");
    Procedure.Builder p =
        Procedure.named("weight-beside-edge", "Moment of a weight about the tipping line");
    EdgeInputs edge = new EdgeInputs(p);
    Reference weight = p.input("W", "weight", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference x1 = p.input("X_1", "one end along X", Dimension.LENGTH);
    Reference y1 = p.input("Y_1", "one end along Y", Dimension.LENGTH);
    Reference z1 = p.input("Z_1", "one end along Z", Dimension.LENGTH);
    Reference x2 = p.input("X_2", "other end along X", Dimension.LENGTH);
    Reference y2 = p.input("Y_2", "other end along Y", Dimension.LENGTH);
    Reference z2 = p.input("Z_2", "other end along Z", Dimension.LENGTH);
    Reference d1 =
        p.step(
            "d_1",
            "one end beyond the line",
            Dimension.LENGTH,
            edge.beyond(x1, y1),
            EdgeInputs.ARM);
    Reference d2 =
        p.step(
            "d_2",
            "other end beyond the line",
            Dimension.LENGTH,
            edge.beyond(x2, y2),
            EdgeInputs.ARM);
    p.step(
        "M_out",
        "moment of the part beyond the line, which tips",
        Dimension.MOMENT,
        weight.times(meanBeyond(d1, d2)),
        parts);
    p.step(
        "M_in",
        "moment of the part within, which holds",
        Dimension.MOMENT,
        weight.times(meanBeyond(d1.negated(), d2.negated())),
        parts);
    p.step(
        "M_z",
        "weight times its height above the line",
        Dimension.MOMENT,
        weight.times(edge.above(x1, y1, z1).plus(edge.above(x2, y2, z2)).over(2)),
        EdgeInputs.ARM);
    return p.build();
  }

  /** The mean over a straight line of what lies above zero of a value that varies linearly. */
  static Expression meanBeyond(Expression d1, Expression d2) {
    Expression none = constant(0, Dimension.LENGTH);
    Expression one = max(d1, none);
    Expression two = max(d2, none);
    return choose(
        atLeast(d1.times(d2), constant(0, Dimension.AREA)),
        one.plus(two).over(2),
        one.pow(2).plus(two.pow(2)).over(abs(d1.minus(d2)).times(2)));
  }

  /** One at a single place. */
  public static LineWeight at(String name, Vector place, double weight) {
    return new LineWeight(name, place, place, weight);
  }

  /** Its moments about a line. */
  PermanentMoments about(TippingEdge edge) {
    double[] values =
        COMPILED.run(
            EdgeInputs.of(edge, weight, from.x(), from.y(), from.z(), to.x(), to.y(), to.z()));
    return new PermanentMoments(
        values[COMPILED.slot("M_in")],
        values[COMPILED.slot("M_out")],
        values[COMPILED.slot("M_z")]);
  }

  @Override
  public double tipping(TippingEdge edge, double sway) {
    return about(edge).tipping();
  }
}
