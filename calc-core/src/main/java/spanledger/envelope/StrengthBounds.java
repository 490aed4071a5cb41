package spanledger.envelope;

import java.util.Arrays;
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
 * Bounds on stresses under moving loads at evenly spaced places: the stress under the fixed part
 * plus the stress under the load alone, at the ends and the middle of each segment and under the
 * load and just past it.
 */
final class StrengthBounds {

  private static final double[] CUTS = {0, 0.5, 1};
  private static final int ENDS = SegmentModel.ENDS;
  private static final int MEASURES = StrengthMeasure.values().length;
  private static final List<WeightedLoad> NO_LOADS = List.of();

  private final Responses responses;
  private final Frame frame;
  private final List<SectionCheck> checks;
  private final LanePlaces places;
  private final CutForces cuts = new CutForces();
  private final double[] forces = new double[CutForces.COUNT];

  /** Greatest stresses by load, lane, place, member and measure; each load alone. */
  private final Map<String, double[][][][]> alone = new HashMap<>();

  private final IdentityHashMap<CombinedState, double[][]> fixed = new IdentityHashMap<>();

  StrengthBounds(Responses responses, List<SectionCheck> checks, LanePlaces places) {
    this.responses = responses;
    this.frame = responses.frame();
    this.checks = checks;
    this.places = places;
  }

  /** Adds the places of a combination's moving load that may govern the target. */
  void addTo(
      Collection<Candidate> candidates,
      StrengthTarget target,
      StrengthMeasure measure,
      CombinedState state) {
    Combination.MovingTerm term = state.combination().moving().orElseThrow();
    int member = responses.indexOf(target.member());
    double[][][][] moving = alone.computeIfAbsent(term.load().name(), n -> alone(term.load()));
    double base = fixed.computeIfAbsent(state, this::fixed)[member][measure.ordinal()];
    double factor = Math.abs(state.combination().factor(term));
    SectionCheck check = checks.get(member);
    for (int lane = 0; lane < moving.length; lane++) {
      for (int place = 0; place <= places.last(); place++) {
        double stress = base + factor * moving[lane][place][member][measure.ordinal()];
        double bound = check.utilisation(measure, stress);
        if (bound >= StrengthSearch.NEAR * target.worst(measure)) {
          candidates.add(new Candidate(state, term.load().lanes().get(lane), place, bound));
        }
      }
    }
  }

  private double[][][][] alone(MovingLoad load) {
    double[][][][] all = new double[load.lanes().size()][places.last() + 1][][];
    double[] endForces = new double[frame.segments().size() * ENDS];
    for (int lane = 0; lane < all.length; lane++) {
      Segment loaded = load.lanes().get(lane).segment();
      for (int place = 0; place <= places.last(); place++) {
        double at = places.at(responses.analysis().model(loaded).length(), place);
        LocalLoad local = responses.local(load.placed(load.lanes().get(lane), at));
        Arrays.fill(endForces, 0);
        responses.addAllEndForces(local, loaded, 1, endForces);
        double[][] stresses = new double[frame.members().size()][MEASURES];
        List<WeightedLoad> own = List.of(new WeightedLoad(local, 1));
        for (Segment segment : frame.segments()) {
          boolean isLoaded = segment.index() == loaded.index();
          List<WeightedLoad> loads = isLoaded ? own : NO_LOADS;
          for (double part : CUTS) {
            look(stresses, segment, part * segment.length(), endForces, loads);
          }
          if (isLoaded) {
            look(stresses, segment, at, endForces, loads);
            look(stresses, segment, at + PeakCuts.JUST_PAST, endForces, loads);
          }
        }
        all[lane][place] = stresses;
      }
    }
    return all;
  }

  private double[][] fixed(CombinedState state) {
    double[][] stresses = new double[frame.members().size()][MEASURES];
    for (Segment segment : frame.segments()) {
      for (double part : CUTS) {
        look(
            stresses,
            segment,
            part * segment.length(),
            state.endForces(),
            state.loads().get(segment.index()));
      }
    }
    return stresses;
  }

  private void look(
      double[][] stresses,
      Segment segment,
      double x,
      double[] endForces,
      List<WeightedLoad> loads) {
    cuts.at(endForces, segment.index() * ENDS, loads, x, forces, 0);
    int member = responses.memberOf(segment);
    SectionCheck check = checks.get(member);
    check.rank(forces, 0);
    double[] worst = stresses[member];
    for (StrengthMeasure measure : StrengthMeasure.values()) {
      worst[measure.ordinal()] = Math.max(worst[measure.ordinal()], check.ranked(measure));
    }
  }
}
