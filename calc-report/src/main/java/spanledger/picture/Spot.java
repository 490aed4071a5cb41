package spanledger.picture;

/**
 * A place on the paper of a drawing.
 *
 * @param x to the right
 * @param y downwards
 */
public record Spot(double x, double y) {

  public Spot plus(double dx, double dy) {
    return new Spot(x + dx, y + dy);
  }

  /** The place at the fraction {@code t} of the way to another. */
  public Spot towards(Spot other, double t) {
    return new Spot(x + (other.x - x) * t, y + (other.y - y) * t);
  }

  public double distance(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
