package spanledger.section.outline;

import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Moments of third order about the centroid, by Gauss points along the boundary: exact for straight
 * edges, to 14 digits for arcs.
 *
 * @param alongY ∫y(y² + z²) dA, mm⁵
 * @param alongZ ∫z(y² + z²) dA, mm⁵
 */
public record CubicMoments(double alongY, double alongZ) {

  private static final int GAUSS_POINTS = 8;
  private static final double LARGEST_TURN = Math.PI / 8;

  static CubicMoments about(Point centroid, List<Edge> edges) {
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(GAUSS_POINTS, 0, 1);
    double alongY = 0;
    double alongZ = 0;
    for (Edge edge : edges) {
      int parts = (int) Math.max(1, Math.ceil(Math.abs(edge.sweep()) / LARGEST_TURN));
      double speed = edge.length() / parts;
      for (int i = 0; i < parts; i++) {
        for (int g = 0; g < GAUSS_POINTS; g++) {
          double t = (i + gauss.getPoint(g)) / parts;
          Point at = edge.at(t).minus(centroid);
          Point step = edge.tangent(t).times(speed * gauss.getWeight(g));
          double y = at.y();
          double z = at.z();
          // Green: ∮(y⁴/4 + y²z²/2) dz and −∮(z⁴/4 + y²z²/2) dy
          double mixed = y * y * z * z / 2;
          alongY += (y * y * y * y / 4 + mixed) * step.z();
          alongZ -= (z * z * z * z / 4 + mixed) * step.y();
        }
      }
    }
    return new CubicMoments(alongY, alongZ);
  }
}
