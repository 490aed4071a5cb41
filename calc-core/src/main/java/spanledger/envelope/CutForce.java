package spanledger.envelope;

import java.util.Arrays;
import java.util.List;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.frame.Segment;

/** An internal force at a cut, N or N·mm, with the signs of {@code SectionForces}. */
final class CutForce extends LinearEffect {

  /** The internal forces, in the order in which responses give them. */
  static final List<SegmentEffect> FORCES =
      List.of(
          SegmentEffect.AXIAL,
          SegmentEffect.SHEAR_Y,
          SegmentEffect.SHEAR_Z,
          SegmentEffect.TORQUE,
          SegmentEffect.MOMENT_Y,
          SegmentEffect.MOMENT_Z);

  private final Station station;
  private final int force;
  private final double[] work = new double[FORCES.size()];

  /**
   * @param effect one of {@link #FORCES}
   */
  CutForce(FrameAnalysis analysis, Station station, SegmentEffect effect) {
    this.station = station;
    this.force = FORCES.indexOf(effect);
    if (force < 0) {
      throw new IllegalArgumentException(effect + " is no internal force.");
    }
    Segment segment = station.segment();
    SegmentModel model = analysis.model(segment);
    SegmentResponse unloaded = SegmentResponse.none(analysis, segment);
    int[] nodes = {
      6 * analysis.frame().indexOf(segment.first()), 6 * analysis.frame().indexOf(segment.second())
    };
    double[] unit = new double[SegmentModel.ENDS];
    double[] start = new double[6];
    for (int j = 0; j < SegmentModel.ENDS; j++) {
      unit[j] = 1;
      Arrays.fill(start, 0);
      model.startForces(unit, start, 0);
      addWeight(nodes[j / 6] + j % 6, at(unloaded.plusStartForces(start, 0, 1)));
      unit[j] = 0;
    }
  }

  private double at(SegmentResponse response) {
    response.forces(station.x(), Side.BEFORE, work);
    return work[force];
  }

  @Override
  double ofCase(CaseResult result, Responses responses) {
    return at(response(result, station.segment(), responses));
  }

  @Override
  double held(SegmentInfluence.Placed part) {
    return at(part.held());
  }

  @Override
  List<Station> own() {
    return List.of(station);
  }
}
