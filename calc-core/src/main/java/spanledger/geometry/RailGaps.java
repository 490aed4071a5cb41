package spanledger.geometry;

import java.util.List;

/** The gaps of a guardrail. */
final class RailGaps {

  /** What is said of every gap. */
  static final String REMARK = "between centre lines; the free gap is smaller by the rails";

  private RailGaps() {}

  /** The greatest gap from a level up through rails at some heights, mm. */
  static double greatest(double from, List<Double> heights) {
    double below = from;
    double greatest = 0;
    for (double height : heights) {
      greatest = Math.max(greatest, height - below);
      below = height;
    }
    return greatest;
  }
}
