package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.Combination;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Segment;

/**
 * A combination on one segment, without its moving load: what always acts, the free parts, and
 * between which limits internal forces lie at some cuts whatever free parts act.
 */
final class SegmentGrid {

  private static final int FORCES = 6;

  private final Segment segment;
  private final double[] cuts;
  private final SegmentResponse fixed;
  private final List<SegmentResponse> options;
  private final boolean loaded;
  private final double[] high;
  private final double[] low;
  private final double[] departures = new double[FORCES];

  /**
   * @param cuts in order, mm; from 0 to the length if bounds are to hold between them
   */
  SegmentGrid(Responses responses, Combination combination, Segment segment, double[] cuts) {
    this.segment = segment;
    this.cuts = cuts;
    fixed = sum(responses, combination, combination.terms(), segment);
    options = new ArrayList<>(combination.options().size());
    for (Combination.Option option : combination.options()) {
      options.add(sum(responses, combination, option.terms(), segment));
    }
    loaded = options.stream().anyMatch(option -> !option.isUnloaded());
    high = new double[FORCES * cuts.length];
    low = new double[FORCES * cuts.length];
    double[] forces = new double[FORCES];
    for (int cut = 0; cut < cuts.length; cut++) {
      for (spanledger.analysis.Side side : spanledger.analysis.Side.values()) {
        fixed.forces(cuts[cut], side, forces);
        boolean first = side == spanledger.analysis.Side.values()[0];
        for (int k = 0; k < FORCES; k++) {
          int at = FORCES * cut + k;
          high[at] = first ? forces[k] : Math.max(high[at], forces[k]);
          low[at] = first ? forces[k] : Math.min(low[at], forces[k]);
        }
      }
    }
    for (SegmentResponse option : options) {
      for (int cut = 0; cut < cuts.length; cut++) {
        option.forces(cuts[cut], spanledger.analysis.Side.BEFORE, forces);
        for (int k = 0; k < FORCES; k++) {
          high[FORCES * cut + k] += Math.max(0, forces[k]);
          low[FORCES * cut + k] += Math.min(0, forces[k]);
        }
      }
    }
    if (cuts.length > 1) {
      fixed.departures(cuts, departures);
      double[] own = new double[FORCES];
      for (SegmentResponse option : options) {
        option.departures(cuts, own);
        for (int k = 0; k < FORCES; k++) {
          departures[k] += own[k];
        }
      }
    }
  }

  private static SegmentResponse sum(
      Responses responses, Combination combination, List<Combination.Term> terms, Segment segment) {
    List<SegmentResponse> parts = new ArrayList<>(terms.size());
    double[] factors = new double[terms.size()];
    for (Combination.Term term : terms) {
      factors[parts.size()] = combination.factor(term);
      parts.add(responses.of(term.loadCase(), segment));
    }
    return parts.isEmpty()
        ? SegmentResponse.none(responses.analysis(), segment)
        : SegmentResponse.sum(parts, factors);
  }

  Segment segment() {
    return segment;
  }

  double[] cuts() {
    return cuts;
  }

  /** What always acts. */
  SegmentResponse fixed() {
    return fixed;
  }

  /** Whether a free part loads the segment itself. */
  boolean isLoaded() {
    return loaded;
  }

  /** The free parts. */
  List<SegmentResponse> options() {
    return options;
  }

  /**
   * At least the size of each internal force near a cut, under any free parts and a load elsewhere.
   *
   * @param reach the load elsewhere
   * @param factor on it, not negative
   * @param into six, overwritten
   */
  void sizes(int cut, Reach reach, double factor, double[] into) {
    double share = cuts.length == 1 ? cuts[0] / segment.length() : (double) cut / (cuts.length - 1);
    for (int k = 0; k < FORCES; k++) {
      int at = FORCES * cut + k;
      into[k] =
          departures[k]
              + Math.max(
                  Math.abs(high[at] + factor * reach.high(share, k)),
                  Math.abs(low[at] + factor * reach.low(share, k)));
    }
  }

  /** The greatest and least internal forces along a segment without load of its own. */
  interface Reach {
    /** No load elsewhere. */
    Reach NONE =
        new Reach() {
          @Override
          public double high(double share, int force) {
            return 0;
          }

          @Override
          public double low(double share, int force) {
            return 0;
          }
        };

    /**
     * The greatest.
     *
     * @param share place per length of the segment
     */
    double high(double share, int force);

    /** The least. */
    double low(double share, int force);
  }
}
