package spanledger.overturning;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.action.Surface;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * An even load on a rectangular floor.
 *
 * @param floor the floor
 * @param pressure on its area, sloping if the floor slopes, MPa
 */
public record FloorWeight(Surface floor, double pressure) implements Acting {

  /**
   * Inputs of {@link TippingEdge}, then p, φ (level force per weight), X_1 ... Z_1, X_2 ... Z_2,
   * X_4 ... Z_4 (the first corner and its two neighbours); steps Q (the whole load), e_1 ... e_4
   * (how far beyond the line each corner acts), M_out, M_in, M_z as in {@link LineWeight}.
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /** Sides that run along the line but for this, mm, are taken as running along it. */
  private static final double ALONG = 1e-3;

  private static Procedure procedure() {
    Source part =
        Source.derived("Moment of an even load on a rectangle, the part beyond the line apart");
    Procedure.Builder p =
        Procedure.named("floor-beside-edge", "Moment of a floor load about the tipping line");
    EdgeInputs edge = new EdgeInputs(p);
    Reference pressure = p.input("p", "load per area", Dimension.STRESS, Domain.NOT_NEGATIVE);
    Reference sway =
        p.input("φ", "notional level force per weight", Dimension.NONE, Domain.NOT_NEGATIVE);
    Expression[][] corner = new Expression[3][];
    String[] names = {"1", "2", "4"};
    for (int i = 0; i < 3; i++) {
      String which = "corner " + names[i];
      corner[i] =
          new Expression[] {
            p.input("X_" + names[i], which + " along X", Dimension.LENGTH),
            p.input("Y_" + names[i], which + " along Y", Dimension.LENGTH),
            p.input("Z_" + names[i], which + " along Z", Dimension.LENGTH)
          };
    }
    Reference a =
        p.step(
            "a", "side from corner 1 to 2", Dimension.LENGTH, distance(corner[0], corner[1]), part);
    Reference b =
        p.step(
            "b", "side from corner 1 to 4", Dimension.LENGTH, distance(corner[0], corner[2]), part);
    Reference load =
        p.step("Q", "load of the whole floor", Dimension.FORCE, pressure.times(a).times(b), part);
    Reference[] e = new Reference[4];
    int[] order = {0, 1, 2};
    String[] symbols = {"e_1", "e_2", "e_4"};
    Reference[] found = new Reference[3];
    Expression[] heights = new Expression[3];
    for (int i : order) {
      heights[i] = edge.above(corner[i][0], corner[i][1], corner[i][2]);
      found[i] =
          p.step(
              symbols[i],
              "corner " + names[i] + " beyond the line, with the lever of the level force",
              Dimension.LENGTH,
              edge.beyond(corner[i][0], corner[i][1]).plus(sway.times(heights[i])),
              EdgeInputs.ARM);
    }
    e[0] = found[0];
    e[1] = found[1];
    e[3] = found[2];
    e[2] =
        p.step(
            "e_3",
            "corner 3, likewise",
            Dimension.LENGTH,
            e[1].plus(e[3]).minus(e[0]),
            EdgeInputs.ARM);
    p.step(
        "M_out",
        "moment of the part that tips",
        Dimension.MOMENT,
        load.times(mean(e[0], e[1], e[2], e[3])),
        part);
    p.step(
        "M_in",
        "moment of the part that holds",
        Dimension.MOMENT,
        load.times(mean(e[0].negated(), e[1].negated(), e[2].negated(), e[3].negated())),
        part);
    p.step(
        "M_z",
        "load times its height above the line",
        Dimension.MOMENT,
        load.times(heights[1].plus(heights[2]).over(2)),
        EdgeInputs.ARM);
    return p.build();
  }

  private static Expression distance(Expression[] from, Expression[] to) {
    Expression sum = to[0].minus(from[0]).pow(2);
    for (int i = 1; i < 3; i++) {
      sum = sum.plus(to[i].minus(from[i]).pow(2));
    }
    return sqrt(sum);
  }

  /**
   * The mean over a parallelogram of what lies above zero of a value that varies linearly, from its
   * values at the corners in order round it: the second antiderivative max(0, e)³/6 at the corners.
   */
  private static Expression mean(Expression e1, Expression e2, Expression e3, Expression e4) {
    Expression none = constant(0, Dimension.LENGTH);
    Expression alongA = e2.minus(e1);
    Expression alongB = e4.minus(e1);
    Expression whole =
        cube(e3).minus(cube(e2)).minus(cube(e4)).plus(cube(e1)).over(alongA.times(alongB).times(6));
    Expression acrossB = LineWeight.meanBeyond(e1.plus(e2).over(2), e4.plus(e3).over(2));
    Expression acrossA = LineWeight.meanBeyond(e1.plus(e4).over(2), e2.plus(e3).over(2));
    Expression crossed =
        choose(
            less(abs(alongA), constant(ALONG, Dimension.LENGTH)),
            acrossB,
            choose(less(abs(alongB), constant(ALONG, Dimension.LENGTH)), acrossA, whole));
    return choose(
        atLeast(min(e1, e2, e3, e4), none),
        e1.plus(e3).over(2),
        choose(atLeast(none, max(e1, e2, e3, e4)), none, crossed));
  }

  private static Expression cube(Expression e) {
    return max(e, constant(0, Dimension.LENGTH)).pow(3);
  }

  /** The whole load, N. */
  public double load() {
    Vector a = corner(1).minus(corner(0));
    Vector b = corner(3).minus(corner(0));
    return pressure * a.norm() * b.norm();
  }

  private Vector corner(int index) {
    return floor.corners().get(index).place();
  }

  /** Its moments about a line, without level forces in the parts that hold and tip. */
  PermanentMoments about(TippingEdge edge) {
    double[] values = run(edge, 0);
    return new PermanentMoments(
        values[COMPILED.slot("M_in")],
        values[COMPILED.slot("M_out")],
        values[COMPILED.slot("M_z")]);
  }

  @Override
  public String name() {
    return "floor " + floor.name();
  }

  @Override
  public double tipping(TippingEdge edge, double sway) {
    return run(edge, sway)[COMPILED.slot("M_out")];
  }

  private double[] run(TippingEdge edge, double sway) {
    Vector one = corner(0);
    Vector two = corner(1);
    Vector four = corner(3);
    return COMPILED.run(
        EdgeInputs.of(
            edge, pressure, sway, one.x(), one.y(), one.z(), two.x(), two.y(), two.z(), four.x(),
            four.y(), four.z()));
  }
}
