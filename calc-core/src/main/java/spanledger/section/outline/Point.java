package spanledger.section.outline;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A point, or the vector to it, in the plane of a section.
 *
 * @param y to the right in a drawing of the section, mm
 * @param z upwards in a drawing of the section, mm; the member axis x points at the viewer
 */
public record Point(double y, double z) {

  public Point plus(Point other) {
    return new Point(y + other.y, z + other.z);
  }

  public Point minus(Point other) {
    return new Point(y - other.y, z - other.z);
  }

  public Point times(double factor) {
    return new Point(y * factor, z * factor);
  }

  /** Scalar product. */
  public double dot(Point other) {
    return y * other.y + z * other.z;
  }

  /** The product y₁z₂ − z₁y₂: positive when {@code other} lies to the left of this vector. */
  public double cross(Point other) {
    return y * other.z - z * other.y;
  }

  /** This vector turned a quarter turn to the left. */
  public Point quarterTurn() {
    return new Point(-z, y);
  }

  public double length() {
    return Math.hypot(y, z);
  }

  public double distance(Point other) {
    return Math.hypot(y - other.y, z - other.z);
  }

  /** The point between this one and {@code other} at the fraction {@code t} of the way. */
  public Point towards(Point other, double t) {
    return new Point(y + (other.y - y) * t, z + (other.z - z) * t);
  }

  /** The vector of length 1 at the given angle from the y axis, rad. */
  public static Point direction(double angle) {
    return new Point(Math.cos(angle), Math.sin(angle));
  }

  /** Whether both coordinates are finite numbers. */
  public boolean isFinite() {
    return Double.isFinite(y) && Double.isFinite(z);
  }

  /** The coordinates as a reader of a message wants them. */
  @Override
  public String toString() {
    return "(" + readable(y) + ", " + readable(z) + ")";
  }

  private static String readable(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value, new MathContext(6)).stripTrailingZeros().toPlainString()
        : String.valueOf(value);
  }
}
