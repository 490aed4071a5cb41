package spanledger.picture.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Point;

/**
 * A field on plain triangles that are finer than those of the mesh, so that what is curved over one
 * triangle looks curved.
 */
final class FieldSamples {

  private final SectionMesh mesh;
  private final int fineness;
  private final List<Point> places = new ArrayList<>();
  private final List<double[]> weights = new ArrayList<>();
  private final List<int[]> nodes = new ArrayList<>();
  private final List<int[]> triangles = new ArrayList<>();

  /** A place on the side of triangles: steps from the corner of lower number. */
  private record OnSide(int low, int high, int steps) {}

  /** The values of a field at the six nodes of a triangle, and how they are weighted. */
  static final class At {
    private final int[] nodes;
    private final double[] weights;

    private At(int[] nodes, double[] weights) {
      this.nodes = nodes;
      this.weights = weights;
    }

    /** The field interpolated. */
    double of(IntToDoubleFunction field) {
      double sum = 0;
      for (int k = 0; k < weights.length; k++) {
        sum += weights[k] * field.applyAsDouble(nodes[k]);
      }
      return sum;
    }
  }

  /**
   * Cuts each side of a triangle.
   *
   * @param fineness into how many pieces
   */
  FieldSamples(SectionMesh mesh, int fineness) {
    this.mesh = mesh;
    this.fineness = fineness;
    Map<OnSide, Integer> known = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int[] own = new int[6];
      for (int k = 0; k < 6; k++) {
        own[k] = mesh.node(t, k);
      }
      cut(own, known);
    }
  }

  private void cut(int[] own, Map<OnSide, Integer> known) {
    int n = fineness;
    int[][] number = new int[n + 1][n + 1];
    for (int i = 0; i <= n; i++) {
      for (int j = 0; i + j <= n; j++) {
        int second = i;
        int third = j;
        OnSide side = side(own, i, j);
        number[i][j] =
            side == null
                ? place(own, second, third)
                : known.computeIfAbsent(side, s -> place(own, second, third));
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; i + j < n; j++) {
        triangles.add(new int[] {number[i][j], number[i + 1][j], number[i][j + 1]});
        if (i + j < n - 1) {
          triangles.add(new int[] {number[i + 1][j], number[i + 1][j + 1], number[i][j + 1]});
        }
      }
    }
  }

  private @Nullable OnSide side(int[] own, int second, int third) {
    if (third == 0) {
      return onSide(own[0], own[1], second);
    } else if (second == 0) {
      return onSide(own[0], own[2], third);
    }
    return second + third == fineness ? onSide(own[1], own[2], third) : null;
  }

  private OnSide onSide(int from, int to, int steps) {
    if (steps == 0 || steps == fineness) {
      int corner = steps == 0 ? from : to;
      return new OnSide(corner, corner, 0);
    }
    return from < to ? new OnSide(from, to, steps) : new OnSide(to, from, fineness - steps);
  }

  private int place(int[] own, int second, int third) {
    double b = (double) second / fineness;
    double c = (double) third / fineness;
    double a = 1 - b - c;
    double[] weight = {
      a * (2 * a - 1), b * (2 * b - 1), c * (2 * c - 1), 4 * a * b, 4 * b * c, 4 * c * a
    };
    Point at = new Point(0, 0);
    for (int k = 0; k < 6; k++) {
      at = at.plus(mesh.node(own[k]).times(weight[k]));
    }
    places.add(at);
    weights.add(weight);
    nodes.add(own);
    return places.size() - 1;
  }

  /** The field at each place. */
  double[] values(ToDoubleFunction<At> field) {
    double[] values = new double[places.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = field.applyAsDouble(new At(nodes.get(i), weights.get(i)));
    }
    return values;
  }

  Point place(int number) {
    return places.get(number);
  }

  List<int[]> triangles() {
    return triangles;
  }
}
