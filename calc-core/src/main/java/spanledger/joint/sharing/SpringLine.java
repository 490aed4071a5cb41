package spanledger.joint.sharing;

/** A spring on a rigid body, or between two. */
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

  /** The same by other freedoms, each of its three written as a row of them. */
  SpringLine through(double[]... rows) {
    double[] all = new double[rows[0].length];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < all.length; j++) {
        all[j] += direction[i] * rows[i][j];
      }
    }
    return new SpringLine(all, stiffness, oneWay, gap);
  }

  /** The same divided. */
  SpringLine softer(double by) {
    return new SpringLine(direction, stiffness / by, oneWay, gap);
  }

  /**
   * The same between two bodies out of several that have as many freedoms each as this has.
   *
   * @param before the body against which it stretches, or -1 for what does not move
   * @param beyond the body that stretches it
   * @param freedoms of all bodies
   */
  SpringLine between(int before, int beyond, int freedoms) {
    double[] all = new double[freedoms];
    int own = direction.length;
    for (int i = 0; i < own; i++) {
      all[own * beyond + i] = direction[i];
      if (before >= 0) {
        all[own * before + i] = -direction[i];
      }
    }
    return new SpringLine(all, stiffness, oneWay, gap);
  }

  double stretch(double[] movement) {
    double sum = 0;
    for (int i = 0; i < direction.length; i++) {
      sum += direction[i] * movement[i];
    }
    return sum;
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
