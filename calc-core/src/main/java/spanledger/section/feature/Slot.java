package spanledger.section.feature;

import java.util.Map;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;
import spanledger.section.outline.Similarity;

/**
 * A slot whose lips hold the head of a bolt or a nut.
 *
 * @param name unique in its extrusion
 * @param mouth middle of the opening, level with the outer faces of the lips, mm
 * @param opens the direction in which it opens, of length 1
 * @param opening least width between the lips, mm
 * @param headWidth greatest width behind the lips, mm
 * @param lip thickness of the lips from the mouth inwards, mm
 * @param headDepth from the inner faces of the lips to the floor, mm
 */
public record Slot(
    String name,
    Point mouth,
    Point opens,
    double opening,
    double headWidth,
    double lip,
    double headDepth)
    implements Feature {

  /** At how many depths the width is measured. */
  private static final int DEPTHS = 400;

  /**
   * Measures the slot at a place of an outline.
   *
   * @throws MissingFeatureException if there is no slot
   */
  public static Slot measured(Outline outline, String name, Point mouth, Point opens) {
    Recess recess = Recess.at(outline, mouth, opens);
    double depth = recess.depth();
    double opening = Double.POSITIVE_INFINITY;
    double at = 0;
    for (int i = 0; i < DEPTHS; i++) {
      double here = depth * (i + 0.5) / DEPTHS;
      double width = recess.widthAt(here);
      if (width < opening - 1e-9) {
        opening = width;
        at = here;
      }
    }
    if (!Double.isFinite(opening)) {
      throw new MissingFeatureException(
          "no walls on both sides of the line from the mouth at " + mouth + " inwards");
    }
    double head = opening;
    double behind = depth;
    for (int i = DEPTHS - 1; depth * (i + 0.5) / DEPTHS > at; i--) {
      head = Math.max(head, finite(recess.widthAt(depth * (i + 0.5) / DEPTHS)));
    }
    double middle = (opening + head) / 2;
    for (int i = DEPTHS - 1; depth * (i + 0.5) / DEPTHS > at; i--) {
      double here = depth * (i + 0.5) / DEPTHS;
      if (recess.widthAt(here) > middle) {
        behind = here;
      }
    }
    if (head < opening * (1 + 1e-6)) {
      throw new MissingFeatureException(
          "a groove of one width, " + opening + " mm; a slot is wider behind its lips");
    }
    double lip = lip(recess, at, behind, middle);
    return new Slot(name, mouth, opens, opening, head, lip, depth - lip);
  }

  private static double finite(double width) {
    return Double.isFinite(width) ? width : 0;
  }

  /** The depth at which the slot widens, by halving. */
  private static double lip(Recess recess, double narrow, double wide, double middle) {
    double from = narrow;
    double to = wide;
    for (int i = 0; i < 60; i++) {
      double half = (from + to) / 2;
      if (recess.widthAt(half) > middle) {
        to = half;
      } else {
        from = half;
      }
    }
    return (from + to) / 2;
  }

  @Override
  public String kind() {
    return "slot";
  }

  @Override
  public Map<String, Double> sizes() {
    return Feature.inOrder(
        "opening", opening, "headWidth", headWidth, "lip", lip, "headDepth", headDepth);
  }

  @Override
  public Slot moved(Similarity similarity) {
    return new Slot(
        name,
        similarity.apply(mouth),
        Directions.moved(opens, similarity),
        opening,
        headWidth,
        lip,
        headDepth);
  }

  /**
   * A hollow that is open to one side.
   *
   * @param outline the outline
   * @param mouth middle of its mouth, mm
   * @param opens the direction in which it opens
   * @param depth from the mouth to the floor, mm
   */
  record Recess(Outline outline, Point mouth, Point opens, double depth) {

    static Recess at(Outline outline, Point mouth, Point opens) {
      if (outline.encloses(mouth)) {
        throw new MissingFeatureException("material at " + mouth + ", where the mouth should be");
      }
      double depth = Ray.toBoundary(outline, mouth, opens.times(-1));
      if (!Double.isFinite(depth)) {
        throw new MissingFeatureException("no floor behind the mouth at " + mouth);
      }
      if (depth < 1e-6) {
        throw new MissingFeatureException("a face at " + mouth + ", where the mouth should be");
      }
      return new Recess(outline, mouth, opens, depth);
    }

    /** Width at a depth below the mouth, mm; infinite if a side is open. */
    double widthAt(double below) {
      Point here = mouth.minus(opens.times(below));
      Point across = opens.quarterTurn();
      return Ray.toBoundary(outline, here, across)
          + Ray.toBoundary(outline, here, across.times(-1));
    }
  }
}
