package spanledger.analysis;

import spanledger.frame.Vector;

/**
 * How well the forces of a solved case balance. All would be zero in exact arithmetic.
 *
 * @param nodeForce the greatest force left over at any node, N
 * @param nodeMoment the greatest moment left over at any node, N·mm
 * @param wholeForce sum of all loads and reactions, N
 * @param wholeMoment sum of their moments about the middle of the frame, N·mm
 * @param forceScale sum of the sizes of all loads, N; a moment counts with the reach of the frame
 *     (from its middle to its farthest node) as its arm
 * @param momentScale {@code forceScale} times that reach, N·mm
 */
public record Equilibrium(
    double nodeForce,
    double nodeMoment,
    Vector wholeForce,
    Vector wholeMoment,
    double forceScale,
    double momentScale) {

  /** The worst force or moment left over at a node, per scale of the loads. */
  public double nodeResidual() {
    return Math.max(share(nodeForce, forceScale), share(nodeMoment, momentScale));
  }

  /** The force or moment left over for the whole frame, per scale of the loads. */
  public double wholeResidual() {
    return Math.max(share(wholeForce.norm(), forceScale), share(wholeMoment.norm(), momentScale));
  }

  /**
   * A case with moments only has no scale for forces: theirs then is that of the moments' couple.
   */
  private static double share(double left, double scale) {
    return left == 0 ? 0 : left / scale;
  }
}
