package spanledger.envelope;

import java.util.Arrays;
import java.util.List;
import spanledger.analysis.CaseResult;
import spanledger.analysis.NodeInfluence;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Segment;

/**
 * An effect that is a sum over loads: a force or deflection at a cut, or a reaction.
 *
 * <p>It is a weighted sum of movements of a few nodes, and for loads on its own segment a part that
 * is there while these nodes are held.
 */
abstract class LinearEffect {

  private static final int SIX = 6;

  private int[] movements = new int[0];
  private double[] factors = new double[0];
  private double[] byUnit = new double[0];

  /**
   * Adds a weight; part of building.
   *
   * @param movement of six per node of the frame
   * @param factor what a unit of it adds to the effect
   */
  final void addWeight(int movement, double factor) {
    if (factor != 0) {
      movements = Arrays.copyOf(movements, movements.length + 1);
      factors = Arrays.copyOf(factors, factors.length + 1);
      movements[movements.length - 1] = movement;
      factors[factors.length - 1] = factor;
    }
  }

  /** The effect in a solved case. */
  abstract double ofCase(CaseResult result, Responses responses);

  /** The effect of a load on the segment looked at, its nodes held; 0 for others. */
  abstract double held(SegmentInfluence.Placed part);

  /** The segment whose own loads count while its nodes are held; empty for reactions. */
  abstract List<Station> own();

  /** What a unit load straight on a node, six per node, adds beside the movements. */
  double direct(int freedom) {
    return 0;
  }

  /** What a unit of each movement, six per node, adds to the effect. */
  final double[] weights(int count) {
    double[] weights = new double[count];
    for (int i = 0; i < factors.length; i++) {
      weights[movements[i]] += factors[i];
    }
    return weights;
  }

  /** Works out the effect of unit loads on the nodes that moving loads reach. */
  final void prepare(Responses responses) {
    byUnit = new double[SIX * responses.frame().nodes().size()];
    for (NodeInfluence node : responses.nodeInfluences()) {
      int at = SIX * responses.frame().indexOf(node.node());
      for (int freedom = 0; freedom < SIX; freedom++) {
        double[] moved = node.movements(freedom);
        double sum = direct(at + freedom);
        for (int i = 0; i < factors.length; i++) {
          sum += factors[i] * moved[movements[i]];
        }
        byUnit[at + freedom] = sum;
      }
    }
  }

  /** The effect of loads standing on load paths; after {@link #prepare}. */
  final double of(List<SegmentInfluence.Placed> parts) {
    double sum = 0;
    for (SegmentInfluence.Placed part : parts) {
      Segment segment = part.influence().segment();
      int first = SIX * part.influence().node(0);
      int second = SIX * part.influence().node(1);
      double[] onNodes = part.onNodes();
      for (int i = 0; i < SIX; i++) {
        sum += onNodes[i] * byUnit[first + i] + onNodes[SIX + i] * byUnit[second + i];
      }
      for (Station station : own()) {
        if (station.segment().index() == segment.index()) {
          sum += held(part);
        }
      }
    }
    return sum;
  }

  /** The response of a case along a segment. */
  static SegmentResponse response(CaseResult result, Segment segment, Responses responses) {
    return responses.of(result.loadCase(), segment);
  }
}
