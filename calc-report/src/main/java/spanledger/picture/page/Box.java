package spanledger.picture.page;

import spanledger.picture.Mark;
import spanledger.picture.Spot;

/** An upright rectangle on the paper. */
public record Box(double left, double top, double right, double bottom) {

  /** Heights of letters above and below their base line, per size. */
  private static final double ABOVE = 0.76;

  private static final double BELOW = 0.24;

  public static Box around(Spot centre, double width, double height) {
    return new Box(
        centre.x() - width / 2,
        centre.y() - height / 2,
        centre.x() + width / 2,
        centre.y() + height / 2);
  }

  /** The room that level words take. */
  public static Box ofWords(Spot at, double width, double size, Mark.Anchor anchor) {
    double left = at.x() - width * before(anchor);
    return new Box(left, at.y() - size * ABOVE, left + width, at.y() + size * BELOW);
  }

  private static double before(Mark.Anchor anchor) {
    return anchor == Mark.Anchor.START ? 0 : anchor == Mark.Anchor.MIDDLE ? 0.5 : 1;
  }

  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  public boolean meets(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  public boolean holds(Spot spot) {
    return spot.x() > left && spot.x() < right && spot.y() > top && spot.y() < bottom;
  }

  public Spot centre() {
    return new Spot((left + right) / 2, (top + bottom) / 2);
  }

  /**
   * How far a line through a place inside runs to the rim.
   *
   * @param dx of its direction
   * @param dy of its direction
   * @return the distances, per the length of the direction: back, then on
   */
  public double[] cut(Spot place, double dx, double dy) {
    double back = Double.NEGATIVE_INFINITY;
    double on = Double.POSITIVE_INFINITY;
    double[][] rims = {
      {left - place.x(), right - place.x(), dx}, {top - place.y(), bottom - place.y(), dy}
    };
    for (double[] rim : rims) {
      if (Math.abs(rim[2]) > 1e-12) {
        double one = rim[0] / rim[2];
        double other = rim[1] / rim[2];
        back = Math.max(back, Math.min(one, other));
        on = Math.min(on, Math.max(one, other));
      }
    }
    return new double[] {back, on};
  }
}
