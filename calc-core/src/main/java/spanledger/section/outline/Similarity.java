package spanledger.section.outline;

/**
 * A move of the plane that keeps shapes: an optional mirroring in the z axis, then a rotation and a
 * scaling about the origin, then a shift.
 *
 * @param mirrored whether y changes its sign first
 * @param angle rotation to the left, rad
 * @param scale factor on lengths, greater than zero
 * @param shift the shift, mm
 */
public record Similarity(boolean mirrored, double angle, double scale, Point shift) {

  private static final Point NOWHERE = new Point(0, 0);

  public Similarity {
    if (!(scale > 0) || !Double.isFinite(scale) || !Double.isFinite(angle) || !shift.isFinite()) {
      throw new IllegalArgumentException(
          "A section can be scaled by a finite factor above zero and moved by finite amounts, found scale "
              + scale
              + ", angle "
              + angle
              + " rad, shift "
              + shift
              + " mm.");
    }
  }

  /** Mirrored in the z axis: y becomes −y. */
  public static Similarity mirrorY() {
    return new Similarity(true, 0, 1, NOWHERE);
  }

  /** Mirrored in the y axis: z becomes −z. */
  public static Similarity mirrorZ() {
    return new Similarity(true, Math.PI, 1, NOWHERE);
  }

  /** Rotated to the left about the origin. */
  public static Similarity rotation(double angle) {
    return new Similarity(false, angle, 1, NOWHERE);
  }

  public static Similarity shift(double dy, double dz) {
    return new Similarity(false, 0, 1, new Point(dy, dz));
  }

  public static Similarity scaling(double factor) {
    return new Similarity(false, 0, factor, NOWHERE);
  }

  /** The image of a point. */
  public Point apply(Point point) {
    double y = scale * (mirrored ? -point.y() : point.y());
    double z = scale * point.z();
    // Quarter turns stay exact.
    double quarters = angle / (Math.PI / 2);
    boolean exact = quarters == Math.rint(quarters);
    double cos = exact ? Math.rint(Math.cos(angle)) : Math.cos(angle);
    double sin = exact ? Math.rint(Math.sin(angle)) : Math.sin(angle);
    return new Point(y * cos - z * sin + shift.y(), y * sin + z * cos + shift.z());
  }
}
