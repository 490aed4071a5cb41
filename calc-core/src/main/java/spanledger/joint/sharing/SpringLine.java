package spanledger.joint.sharing;

/** A spring on a rigid body of three freedoms. */
final class SpringLine {

  private final double[] direction;
  private final double stiffness;
  private final boolean oneWay;
  private final double gap;

  /**
   * @param direction its stretch per unit of each freedom; not modified
   * @param stiffness force per stretch
   * @param oneWay whether it resists only stretch beyond the gap; else any stretch, without gap
   * @param gap stretch before it resists
   */
  SpringLine(double[] direction, double stiffness, boolean oneWay, double gap) {
    this.direction = direction.clone();
    this.stiffness = stiffness;
    this.oneWay = oneWay;
    this.gap = gap;
  }

  /** Stretch per unit of a freedom. */
  double along(int freedom) {
    return direction[freedom];
  }

  double stiffness() {
    return stiffness;
  }

  boolean oneWay() {
    return oneWay;
  }

  /** The same with each freedom counted in another unit. */
  SpringLine inUnits(double[] units) {
    double[] scaled = direction.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] /= units[i];
    }
    return new SpringLine(scaled, stiffness, oneWay, gap);
  }

  double stretch(double[] movement) {
    return direction[0] * movement[0] + direction[1] * movement[1] + direction[2] * movement[2];
  }

  boolean acts(double stretch) {
    return !oneWay || stretch > gap;
  }

  double force(double stretch) {
    return oneWay ? stiffness * Math.max(0, stretch - gap) : stiffness * stretch;
  }

  double startsAt() {
    return oneWay ? gap : 0;
  }
}
