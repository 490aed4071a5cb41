package spanledger.analysis;

import java.nio.DoubleBuffer;
import java.util.HashMap;
import java.util.Map;

/** Gives segments that are alike the same matrices; for one thread. */
final class AlikeSegments {

  private final Map<DoubleBuffer, SegmentMatrices> known = new HashMap<>();

  SegmentMatrices matrices(double[] geometry, double[] stiffness) {
    DoubleBuffer key = DoubleBuffer.wrap(SegmentMatrices.key(geometry, stiffness));
    return known.computeIfAbsent(key, same -> new SegmentMatrices(geometry, stiffness));
  }
}
