package spanledger.jointdesign;

import java.util.List;
import java.util.OptionalDouble;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;

/**
 * Distances around the hole of a bolt in a ply, for a force along one axis of the face either way:
 * the lesser of both senses counts, on the safe side. Towards a neighbour in the same row there is
 * no end, and an edge farther away than ten holes is none: the wall goes on.
 *
 * @param end to the nearer end along the force, mm; empty if none is near
 * @param edge to the nearer edge across it, mm; empty if none is near
 * @param pitch to the nearest hole in the same row along the force, mm; empty if there is none
 * @param gauge to the nearest row of holes across the force, mm; empty if there is none
 */
record PlyEdges(
    OptionalDouble end, OptionalDouble edge, OptionalDouble pitch, OptionalDouble gauge) {

  /** From how many holes on an edge is none; common practice, no source. */
  private static final double FAR = 10;

  /**
   * @param alongFirst whether the force acts along the first axis of the face (else the second)
   */
  static PlyEdges of(Ply ply, List<FacePlace> places, int bolt, boolean alongFirst) {
    FacePlace at = places.get(bolt);
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
        toEdge(ply, places, at, alongFirst),
        toEdge(ply, places, at, !alongFirst),
        finite(pitch),
        finite(gauge));
  }

  /**
   * The distance of holes across the force for which the least one is asked. A hole that is
   * staggered by a hole or more counts with the lesser of twice its distance across and its whole
   * distance: EN 1999-1-1, Table 8.2 lets 1.2 d_0 pass across where holes are 2.4 d_0 apart (from
   * memory, in the form of EN 1993-1-8, Table 3.3).
   */
  static OptionalDouble apart(Ply ply, List<FacePlace> places, int bolt, boolean alongFirst) {
    FacePlace at = places.get(bolt);
    double least = Double.POSITIVE_INFINITY;
    for (FacePlace other : places) {
      double a = Math.abs(other.a() - at.a());
      double b = Math.abs(other.b() - at.b());
      double along = alongFirst ? a : b;
      double across = alongFirst ? b : a;
      if (across >= ply.hole()) {
        double counts =
            along < ply.hole() ? across : Math.min(2 * across, Math.hypot(along, across));
        least = Math.min(least, counts);
      }
    }
    return finite(least);
  }

  /** To the nearer edge along an axis that no other hole of the row hides. */
  private static OptionalDouble toEdge(
      Ply ply, List<FacePlace> places, FacePlace at, boolean first) {
    double own = first ? at.a() : at.b();
    double low = own - (first ? ply.from().a() : ply.from().b());
    double high = (first ? ply.to().a() : ply.to().b()) - own;
    for (FacePlace other : places) {
      double along = (first ? other.a() : other.b()) - own;
      double across = first ? other.b() - at.b() : other.a() - at.a();
      if (Math.abs(across) < ply.hole()) {
        low = along < 0 ? Double.POSITIVE_INFINITY : low;
        high = along > 0 ? Double.POSITIVE_INFINITY : high;
      }
    }
    double nearest = Math.min(low, high);
    return nearest > FAR * ply.hole() ? OptionalDouble.empty() : OptionalDouble.of(nearest);
  }

  private static OptionalDouble finite(double distance) {
    return Double.isFinite(distance) ? OptionalDouble.of(distance) : OptionalDouble.empty();
  }
}
