package spanledger.analysis;

import java.util.Arrays;
import java.util.List;
import spanledger.action.SegmentLoad;
import spanledger.frame.Segment;

/**
 * What a load case, or a sum of cases with factors, does along one segment: internal forces and
 * deflections at any place, and where they are greatest. Immutable.
 *
 * <p>Values come from the procedures {@link SectionForces}, {@link LoadBefore} and {@link
 * ChordDeflection}. Between places where loads begin, end or stand, internal forces are cubics in
 * x; {@link #forces} evaluates these, which is faster and differs by rounding only.
 */
public final class SegmentResponse {

  private static final int AXIAL = 0;
  private static final int SHEAR_Y = 1;
  private static final int SHEAR_Z = 2;
  private static final int MOMENT_Y = 4;
  private static final int MOMENT_Z = 5;

  private final SegmentModel model;
  private final double[] end;
  private final double[] start = new double[CutForces.FORCES];
  private final double[] slope = new double[CutForces.FORCES];
  private final LoadCurve curve;
  private final LocalLoad[] loads;
  private final double[] loadFactors;

  /**
   * Puts a response together.
   *
   * @param end forces at end 1, 6, kept
   */
  SegmentResponse(
      SegmentModel model, double[] end, LoadCurve curve, LocalLoad[] loads, double[] loadFactors) {
    this.model = model;
    this.end = end;
    this.curve = curve;
    this.loads = loads;
    this.loadFactors = loadFactors;
    CutForces.linear(end, start, slope);
  }

  /** The response of one segment to one solved case. */
  static SegmentResponse of(FrameAnalysis analysis, CaseResult result, Segment segment) {
    SegmentModel model = analysis.model(segment);
    List<LocalLoad> loads = result.loads().on(segment.index());
    double[] factors = new double[loads.size()];
    Arrays.fill(factors, 1);
    return new SegmentResponse(
        model,
        Arrays.copyOf(result.endForces(segment), CutForces.FORCES),
        LoadCurve.of(loads, model.length()),
        loads.toArray(LocalLoad[]::new),
        factors);
  }

  /** Loads on a segment whose first end bears nothing; see {@link #plusStartForces}. */
  public static SegmentResponse loaded(
      FrameAnalysis analysis, Segment segment, List<SegmentLoad> loads) {
    SegmentModel model = analysis.model(segment);
    List<LocalLoad> local = loads.stream().map(load -> new LocalLoad(load, model)).toList();
    double[] factors = new double[local.size()];
    Arrays.fill(factors, 1);
    return new SegmentResponse(
        model,
        new double[CutForces.FORCES],
        LoadCurve.of(local, model.length()),
        local.toArray(LocalLoad[]::new),
        factors);
  }

  /** No load at all. */
  public static SegmentResponse none(FrameAnalysis analysis, Segment segment) {
    SegmentModel model = analysis.model(segment);
    return new SegmentResponse(
        model,
        new double[CutForces.FORCES],
        LoadCurve.none(model.length()),
        new LocalLoad[0],
        new double[0]);
  }

  /**
   * The sum of responses of one segment.
   *
   * @param parts at least one, all of the same segment
   * @param factors one per part, not modified
   * @throws IllegalArgumentException if the parts are of different segments
   */
  public static SegmentResponse sum(List<SegmentResponse> parts, double[] factors) {
    SegmentModel model = parts.get(0).model;
    double[] end = new double[CutForces.FORCES];
    LoadCurve[] curves = new LoadCurve[parts.size()];
    int loadCount = 0;
    for (int i = 0; i < curves.length; i++) {
      SegmentResponse part = parts.get(i);
      if (part.model != model && !part.model.segment().equals(model.segment())) {
        throw new IllegalArgumentException(
            "Responses of members "
                + model.segment().name()
                + " and "
                + part.model.segment().name()
                + " cannot be added.");
      }
      curves[i] = part.curve;
      loadCount += part.loads.length;
      for (int k = 0; k < end.length; k++) {
        end[k] += factors[i] * part.end[k];
      }
    }
    LocalLoad[] loads = new LocalLoad[loadCount];
    double[] loadFactors = new double[loadCount];
    int filled = 0;
    for (int i = 0; i < curves.length; i++) {
      SegmentResponse part = parts.get(i);
      for (int k = 0; k < part.loads.length; k++) {
        loads[filled] = part.loads[k];
        loadFactors[filled++] = factors[i] * part.loadFactors[k];
      }
    }
    return new SegmentResponse(model, end, LoadCurve.sum(curves, factors), loads, loadFactors);
  }

