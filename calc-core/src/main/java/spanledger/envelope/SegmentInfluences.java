package spanledger.envelope;

import java.util.HashMap;
import java.util.Map;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.NodeInfluence;
import spanledger.analysis.SegmentInfluence;
import spanledger.frame.Node;
import spanledger.frame.Segment;

/** What loads on segments do elsewhere, each worked out when first asked for; for one thread. */
final class SegmentInfluences {

  private final FrameAnalysis analysis;
  private final Map<Integer, SegmentInfluence> segments = new HashMap<>();
  private final Map<String, NodeInfluence> nodes = new HashMap<>();

  SegmentInfluences(FrameAnalysis analysis) {
    this.analysis = analysis;
  }

  SegmentInfluence of(Segment segment) {
    return segments.computeIfAbsent(
        segment.index(),
        i -> new SegmentInfluence(analysis, segment, of(segment.first()), of(segment.second())));
  }

  private NodeInfluence of(Node node) {
    return nodes.computeIfAbsent(node.name(), n -> new NodeInfluence(analysis, node));
  }

  /** The nodes asked for so far. */
  Iterable<NodeInfluence> nodes() {
    return nodes.values();
  }
}
