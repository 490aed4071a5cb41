package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Segment;
import spanledger.state.LoadState;

/** What load cases put on segments, kept by case. */
final class CaseLoads {

  private final FrameAnalysis analysis;
  private final IdentityHashMap<LoadCase, Map<Integer, SegmentResponse>> kept =
      new IdentityHashMap<>();

  CaseLoads(FrameAnalysis analysis) {
    this.analysis = analysis;
  }

  /** The loads of cases on a segment with their factors; its first end bears nothing. */
  SegmentResponse on(Segment segment, List<LoadState.Part> parts) {
    List<SegmentResponse> loaded = new ArrayList<>();
    List<Double> factors = new ArrayList<>();
    for (LoadState.Part part : parts) {
      SegmentResponse own = bySegment(part.loads()).get(segment.index());
      if (own != null) {
        loaded.add(own);
        factors.add(part.factor());
      }
    }
    return loaded.isEmpty()
        ? SegmentResponse.none(analysis, segment)
        : SegmentResponse.sum(loaded, factors.stream().mapToDouble(f -> f).toArray());
  }

  private Map<Integer, SegmentResponse> bySegment(LoadCase loads) {
    Map<Integer, SegmentResponse> known = kept.get(loads);
    if (known == null) {
      Map<Integer, List<SegmentLoad>> grouped = new HashMap<>();
      for (SegmentLoad load : loads.segmentLoads()) {
        grouped.computeIfAbsent(load.segment().index(), i -> new ArrayList<>()).add(load);
      }
      Map<Integer, SegmentResponse> found = new HashMap<>();
      grouped.forEach(
          (index, own) ->
              found.put(
                  index,
                  SegmentResponse.loaded(analysis, analysis.frame().segments().get(index), own)));
      known = found;
      kept.put(loads, found);
    }
    return known;
  }
}
