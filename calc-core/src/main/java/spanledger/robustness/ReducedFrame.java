package spanledger.robustness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.state.LoadState;

/** A frame without one of its members, and its loads without those on that member. */
final class ReducedFrame {

  private final Frame frame;
  private final Map<String, Segment> segments = new HashMap<>();

  ReducedFrame(Frame whole, Member without) {
    List<Member> members =
        whole.members().stream().filter(m -> !m.name().equals(without.name())).toList();
    Set<String> used = new HashSet<>();
    members.forEach(m -> m.nodes().forEach(n -> used.add(n.name())));
    List<Node> nodes = whole.nodes().stream().filter(n -> used.contains(n.name())).toList();
    List<Support> supports =
        whole.supports().stream().filter(s -> used.contains(s.node().name())).toList();
    frame = new Frame(nodes, members, supports);
    frame.segments().forEach(s -> segments.put(s.name(), s));
  }

  Frame frame() {
    return frame;
  }

  /** A state of the whole frame, as it acts on this. */
  LoadState of(LoadState state) {
    List<LoadState.Part> parts = new ArrayList<>();
    for (LoadState.Part part : state.parts()) {
      parts.add(new LoadState.Part(of(part.loads()), part.factor()));
    }
    return new LoadState(state.name(), parts);
  }

  private LoadCase of(LoadCase loads) {
    List<SegmentLoad> own = new ArrayList<>();
    for (SegmentLoad load : loads.segmentLoads()) {
      Optional.ofNullable(segments.get(load.segment().name()))
          .ifPresent(segment -> own.add(moved(load, segment)));
    }
    Set<String> names = new HashSet<>();
    frame.nodes().forEach(n -> names.add(n.name()));
    return new LoadCase(
        loads.name(),
        loads.nodalLoads().stream().filter(l -> names.contains(l.node().name())).toList(),
        own);
  }

  private static SegmentLoad moved(SegmentLoad load, Segment segment) {
    if (load instanceof SegmentLoad.Point p) {
      return new SegmentLoad.Point(segment, p.axes(), p.direction(), p.origin(), p.force(), p.at());
    }
    SegmentLoad.Distributed d = (SegmentLoad.Distributed) load;
    return new SegmentLoad.Distributed(
        segment,
        d.axes(),
        d.direction(),
        d.origin(),
        d.intensityFrom(),
        d.intensityTo(),
        d.from(),
        d.to());
  }
}
