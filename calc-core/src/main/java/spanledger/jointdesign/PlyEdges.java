package spanledger.jointdesign;

import java.util.List;
import java.util.OptionalDouble;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;

/**
 * Distances around the hole of a bolt in a ply, for a force along one axis of the face either way:
 * the lesser of both senses counts, on the safe side.
 *
 * @param end to the nearer end along the force, mm
 * @param edge to the nearer edge across it, mm
 * @param pitch to the nearest hole in the same row along the force, mm; empty if there is none
 * @param gauge to the nearest row of holes across the force, mm; empty if there is none
 */
record PlyEdges(double end, double edge, OptionalDouble pitch, OptionalDouble gauge) {

  /**
   * @param alongFirst whether the force acts along the first axis of the face (else the second)
   */
  static PlyEdges of(Ply ply, List<FacePlace> places, int bolt, boolean alongFirst) {
    FacePlace at = places.get(bolt);
    double endA = Math.min(at.a() - ply.from().a(), ply.to().a() - at.a());
    double endB = Math.min(at.b() - ply.from().b(), ply.to().b() - at.b());
    double pitch = Double.POSITIVE_INFINITY;
    double gauge = Double.POSITIVE_INFINITY;
    for (FacePlace other : places) {
      double a = Math.abs(other.a() - at.a());
      double b = Math.abs(other.b() - at.b());
      double along = alongFirst ? a : b;
      double across = alongFirst ? b : a;
      // Holes less than a hole apart across the force are in one row.
      if (along > 0 && across < ply.hole()) {
        pitch = Math.min(pitch, along);
      } else if (across >= ply.hole()) {
        gauge = Math.min(gauge, across);
      }
    }
    return new PlyEdges(
        alongFirst ? endA : endB, alongFirst ? endB : endA, finite(pitch), finite(gauge));
  }

  private static OptionalDouble finite(double distance) {
    return Double.isFinite(distance) ? OptionalDouble.of(distance) : OptionalDouble.empty();
  }
}
