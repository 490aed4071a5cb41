package spanledger.resistance.member;

import spanledger.section.outline.Point;

/**
 * The axes that a section's properties are about.
 *
 * @param centroid in the coordinates of the drawing, mm
 * @param angle from the drawing's y to the principal y, towards z, rad
 */
record PrincipalAxes(Point centroid, double angle) {

  /** A point of the drawing in principal axes. */
  Point of(Point drawn) {
    return turned(drawn.minus(centroid));
  }

  /** A vector of the drawing in principal axes. */
  Point turned(Point vector) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Point(cos * vector.y() + sin * vector.z(), -sin * vector.y() + cos * vector.z());
  }
}
