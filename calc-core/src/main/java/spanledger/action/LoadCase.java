package spanledger.action;

import java.util.List;

/**
 * Loads that act together and take the same factor.
 *
 * @param name unique in its job
 * @param nodalLoads loads on nodes
 * @param segmentLoads loads on segments
 */
public record LoadCase(String name, List<NodalLoad> nodalLoads, List<SegmentLoad> segmentLoads) {
  public LoadCase {
    nodalLoads = List.copyOf(nodalLoads);
    segmentLoads = List.copyOf(segmentLoads);
  }
}
