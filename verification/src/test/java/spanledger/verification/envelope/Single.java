package spanledger.verification.envelope;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.envelope.Instance;
import spanledger.frame.Vector;

/** A combination as one load case: every load times its factor. */
final class Single {

  private final List<NodalLoad> onNodes = new ArrayList<>();
  private final List<SegmentLoad> onSegments = new ArrayList<>();

  private Single() {}

  /** The combination with its moving load, if it has one, where it stands. */
  static LoadCase of(String name, Instance instance) {
    Combination combination = instance.combination();
    Single single = new Single();
    for (Combination.Term term : instance.terms()) {
      single.add(term.loadCase(), combination.factor(term));
    }
    instance
        .standing()
        .ifPresent(
            standing ->
                single.add(
                    new LoadCase("placed", List.of(), standing.placed()),
                    combination.factor(combination.moving().orElseThrow())));
    return new LoadCase(name, single.onNodes, single.onSegments);
  }

  private void add(LoadCase loads, double factor) {
    for (NodalLoad load : loads.nodalLoads()) {
      onNodes.add(
          new NodalLoad(
              load.node(), times(load.force(), factor), times(load.moment(), factor), load.what()));
    }
    for (SegmentLoad load : loads.segmentLoads()) {
      onSegments.add(times(load, factor));
    }
  }

  private static SegmentLoad times(SegmentLoad load, double factor) {
    if (load instanceof SegmentLoad.Point p) {
      return new SegmentLoad.Point(
          p.segment(), p.axes(), p.direction(), p.origin(), factor * p.force(), p.at());
    }
    SegmentLoad.Distributed d = (SegmentLoad.Distributed) load;
    return new SegmentLoad.Distributed(
        d.segment(),
        d.axes(),
        d.direction(),
        d.origin(),
        factor * d.intensityFrom(),
        factor * d.intensityTo(),
        d.from(),
        d.to());
  }

  private static Vector times(Vector v, double factor) {
    return new Vector(factor * v.x(), factor * v.y(), factor * v.z());
  }
}
