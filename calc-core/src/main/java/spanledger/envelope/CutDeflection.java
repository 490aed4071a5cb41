package spanledger.envelope;

import java.util.List;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentModel;
import spanledger.analysis.SegmentResponse;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * How far a cut moves along a direction, mm: from where it was, or from the line between the
 * member's ends.
 */
final class CutDeflection extends LinearEffect {

  private static final int ENDS = SegmentModel.ENDS;

  private final Station station;
  private final SegmentModel model;
  private final Vector direction;
  private final boolean fromChord;
  private final List<Segment> segments;
  private final double share;
  private final FrameAnalysis analysis;

  CutDeflection(
      FrameAnalysis analysis, DeflectionFinding.Kind kind, Vector direction, Station station) {
    this.analysis = analysis;
    this.station = station;
    this.model = analysis.model(station.segment());
    this.direction = direction;
    this.fromChord = kind == DeflectionFinding.Kind.FROM_CHORD;
    this.segments = analysis.frame().segmentsOf(station.segment().member());
    this.share = share();
    addWeights(station.segment(), station.x(), 1);
    if (fromChord) {
      Segment last = segments.get(segments.size() - 1);
      addWeights(segments.get(0), 0, share - 1);
      addWeights(last, analysis.model(last).length(), -share);
    }
  }

  /** The place along the member per length. */
  private double share() {
    double before = 0;
    double total = 0;
    for (Segment one : segments) {
      double length = analysis.model(one).length();
      before += one.order() < station.segment().order() ? length : 0;
      total += length;
    }
    return (before + station.x()) / total;
  }

  private void addWeights(Segment segment, double x, double factor) {
    SegmentModel of = analysis.model(segment);
    Frame frame = analysis.frame();
    int[] nodes = {6 * frame.indexOf(segment.first()), 6 * frame.indexOf(segment.second())};
    double[] unit = new double[ENDS];
    double[] start = new double[6];
    SegmentResponse unloaded = SegmentResponse.none(analysis, segment);
    for (int j = 0; j < ENDS; j++) {
      unit[j] = 1;
      of.startForces(unit, start, 0);
      double moved = moved(of, unit, unloaded.plusStartForces(start, 0, 1), x);
      addWeight(nodes[j / 6] + j % 6, factor * moved);
      unit[j] = 0;
    }
  }

  /** The movement of a cut, by the procedures. */
  private double moved(SegmentModel of, double[] movements, SegmentResponse response, double x) {
    PointMovement point = new PointMovement(of, direction);
    boolean within = point.isWithin(x);
    return point.at(
        x, movements, within ? response.deflectionY(x) : 0, within ? response.deflectionZ(x) : 0);
  }

  @Override
  double ofCase(CaseResult result, Responses all) {
    double here = ofCase(result, station.segment(), station.x(), all);
    if (!fromChord) {
      return here;
    }
    Segment last = segments.get(segments.size() - 1);
    double first = ofCase(result, segments.get(0), 0, all);
    double second = ofCase(result, last, analysis.model(last).length(), all);
    return here - (first + (second - first) * share);
  }

  private double ofCase(CaseResult result, Segment segment, double x, Responses all) {
    return moved(
        analysis.model(segment), result.movements(segment), response(result, segment, all), x);
  }

  @Override
  double held(SegmentInfluence.Placed part) {
    return moved(model, new double[ENDS], part.held(), station.x());
  }

  @Override
  List<Station> own() {
    return List.of(station);
  }

  /** How much of d_y counts along the direction. */
  double alongY() {
    return model.axisY().dot(direction);
  }

  /** How much of d_z counts along the direction. */
  double alongZ() {
    return model.axisZ().dot(direction);
  }
}
