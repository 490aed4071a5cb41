package spanledger.section;

import java.util.List;

/**
 * Shear flow along wall midlines by numerical integration, for sections cut open where the flow is
 * zero. Independent of the closed formulas under test.
 */
final class ShearFlow {

  private static final int PANELS = 400;

  /**
   * A straight wall that the flow runs along.
   *
   * @param from distance of its start from the bending axis, mm
   * @param to distance of its end from the bending axis, mm
   * @param length mm
   * @param thickness mm
   * @param feeds the walls whose flow runs into its start
   */
  record Wall(double from, double to, double length, double thickness, List<Wall> feeds) {

    private double distance(double share) {
      return from + (to - from) * share;
    }

    /** First moment of everything up to a share of the length. */
    double firstMoment(double share) {
      double before = feeds.stream().mapToDouble(w -> w.firstMoment(1)).sum();
      return before + thickness * length * share * (distance(0) + distance(share)) / 2;
    }

    double inertia() {
      double own = thickness * length * (from * from + from * to + to * to) / 3;
      return own + feeds.stream().mapToDouble(Wall::inertia).sum();
    }

    double energy() {
      double sum = 0;
      for (int i = 0; i <= PANELS; i++) {
        double weight = i == 0 || i == PANELS ? 1 : i % 2 == 1 ? 4 : 2;
        double s = firstMoment((double) i / PANELS);
        sum += weight * s * s / thickness;
      }
      return sum * length / PANELS / 3 + feeds.stream().mapToDouble(Wall::energy).sum();
    }

    double greatest() {
      double greatest = feeds.stream().mapToDouble(Wall::greatest).max().orElse(0);
      for (int i = 0; i <= PANELS; i++) {
        greatest = Math.max(greatest, Math.abs(firstMoment((double) i / PANELS)) / thickness);
      }
      return greatest;
    }
  }

  private ShearFlow() {}

  static Wall wall(double from, double to, double length, double thickness, Wall... feeds) {
    return new Wall(from, to, length, thickness, List.of(feeds));
  }

  /** I²/∫(S²/t)ds of so many like walls. */
  static double effectiveArea(Wall last, int copies) {
    double inertia = last.inertia() * copies;
    return inertia * inertia / (last.energy() * copies);
  }

  /** I/max(S/t) of so many like walls. */
  static double peakArea(Wall last, int copies) {
    return last.inertia() * copies / last.greatest();
  }
}
