package spanledger.frame;

/**
 * A place, an arrow or a direction in global axes: X and Y level, Z up.
 *
 * @param x component along global X; mm for places and offsets, 1 for directions
 * @param y component along global Y
 * @param z component along global Z
 */
public record Vector(double x, double y, double z) {

  /** The null vector. */
  public static final Vector ZERO = new Vector(0, 0, 0);

  /** Straight down. */
  public static final Vector DOWN = new Vector(0, 0, -1);

  public Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y, z + other.z);
  }

  public Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y, z - other.z);
  }

  public Vector times(double factor) {
    return new Vector(factor * x, factor * y, factor * z);
  }

  public double dot(Vector other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vector cross(Vector other) {
    return new Vector(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** The length. */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /**
   * The direction of this.
   *
   * @throws IllegalArgumentException for the null vector
   */
  public Vector unit() {
    double length = norm();
    if (length == 0) {
      throw new IllegalArgumentException("The null vector has no direction.");
    }
    return times(1 / length);
  }
}