  /**
   * This with other forces at end 1 added, as loads elsewhere cause.
   *
   * @param endForces six from {@code at} on, not modified
   */
  public SegmentResponse plusStartForces(double[] endForces, int at, double factor) {
    double[] sum = end.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * endForces[at + i];
    }
    return new SegmentResponse(model, sum, curve, loads, loadFactors);
  }

  /** This with another response of the same segment added. */
  public SegmentResponse plus(SegmentResponse other, double factor) {
    return sum(List.of(this, other), new double[] {1, factor});
  }

  /** The mechanics of the segment. */
  public SegmentModel model() {
    return model;
  }

  /** The six forces at end 1, as a new array. */
  public double[] startForces() {
    return end.clone();
  }

  /**
   * Internal forces by the procedures.
   *
   * @param x mm from the segment's start, from 0 to its length
   */
  public InternalForces at(double x, Side side) {
    double[] forces = new double[CutForces.FORCES];
    CutForces.sectionForces(x, end, before(side == Side.AFTER ? Math.nextUp(x) : x), forces);
    return new InternalForces(
        forces[AXIAL],
        forces[SHEAR_Y],
        forces[SHEAR_Z],
        forces[3],
        forces[MOMENT_Y],
        forces[MOMENT_Z]);
  }

  /**
   * Internal forces by the cubics, for many places.
   *
   * @param into N, V_y, V_z, T, M_y, M_z; overwritten
   */
  public void forces(double x, Side side, double[] into) {
    int piece = curve.pieceAt(x, side);
    double from = curve.breakAt(piece);
    double t = (x - from) / (curve.breakAt(piece + 1) - from);
    for (int f = 0; f < CutForces.FORCES; f++) {
      double sum = 0;
      for (int k = LoadCurve.TERMS - 1; k >= 0; k--) {
        sum = sum * t + curve.coefficient(piece, f, k);
      }
      into[f] = start[f] + slope[f] * x + sum;
    }
  }

  /** Deflection from the chord along the segment's y, mm, by the procedure. */
  public double deflectionY(double x) {
    return deflections(x, loadMoments())[0];
  }

  /** Deflection from the chord along the segment's z, mm, by the procedure. */
  public double deflectionZ(double x) {
    return deflections(x, loadMoments())[1];
  }

  private double[] deflections(double x, double[] moments) {
    double[] both = new double[2];
    CutForces.deflections(model, x, end, before(x), moments, both);
    return both;
  }

  private double[] before(double x) {
    double[] before = new double[CutForces.BEFORE];
    for (int i = 0; i < loads.length; i++) {
      loads[i].addBefore(x, loadFactors[i], before);
    }
    return before;
  }

  private double[] loadMoments() {
    double[] moments = new double[SegmentModel.LOAD_MOMENTS];
    for (int i = 0; i < loads.length; i++) {
      loads[i].addMoments(loadFactors[i], moments);
    }
    return moments;
  }

  /** Whether no load acts on the segment itself. */
  public boolean isUnloaded() {
    return loads.length == 0;
  }

  /**
   * Where loads begin, end or stand, in order, with both ends of the segment, mm. Forces may jump
   * here: look at both sides.
   */
  public double[] breaks() {
    double[] breaks = new double[curve.pieces() + 1];
    for (int piece = 0; piece < breaks.length; piece++) {
      breaks[piece] = curve.breakAt(piece);
    }
    return breaks;
  }

  /**
   * The greatest part of each internal force that is not linear between cuts, for bounds: with it
   * added, a force between two neighbouring cuts does not exceed the greater of those at them.
   *
   * @param cuts in order from 0 to the length, mm
   * @param into N, V_y, V_z, T, M_y, M_z; not negative; overwritten
   */
  public void departures(double[] cuts, double[] into) {
    curve.departures(cuts, into);
  }

  /**
   * Every place where N/A ± M_y/W_y ± M_z/W_z, with or without N, may be greatest or least,
   * whatever the signs: the breaks, and the turning points between them. In order, mm; the same
   * place may come twice.
   *
   * @param area A, mm²
   * @param modulusY W_y, mm³
   * @param modulusZ W_z, mm³
   */
  public double[] candidateStations(double area, double modulusY, double modulusZ) {
    StationSearch search = new StationSearch(this);
    search.addTurningPoints(MOMENT_Y, 1 / modulusY, MOMENT_Z, 1 / modulusZ, AXIAL, 0);
    if (search.changes(AXIAL)) {
      search.addTurningPoints(AXIAL, 1 / area, MOMENT_Y, 1 / modulusY, MOMENT_Z, 1 / modulusZ);
    }
    return search.finished();
  }

  /**
   * Every place where V_y/A_y ± V_z/A_z may be greatest or least, whatever the signs. In order, mm.
   * (The torque does not change along a segment.)
   */
  public double[] shearStations(double areaY, double areaZ) {
    StationSearch search = new StationSearch(this);
    search.addTurningPoints(SHEAR_Y, 1 / areaY, SHEAR_Z, 1 / areaZ, AXIAL, 0);
    return search.finished();
  }

  /**
   * Every place where {@code alongY · d_y + alongZ · d_z + rise · x} may be greatest or least. In
   * order, mm.
   */
  public double[] deflectionStations(double alongY, double alongZ, double rise) {
    double[] moments = loadMoments();
    return new StationSearch(this)
        .turningPoints(
            x -> {
              double[] both = deflections(x, moments);
              return alongY * both[0] + alongZ * both[1] + rise * x;
            });
  }

  /** The greatest value along the segment. */
  public Extreme greatest(SegmentEffect effect) {
    return extreme(effect, 1);
  }

  /** The least value along the segment. */
  public Extreme least(SegmentEffect effect) {
    return extreme(effect, -1);
  }

  private Extreme extreme(SegmentEffect effect, double sign) {
    double[] stations = stations(effect);
    Extreme best = new Extreme(value(effect, 0, Side.AFTER), 0, Side.AFTER);
    for (double x : stations) {
      for (Side side : Side.values()) {
        boolean outside = side == Side.BEFORE ? x == 0 : x == model.length();
        double value = outside ? best.value() : value(effect, x, side);
        if (sign * value > sign * best.value()) {
          best = new Extreme(value, x, side);
        }
      }
    }
    return best;
  }

  private double[] stations(SegmentEffect effect) {
    StationSearch search = new StationSearch(this);
    return switch (effect) {
      case AXIAL -> search.turningPoints(AXIAL);
      case SHEAR_Y -> search.turningPoints(SHEAR_Y);
      case SHEAR_Z -> search.turningPoints(SHEAR_Z);
      case TORQUE -> breaks();
      case MOMENT_Y -> search.turningPoints(MOMENT_Y);
      case MOMENT_Z -> search.turningPoints(MOMENT_Z);
      case DEFLECTION_Y -> deflectionStations(1, 0, 0);
      case DEFLECTION_Z -> deflectionStations(0, 1, 0);
    };
  }

  private double value(SegmentEffect effect, double x, Side side) {
    return switch (effect) {
      case AXIAL -> at(x, side).axial();
      case SHEAR_Y -> at(x, side).shearY();
      case SHEAR_Z -> at(x, side).shearZ();
      case TORQUE -> at(x, side).torque();
      case MOMENT_Y -> at(x, side).momentY();
      case MOMENT_Z -> at(x, side).momentZ();
      case DEFLECTION_Y -> deflectionY(x);
      case DEFLECTION_Z -> deflectionZ(x);
    };
  }

  LoadCurve curve() {
    return curve;
  }

  /** Change per mm of an internal force by the end forces alone. */
  double slope(int force) {
    return slope[force];
  }
}
