package spanledger.action;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The distance between two nodes measured across a floor, along the side from corner A to corner B.
 *
 * <p>Inputs: X_P .. Z_P, X_Q .. Z_Q, X_A .. Z_A, X_B .. Z_B; steps L_AB and d.
 */
public final class DistanceAcross {

  private static final Source GEOMETRY = Source.derived("Coordinate geometry");
  private static final String[] AXES = {"X", "Y", "Z"};

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private DistanceAcross() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("distance-across", "Distance across a floor");
    Reference[] from = point(p, "P", "from");
    Reference[] to = point(p, "Q", "to");
    Reference[] a = point(p, "A", "corner A");
    Reference[] b = point(p, "B", "corner B");
    Reference side =
        p.step("L_AB", "side across the floor", Dimension.LENGTH, sqrt(dot(b, a, b, a)), GEOMETRY);
    p.step("d", "distance across", Dimension.LENGTH, abs(dot(to, from, b, a)).over(side), GEOMETRY);
    return p.build();
  }

  private static Reference[] point(Procedure.Builder p, String name, String words) {
    Reference[] point = new Reference[AXES.length];
    for (int i = 0; i < point.length; i++) {
      point[i] = p.input(AXES[i] + "_" + name, AXES[i] + " of " + words, Dimension.LENGTH);
    }
    return point;
  }

  /** (p - q) · (r - s). */
  private static Expression dot(Reference[] p, Reference[] q, Reference[] r, Reference[] s) {
    Expression x = p[0].minus(q[0]).times(r[0].minus(s[0]));
    Expression y = p[1].minus(q[1]).times(r[1].minus(s[1]));
    Expression z = p[2].minus(q[2]).times(r[2].minus(s[2]));
    return x.plus(y).plus(z);
  }

  /** The distance, mm. */
  static double between(Node from, Node to, Node a, Node b) {
    double[] slots = COMPILED.newSlots();
    int at = 0;
    for (Node node : new Node[] {from, to, a, b}) {
      Vector place = node.place();
      slots[at++] = place.x();
      slots[at++] = place.y();
      slots[at++] = place.z();
    }
    COMPILED.evaluate(slots);
    COMPILED.requireInDomain(slots);
    return slots[COMPILED.slot("d")];
  }
}
