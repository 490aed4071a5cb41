package spanledger.section.feature;

import java.util.Map;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;
import spanledger.section.outline.Similarity;

/**
 * A lip of a slot, a cantilever over its length along the member.
 *
 * @param name unique in its extrusion
 * @param edge its free edge at half of its thickness, mm
 * @param root where it joins the wall that holds it, at half of its thickness, mm
 * @param thickness across the middle, mm
 */
public record SlotLip(String name, Point edge, Point root, double thickness) implements Feature {

  /** How far the edge may be off the boundary, mm. */
  private static final double ON_BOUNDARY = 0.1;

  /**
   * Measures the lip between two points of an outline.
   *
   * @throws MissingFeatureException if there is none, or its edge is elsewhere
   */
  public static SlotLip measured(Outline outline, String name, Point edge, Point root) {
    double thickness = Crossing.thickness(outline, edge, root);
    double off = Ray.offBoundary(outline, edge);
    if (off > ON_BOUNDARY) {
      throw new MissingFeatureException(
          "no edge at " + edge + "; the boundary is " + Math.rint(off * 100) / 100 + " mm away");
    }
    return new SlotLip(name, edge, root, thickness);
  }

  /** From root to edge, mm. */
  public double reach() {
    return edge.distance(root);
  }

  @Override
  public String kind() {
    return "slot lip";
  }

  @Override
  public Map<String, Double> sizes() {
    return Feature.inOrder("reach", reach(), "thickness", thickness);
  }

  @Override
  public SlotLip moved(Similarity similarity) {
    return new SlotLip(name, similarity.apply(edge), similarity.apply(root), thickness);
  }
}
