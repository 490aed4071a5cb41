package spanledger.envelope;

import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.Combination;
import spanledger.action.MovingLoad;
import spanledger.analysis.LocalLoad;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.WeightedLoad;
import spanledger.frame.Frame;
import spanledger.frame.Segment;

/**
 * Ranks places of moving loads for a deflection: what the fixed part gives plus what the load alone
 * gives, at the ends and middles of the member's segments and, on a loaded segment, under the load.
 */
final class DeflectionBounds {

  private static final double[] CUTS = {0.5, 1};
  private static final int ENDS = SegmentModel.ENDS;

  /** The frame under a load alone, at one place. */
  @SuppressWarnings("ArrayRecordComponent") // shared, never handed out or changed
  private record Alone(
      Segment loaded, double at, double[] movements, double[] endForces, List<WeightedLoad> own) {

    @Override
    public boolean equals(Object other) {
      return this == other;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(this);
    }
  }

  private final Responses responses;
  private final Frame frame;
  private final MemberDeflection deflection;
  private final LanePlaces places;
  private final Map<String, Alone[][]> alone = new HashMap<>();
  private final Map<String, double[][]> byTarget = new HashMap<>();
  private final IdentityHashMap<CombinedState, Map<String, Double>> fixed = new IdentityHashMap<>();

  DeflectionBounds(Responses responses, MemberDeflection deflection, LanePlaces places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.deflection = deflection;
    this.places = places;
  }

  /** Adds the places of a combination's moving load that may govern the target. */
  void addTo(Collection<Candidate> candidates, DeflectionTarget target, CombinedState state) {
    Combination.MovingTerm term = state.combination().moving().orElseThrow();
    double factor = Math.abs(state.combination().factor(term));
    double base =
        fixed
            .computeIfAbsent(state, s -> new HashMap<>())
            .computeIfAbsent(key(target), k -> ofFixed(target, state));
    double[][] moving =
        byTarget.computeIfAbsent(
            term.load().name() + "|" + key(target), k -> ofMoving(target, term.load()));
    for (int lane = 0; lane < moving.length; lane++) {
      for (int place = 0; place <= places.last(); place++) {
        double bound = base + factor * moving[lane][place];
        if (bound >= DeflectionSearch.NEAR * target.worst()) {
          candidates.add(new Candidate(state, term.load().lanes().get(lane), place, bound));
        }
      }
    }
  }

  private static String key(DeflectionTarget target) {
    return target.member().name() + "|" + target.kind() + "|" + target.direction();
  }

  private double ofFixed(DeflectionTarget target, CombinedState state) {
    double worst = 0;
    for (Segment segment : frame.segmentsOf(target.member())) {
      double length = responses.analysis().model(segment).length();
      for (double part : CUTS) {
        worst =
            Math.max(
                worst,
                Math.abs(
                    deflection.at(
                        target,
                        segment,
                        part * length,
                        state.movements(),
                        state.endForces(),
                        state.loads().get(segment.index()))));
      }
    }
    return worst;
  }

  private double[][] ofMoving(DeflectionTarget target, MovingLoad load) {
    Alone[][] tried = alone.computeIfAbsent(load.name(), n -> alone(load));
    double[][] worst = new double[tried.length][places.last() + 1];
    for (int lane = 0; lane < tried.length; lane++) {
      for (int place = 0; place <= places.last(); place++) {
        Alone one = tried[lane][place];
        for (Segment segment : frame.segmentsOf(target.member())) {
          double length = responses.analysis().model(segment).length();
          boolean loaded = segment.index() == one.loaded().index();
          worst[lane][place] =
              Math.max(worst[lane][place], at(target, segment, length, one, loaded));
          if (loaded) {
            worst[lane][place] =
                Math.max(worst[lane][place], at(target, segment, length / 2, one, true));
            worst[lane][place] =
                Math.max(worst[lane][place], at(target, segment, one.at(), one, true));
          }
        }
      }
    }
    return worst;
  }

  private double at(DeflectionTarget target, Segment segment, double x, Alone one, boolean loaded) {
    List<WeightedLoad> loads = loaded ? one.own() : List.of();
    return Math.abs(deflection.at(target, segment, x, one.movements(), one.endForces(), loads));
  }

  private Alone[][] alone(MovingLoad load) {
    Alone[][] all = new Alone[load.lanes().size()][places.last() + 1];
    for (int l = 0; l < all.length; l++) {
      Segment loaded = load.lanes().get(l).segment();
      double length = responses.analysis().model(loaded).length();
      for (int place = 0; place <= places.last(); place++) {
        double at = places.at(length, place);
        LocalLoad local = responses.local(load.placed(load.lanes().get(l), at));
        double[] movements = new double[frame.nodes().size() * 6];
        double[] endForces = new double[frame.segments().size() * ENDS];
        responses.addMovements(local, loaded, 1, movements);
        responses.addAllEndForces(local, loaded, 1, endForces);
        all[l][place] =
            new Alone(loaded, at, movements, endForces, List.of(new WeightedLoad(local, 1)));
      }
    }
    return all;
  }
}
