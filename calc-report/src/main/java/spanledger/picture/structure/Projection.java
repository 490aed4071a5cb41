package spanledger.picture.structure;

import spanledger.frame.Vector;

/**
 * A parallel projection of the structure on to paper.
 *
 * @param right direction that runs to the right on the paper, of length 1
 * @param up direction that runs up on the paper, of length 1, square to {@code right}
 * @param towardsEye direction out of the paper, of length 1, square to both
 */
record Projection(Vector right, Vector up, Vector towardsEye) {

  /** How far round from the south the eye of a general view stands, degrees. */
  private static final double ROUND = 34;

  /** How far above level the eye of a general view stands, degrees. */
  private static final double ABOVE = 24;

  /** From above, X to the right. */
  static Projection plan() {
    return new Projection(new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1));
  }

  /**
   * A level look at the structure.
   *
   * @param towardsEye level direction from the structure to the eye, of length 1
   */
  static Projection level(Vector towardsEye) {
    Vector up = new Vector(0, 0, 1);
    return new Projection(up.cross(towardsEye), up, towardsEye);
  }

  /**
   * From above and beside, upright lines upright.
   *
   * @param fromEast whether the eye stands south-east of the structure; else south-west
   */
  static Projection general(boolean fromEast) {
    double round = Math.toRadians(fromEast ? ROUND : -ROUND);
    double above = Math.toRadians(ABOVE);
    Vector level = new Vector(Math.sin(round), -Math.cos(round), 0);
    Vector right = new Vector(Math.cos(round), Math.sin(round), 0);
    Vector eye = level.times(Math.cos(above)).plus(new Vector(0, 0, Math.sin(above)));
    return new Projection(right, eye.cross(right), eye);
  }

  /** How near to the eye a place is, mm; greater is nearer. */
  double nearness(Vector place) {
    return towardsEye.dot(place);
  }
}
