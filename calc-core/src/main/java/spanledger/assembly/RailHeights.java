package spanledger.assembly;

import java.util.List;

/** Whether the rails of a guardrail lie above each other. */
final class RailHeights {

  /** Rails of one guardrail are no nearer than this, mm. Common practice, no source. */
  private static final double LEAST_APART = 20;

  private RailHeights() {}

  /**
   * Reports rails that do not rise from the lowest to the top.
   *
   * @param lowest the height above which the first rail must be, mm
   */
  static void check(
      double lowest, List<Guardrail.MiddleRail> middleRails, double top, Problems.At at) {
    double below = lowest;
    for (Guardrail.MiddleRail middle : middleRails) {
      check(below, middle.height(), at);
      below = middle.height();
    }
    check(below, top, at);
  }

  private static void check(double below, double height, Problems.At at) {
    if (height < below + LEAST_APART) {
      at.add(
          "a rail at " + Problems.mm(height) + " over what is at " + Problems.mm(below),
          "floor, toe-board, middle rails and top rail in rising order, at least "
              + Problems.mm(LEAST_APART)
              + " apart: here from "
              + Problems.mm(below + LEAST_APART)
              + " on",
          "correct the heights");
    }
  }
}
