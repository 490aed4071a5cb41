package spanledger.section.feature;

import java.util.Map;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/**
 * A wall that bolts or screws go through or that brackets bear on.
 *
 * @param name unique in its extrusion
 * @param from one end of its midline, mm
 * @param to the other end, mm
 * @param thickness across the middle, mm
 */
public record Web(String name, Point from, Point to, double thickness) implements Feature {

  /**
   * Measures the web between two points of an outline.
   *
   * @throws MissingFeatureException if there is no material between them
   */
  public static Web measured(Outline outline, String name, Point from, Point to) {
    return new Web(name, from, to, Crossing.thickness(outline, from, to));
  }

  /** From end to end, mm. */
  public double depth() {
    return from.distance(to);
  }

  @Override
  public String kind() {
    return "web";
  }

  @Override
  public Map<String, Double> sizes() {
    return Feature.inOrder("depth", depth(), "thickness", thickness);
  }

  @Override
  public Web moved(Similarity similarity) {
    return new Web(name, similarity.apply(from), similarity.apply(to), thickness);
  }
}
