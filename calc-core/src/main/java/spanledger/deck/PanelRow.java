package spanledger.deck;

import java.util.Optional;

/**
 * One row of a capacity table, in core units.
 *
 * @param span between the lines of support, mm
 * @param uniform load on all of the panel, MPa (N/mm²)
 * @param point load at one place, N
 * @param uniformDeflection deflection under {@code uniform}, mm
 * @param pointDeflection deflection under {@code point}, mm
 */
public record PanelRow(
    double span,
    double uniform,
    Optional<Double> point,
    Optional<Double> uniformDeflection,
    Optional<Double> pointDeflection) {

  boolean hasDeflection() {
    return uniformDeflection.isPresent() || pointDeflection.isPresent();
  }

  /** Whether it has the same cells as another. */
  boolean isLike(PanelRow other) {
    return point.isPresent() == other.point.isPresent()
        && uniformDeflection.isPresent() == other.uniformDeflection.isPresent()
        && pointDeflection.isPresent() == other.pointDeflection.isPresent();
  }
}
