package spanledger.section.feature;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;
import spanledger.section.outline.Similarity;

/**
 * A flat outer face against which a bracket lies, with a groove for its key if there is one.
 *
 * @param name unique in its extrusion
 * @param from one end of the face, mm
 * @param to the other end, mm
 * @param outward the direction away from the material, of length 1
 * @param groove the groove for the key
 */
public record KeyedFace(
    String name, Point from, Point to, Point outward, Optional<KeyGroove> groove)
    implements Feature {

  /** How far the ends may be off the boundary, mm. */
  private static final double ON_BOUNDARY = 0.05;

  /**
   * Measures the face between two points of an outline.
   *
   * @param keyAt middle of the groove's mouth, mm; empty if there is none
   * @throws MissingFeatureException if there is no face or no groove
   */
  public static KeyedFace measured(
      Outline outline, String name, Point from, Point to, Optional<Point> keyAt) {
    for (Point end : new Point[] {from, to}) {
      double off = Ray.offBoundary(outline, end);
      if (off > ON_BOUNDARY) {
        throw new MissingFeatureException(
            "no face at " + end + "; the boundary is " + Math.rint(off * 100) / 100 + " mm away");
      }
    }
    Point outward = outward(outline, from, to);
    return new KeyedFace(
        name, from, to, outward, keyAt.map(at -> KeyGroove.measured(outline, at, outward)));
  }

  private static Point outward(Outline outline, Point from, Point to) {
    if (from.equals(to)) {
      throw new MissingFeatureException("both ends at " + from);
    }
    Point across = to.minus(from).quarterTurn().times(1 / from.distance(to));
    double probe = 0.02 * from.distance(to);
    for (double at : new double[] {0.05, 0.95}) {
      Point here = from.towards(to, at);
      boolean left = outline.encloses(here.plus(across.times(probe)));
      boolean right = outline.encloses(here.minus(across.times(probe)));
      if (left != right) {
        return left ? across.times(-1) : across;
      }
    }
    throw new MissingFeatureException(
        "no face from " + from + " to " + to + ": material on both sides, or on none");
  }

  /** From end to end, mm. */
  public double width() {
    return from.distance(to);
  }

  @Override
  public String kind() {
    return "keyed face";
  }

  @Override
  public Map<String, Double> sizes() {
    Map<String, Double> sizes = new LinkedHashMap<>();
    sizes.put("width", width());
    groove.ifPresent(
        g -> {
          sizes.put("keyWidth", g.width());
          sizes.put("keyDepth", g.depth());
        });
    return sizes;
  }

  @Override
  public KeyedFace moved(Similarity similarity) {
    return new KeyedFace(
        name,
        similarity.apply(from),
        similarity.apply(to),
        Directions.moved(outward, similarity),
        groove.map(g -> new KeyGroove(similarity.apply(g.at()), g.width(), g.depth())));
  }
}
