package spanledger.envelope;

import java.util.List;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/** A reaction, N or N·mm, as the support acts on the structure. */
final class SupportReaction extends LinearEffect {

  private final Support support;
  private final Freedom freedom;
  private final int supported;

  SupportReaction(FrameAnalysis analysis, Support support, Freedom freedom) {
    this.support = support;
    this.freedom = freedom;
    Node node = support.node();
    supported = 6 * analysis.frame().indexOf(node) + freedom.ordinal();
    // What the segments at the node take from it, row by row of their stiffness.
    for (Segment segment : analysis.frame().segments()) {
      int first = analysis.frame().indexOf(segment.first());
      int second = analysis.frame().indexOf(segment.second());
      SegmentModel model = analysis.model(segment);
      for (int end = 0; end < 2; end++) {
        if (6 * (end == 0 ? first : second) + freedom.ordinal() == supported) {
          for (int j = 0; j < SegmentModel.ENDS; j++) {
            int movement = j < 6 ? 6 * first + j : 6 * second + j - 6;
            addWeight(movement, model.stiffness(6 * end + freedom.ordinal(), j));
          }
        }
      }
    }
  }

  @Override
  double ofCase(CaseResult result, Responses responses) {
    var reaction = result.reaction(support.node());
    Vector of = freedom.isShift() ? reaction.force() : reaction.moment();
    return switch (freedom) {
      case SHIFT_X, TURN_X -> of.x();
      case SHIFT_Y, TURN_Y -> of.y();
      case SHIFT_Z, TURN_Z -> of.z();
    };
  }

  @Override
  double held(SegmentInfluence.Placed part) {
    return 0;
  }

  @Override
  List<Station> own() {
    return List.of();
  }

  @Override
  double direct(int freedomOfNode) {
    return freedomOfNode == supported ? -1 : 0;
  }
}
