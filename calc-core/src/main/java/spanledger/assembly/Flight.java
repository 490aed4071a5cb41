package spanledger.assembly;

import java.util.Optional;
import spanledger.frame.Vector;

/**
 * A flight of stairs between the floors that it joins.
 *
 * @param stair the flight
 * @param upper the platform that it leads up to
 * @param lower the platform from which it rises, if it does not stand on the ground
 * @param totalRise from its foot to the upper floor, mm
 * @param going the level distance from nosing to nosing, mm
 */
public record Flight(
    Stair stair, Platform upper, Optional<Platform> lower, double totalRise, double going) {

  /** The name of the floor that stands for it where floors are loaded. */
  public String floorName() {
    return stair.name() + "/flight";
  }

  /** One rise, mm. */
  public double rise() {
    return totalRise / stair.rises();
  }

  /** The level length of the line through the nosings from foot to floor, mm. */
  public double run() {
    return stair.rises() * going;
  }

  /** The direction in which one goes up, level, of length 1. */
  Vector climbing() {
    return stair.side().opposite().outward();
  }

  /** The left side of one who goes up, of length 1. */
  Vector left() {
    Vector up = climbing();
    return new Vector(0 - up.y(), up.x() + 0, 0);
  }

  /** The place of the left or right stringer along the upper side, mm. */
  double along(boolean onLeft) {
    boolean far = left().dot(stair.side().along()) > 0 == onLeft;
    return stair.offset() + (far ? stair.width() : 0);
  }

  /** The upper end of a stringer, global, mm. */
  Vector head(boolean onLeft) {
    return upper.onSide(stair.side(), along(onLeft));
  }

  /** A point of the line through the nosings, global, mm; 0 is the foot, 1 the head. */
  Vector at(boolean onLeft, double fraction) {
    Vector down = new Vector(0, 0, -totalRise);
    return head(onLeft)
        .plus(stair.side().outward().times(run() * (1 - fraction)))
        .plus(down.times(1 - fraction));
  }

  /** The foot of a stringer along the facing side of the lower platform, mm. */
  double alongLower(Platform platform, boolean onLeft) {
    Vector begin = platform.onSide(stair.side().opposite(), 0);
    return at(onLeft, 0).minus(begin).dot(stair.side().along());
  }
}
