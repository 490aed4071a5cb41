package spanledger.overturning;

import static spanledger.procedure.Formulas.sqrt;

import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A line through two neighbouring feet about which the structure may tip. Seen from above, the
 * structure lies to the left of the way from the first foot to the second.
 */
public final class TippingEdge {

  /**
   * Inputs X_1, Y_1, Z_1, X_2, Y_2, Z_2; steps l (length in plan), n_X, n_Y (direction in which it
   * tips, level, of length 1), t (rise of the line per length in plan).
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private final Node first;
  private final Node second;
  private final double[] values;

  /** The line through two feet that do not stand above each other. */
  TippingEdge(Node first, Node second) {
    this.first = first;
    this.second = second;
    Vector a = first.place();
    Vector b = second.place();
    values = COMPILED.run(a.x(), a.y(), a.z(), b.x(), b.y(), b.z());
  }

  private static Procedure procedure() {
    Source geometry = Source.derived("Geometry of the line through two feet");
    Procedure.Builder p = Procedure.named("tipping-edge", "Line about which the structure tips");
    Reference x1 = place(p, "X_1", "first foot along X");
    Reference y1 = place(p, "Y_1", "first foot along Y");
    Reference z1 = place(p, "Z_1", "first foot along Z");
    Reference x2 = place(p, "X_2", "second foot along X");
    Reference y2 = place(p, "Y_2", "second foot along Y");
    Reference z2 = place(p, "Z_2", "second foot along Z");
    Reference length =
        p.step(
            "l",
            "length in plan",
            Dimension.LENGTH,
            sqrt(x2.minus(x1).pow(2).plus(y2.minus(y1).pow(2))),
            geometry);
    p.step("n_X", "outward along X", Dimension.NONE, y2.minus(y1).over(length), geometry);
    p.step("n_Y", "outward along Y", Dimension.NONE, x1.minus(x2).over(length), geometry);
    p.step(
        "t",
        "rise of the line per length in plan",
        Dimension.NONE,
        z2.minus(z1).over(length),
        geometry);
    return p.build();
  }

  private static Reference place(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.ANY);
  }

  /** The foot where it begins. */
  public Node first() {
    return first;
  }

  /** The foot where it ends. */
  public Node second() {
    return second;
  }

  /** The two feet in words. */
  public String name() {
    return first.name() + " - " + second.name();
  }

  /** The level direction in which the structure tips, of length 1. */
  public Vector outward() {
    return new Vector(value("n_X"), value("n_Y"), 0);
  }

  /** The rise of the line per length in plan. */
  public double rise() {
    return value("t");
  }

  /** How far a place lies beyond the line in plan, mm; negative within. */
  public double beyond(Vector place) {
    return place.minus(first.place()).dot(outward());
  }

  /** How high a place lies above the line beside it, mm. */
  public double above(Vector place) {
    Vector arm = place.minus(first.place());
    return arm.z() - rise() * along(arm);
  }

  private double along(Vector arm) {
    // Along the line in plan: the outward direction turned back by a right angle.
    return arm.y() * value("n_X") - arm.x() * value("n_Y");
  }

  double value(String symbol) {
    return values[COMPILED.slot(symbol)];
  }
}
