package spanledger.assembly;

import spanledger.frame.Vector;

/**
 * A side of a platform. X runs east along its length, Y runs north across it. Places along the
 * north and south sides are measured from the west, along the east and west sides from the south.
 */
public enum Side {
  NORTH("north"),
  SOUTH("south"),
  EAST("east"),
  WEST("west");

  private final String words;

  Side(String words) {
    this.words = words;
  }

  /** Its name in job files and in names of members. */
  public String words() {
    return words;
  }

  /** Level direction away from the floor, of length 1. */
  public Vector outward() {
    return switch (this) {
      case NORTH -> new Vector(0, 1, 0);
      case SOUTH -> new Vector(0, -1, 0);
      case EAST -> new Vector(1, 0, 0);
      case WEST -> new Vector(-1, 0, 0);
    };
  }

  /** The direction in which places along it are measured, of length 1. */
  public Vector along() {
    return isLong() ? new Vector(1, 0, 0) : new Vector(0, 1, 0);
  }

  /** Whether it runs along the platform's length. */
  public boolean isLong() {
    return this == NORTH || this == SOUTH;
  }

  /** The side across the platform. */
  public Side opposite() {
    return switch (this) {
      case NORTH -> SOUTH;
      case SOUTH -> NORTH;
      case EAST -> WEST;
      case WEST -> EAST;
    };
  }
}
