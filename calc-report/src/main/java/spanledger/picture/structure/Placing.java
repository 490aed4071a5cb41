package spanledger.picture.structure;

import java.util.Collection;
import spanledger.frame.Vector;
import spanledger.picture.Spot;
import spanledger.picture.page.Box;

/**
 * Where on the paper places of the structure come to lie.
 *
 * @param projection how it is looked at
 * @param scale units of the paper per mm
 * @param left of the paper's origin, added to distances to the right
 * @param base of the paper's origin; distances up are taken off it
 */
record Placing(Projection projection, double scale, double left, double base) {

  /** Units of a drawing per mm of paper: 96 dots per inch. */
  static final double PER_PAPER_MM = 96 / 25.4;

  /** Scales of drawings, mm of the structure per mm of paper. */
  private static final double[] SCALES = {
    1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000
  };

  /** Fills a room, however that scales the structure. */
  static Placing filling(Projection projection, Collection<Vector> places, Box room) {
    Extent extent = Extent.of(projection, places);
    return centred(projection, extent, extent.fitting(room), room);
  }

  /** Fits into a room at a scale that drawings use, if one is small enough. */
  static Placing toScale(Projection projection, Collection<Vector> places, Box room) {
    Extent extent = Extent.of(projection, places);
    double fitting = extent.fitting(room);
    for (double per : SCALES) {
      if (PER_PAPER_MM / per <= fitting) {
        return centred(projection, extent, PER_PAPER_MM / per, room);
      }
    }
    return centred(projection, extent, fitting, room);
  }

  /** In the middle of a room at a given scale. */
  static Placing centred(Projection projection, Extent extent, double scale, Box room) {
    Spot middle = room.centre();
    return new Placing(
        projection,
        scale,
        middle.x() - scale * (extent.left() + extent.right()) / 2,
        middle.y() + scale * (extent.low() + extent.high()) / 2);
  }

  /** Where a place lies on the paper. */
  Spot spot(Vector place) {
    return new Spot(
        left + scale * projection.right().dot(place), base - scale * projection.up().dot(place));
  }

  /** The room on the paper that places take. */
  Box box(Collection<Vector> places) {
    Extent extent = Extent.of(projection, places);
    return new Box(
        left + scale * extent.left(),
        base - scale * extent.high(),
        left + scale * extent.right(),
        base - scale * extent.low());
  }

  /** The scale in words, as drawings print it. */
  String words() {
    return "1:" + Math.round(PER_PAPER_MM / scale);
  }

  /**
   * What places take up when looked at, mm.
   *
   * @param left of the one farthest to the left
   * @param low of the lowest
   * @param right of the one farthest to the right
   * @param high of the highest
   */
  record Extent(double left, double low, double right, double high) {

    static Extent of(Projection projection, Collection<Vector> places) {
      double left = Double.POSITIVE_INFINITY;
      double low = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (Vector place : places) {
        double u = projection.right().dot(place);
        double v = projection.up().dot(place);
        left = Math.min(left, u);
        right = Math.max(right, u);
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
      return new Extent(left, low, right, high);
    }

    double width() {
      return right - left;
    }

    double height() {
      return high - low;
    }

    /** The scale that fills a room. */
    double fitting(Box room) {
      return Math.min(
          (room.right() - room.left()) / Math.max(width(), 1),
          (room.bottom() - room.top()) / Math.max(height(), 1));
    }
  }
}
