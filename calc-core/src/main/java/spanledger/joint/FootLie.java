package spanledger.joint;

/**
 * How a foot lies on the ground. Its own axes: u square to the ground, upwards; v along its first
 * side, which is X on level ground if it is not turned; w along its second side, right-handed.
 *
 * @param turn about u, from X towards Y, rad
 * @param slope of the ground, from level, rad; 0 or more
 * @param falls the level direction in which the ground falls, from X towards Y, rad; of no account
 *     on level ground
 */
public record FootLie(double turn, double slope, double falls) {

  /** Level, with its sides along X and Y. */
  public static final FootLie LEVEL = new FootLie(0, 0, 0);

  /**
   * @throws IllegalArgumentException if the slope is no angle from 0 to less than upright
   */
  public FootLie {
    if (!(slope >= 0) || !(slope < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "Ground slopes from 0 to less than 90 deg, found " + Math.toDegrees(slope) + " deg.");
    }
  }
}
