package spanledger.section.feature;

import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/** Directions after a move. */
final class Directions {

  private static final Point ORIGIN = new Point(0, 0);

  private Directions() {}

  static Point moved(Point direction, Similarity similarity) {
    Point image = similarity.apply(direction).minus(similarity.apply(ORIGIN));
    return image.times(1 / image.length());
  }
}
