package spanledger.resistance;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * How far a point of a segment moves along a global direction.
 *
 * <p>Inputs: x, L, the direction D_X .. D_Z, the segment's y and z cosines, arms, node movements
 * (as in {@code basic-deformations}), and the deflections d_y, d_z from the chord. Step δ.
 */
public final class PointDisplacement {

  private static final Source STATICS =
      Source.derived("Geometry of small movements (docs/theory/frame.md)");
  private static final String[] GLOBAL = {"X", "Y", "Z"};

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PointDisplacement() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("point-displacement", "Movement of a point of a member");
    Reference x = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference[] direction = new Reference[3];
    for (int i = 0; i < 3; i++) {
      direction[i] = p.input("D_" + GLOBAL[i], "direction along " + GLOBAL[i], Dimension.NONE);
    }
    Reference[] y = cosines(p, "y");
    Reference[] z = cosines(p, "z");
    Reference[][] arm = new Reference[2][];
    Reference[][] shift = new Reference[2][];
    Reference[][] turn = new Reference[2][];
    for (int end = 0; end < 2; end++) {
      arm[end] = perNode(p, "a_", "arm", end, Dimension.LENGTH);
    }
    for (int end = 0; end < 2; end++) {
      shift[end] = perNode(p, "u_", "shift", end, Dimension.LENGTH);
      turn[end] = perNode(p, "φ_", "turn", end, Dimension.NONE);
    }
    Reference dy = p.input("d_y", "deflection from the chord along y", Dimension.LENGTH);
    Reference dz = p.input("d_z", "deflection from the chord along z", Dimension.LENGTH);
    Reference first = end(p, 1, direction, shift[0], turn[0], arm[0]);
    Reference second = end(p, 2, direction, shift[1], turn[1], arm[1]);
    Reference own =
        p.step(
            "δ_c",
            "movement from the chord",
            Dimension.LENGTH,
            dot(direction, y).times(dy).plus(dot(direction, z).times(dz)),
            STATICS);
    p.step(
        "δ",
        "movement of the point",
        Dimension.LENGTH,
        first.plus(second.minus(first).times(x).over(length)).plus(own),
        STATICS);
    return p.build();
  }

  private static Reference[] cosines(Procedure.Builder p, String axis) {
    Reference[] cosines = new Reference[3];
    for (int i = 0; i < 3; i++) {
      cosines[i] =
          p.input(
              axis + "_" + GLOBAL[i],
              "cosine between " + axis + " and global " + GLOBAL[i],
              Dimension.NONE);
    }
    return cosines;
  }

  private static Reference[] perNode(
      Procedure.Builder p, String symbol, String words, int end, Dimension dimension) {
    Reference[] values = new Reference[3];
    for (int i = 0; i < 3; i++) {
      values[i] =
          p.input(
              symbol + GLOBAL[i] + (end + 1),
              words + " at node " + (end + 1) + ", " + GLOBAL[i],
              dimension);
    }
    return values;
  }

  private static Reference end(
      Procedure.Builder p,
      int number,
      Reference[] direction,
      Reference[] shift,
      Reference[] turn,
      Reference[] arm) {
    Expression sum = null;
    for (int i = 0; i < 3; i++) {
      int next = (i + 1) % 3;
      int last = (i + 2) % 3;
      Expression moved =
          shift[i].plus(turn[next].times(arm[last])).minus(turn[last].times(arm[next]));
      Expression part = direction[i].times(moved);
      sum = sum == null ? part : sum.plus(part);
    }
    if (sum == null) {
      throw new IllegalStateException("A direction has three components.");
    }
    return p.step(
        "δ_" + number, "movement of member end " + number, Dimension.LENGTH, sum, STATICS);
  }

  private static Expression dot(Reference[] a, Reference[] b) {
    return a[0].times(b[0]).plus(a[1].times(b[1])).plus(a[2].times(b[2]));
  }
}
