package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Point;

/**
 * Shape functions of the triangle with six nodes at its integration points, moved from one triangle
 * to the next with {@link #enter}.
 *
 * <p>Six points that are exact for polynomials of degree 4. Reference: O. C. Zienkiewicz and R. L.
 * Taylor, The Finite Element Method, numerical integration formulas for triangles.
 */
final class ElementPoints {

  static final int POINTS = 6;
  private static final double A = 0.445948490915965;
  private static final double B = 0.091576213509771;
  private static final double WEIGHT_A = 0.223381589678011;
  private static final double WEIGHT_B = 0.109951743655322;

  /** Area coordinates 2 and 3 of the integration points, then those of the nodes. */
  private static final double[][] PLACES = {
    {A, A},
    {1 - 2 * A, A},
    {A, 1 - 2 * A},
    {B, B},
    {1 - 2 * B, B},
    {B, 1 - 2 * B},
    {0, 0},
    {1, 0},
    {0, 1},
    {0.5, 0},
    {0.5, 0.5},
    {0, 0.5}
  };

  private final SectionMesh mesh;
  private final Point origin;
  private final double[][] shape = new double[PLACES.length][];
  private final double[][] alongR = new double[PLACES.length][];
  private final double[][] alongS = new double[PLACES.length][];
  private final double[] nodeY = new double[6];
  private final double[] nodeZ = new double[6];

  /** Node numbers of the triangle entered. */
  final int[] nodes = new int[6];

  /** Weight times area element of each integration point, mm². */
  final double[] weight = new double[POINTS];

  /** Coordinates from the origin, at integration points, then at nodes, mm. */
  final double[] y = new double[PLACES.length];

  final double[] z = new double[PLACES.length];

  /** Derivatives of the shape functions by y and z: place by place, then node by node. */
  final double[][] dy = new double[PLACES.length][6];

  final double[][] dz = new double[PLACES.length][6];

  /**
   * @param origin where y and z are taken from
   */
  ElementPoints(SectionMesh mesh, Point origin) {
    this.mesh = mesh;
    this.origin = origin;
    for (int p = 0; p < PLACES.length; p++) {
      double r = PLACES[p][0];
      double s = PLACES[p][1];
      double q = 1 - r - s;
      shape[p] =
          new double[] {
            q * (2 * q - 1), r * (2 * r - 1), s * (2 * s - 1), 4 * q * r, 4 * r * s, 4 * s * q
          };
      alongR[p] = new double[] {1 - 4 * q, 4 * r - 1, 0, 4 * (q - r), 4 * s, -4 * s};
      alongS[p] = new double[] {1 - 4 * q, 0, 4 * s - 1, -4 * r, 4 * r, 4 * (q - s)};
    }
  }

  /** The shape function of node k at a place. */
  double shape(int place, int k) {
    return shape[place][k];
  }

  /** Moves to a triangle, with integration points only or with nodes, too. */
  void enter(int triangle, boolean withNodes) {
    for (int k = 0; k < 6; k++) {
      nodes[k] = mesh.node(triangle, k);
      Point at = mesh.node(nodes[k]);
      nodeY[k] = at.y() - origin.y();
      nodeZ[k] = at.z() - origin.z();
    }
    int places = withNodes ? PLACES.length : POINTS;
    for (int p = 0; p < places; p++) {
      double yr = dot(alongR[p], nodeY);
      double ys = dot(alongS[p], nodeY);
      double zr = dot(alongR[p], nodeZ);
      double zs = dot(alongS[p], nodeZ);
      double det = yr * zs - ys * zr;
      if (!(det > 0)) {
        throw new IllegalStateException("Triangle at " + mesh.node(nodes[0]) + " is folded.");
      }
      y[p] = dot(shape[p], nodeY);
      z[p] = dot(shape[p], nodeZ);
      for (int k = 0; k < 6; k++) {
        dy[p][k] = (alongR[p][k] * zs - alongS[p][k] * zr) / det;
        dz[p][k] = (alongS[p][k] * yr - alongR[p][k] * ys) / det;
      }
      if (p < POINTS) {
        weight[p] = det / 2 * (p < 3 ? WEIGHT_A : WEIGHT_B);
      }
    }
  }

  /** The value of a field given at all nodes of the mesh. */
  double value(double[] field, int place) {
    return gather(field, shape[place]);
  }

  /** Its derivative by y. */
  double slopeY(double[] field, int place) {
    return gather(field, dy[place]);
  }

  /** Its derivative by z. */
  double slopeZ(double[] field, int place) {
    return gather(field, dz[place]);
  }

  private double gather(double[] field, double[] factors) {
    double sum = 0;
    for (int k = 0; k < 6; k++) {
      sum += field[nodes[k]] * factors[k];
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < 6; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }
}
