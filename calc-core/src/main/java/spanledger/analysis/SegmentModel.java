package spanledger.analysis;

import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * The linear mechanics of one segment, ready for repeated use: every matrix here is got by
 * evaluating the procedures of this package on unit inputs.
 *
 * <p>Orders: movements and node forces are X, Y, Z shifts (forces), then X, Y, Z turns (moments) of
 * the first node, then of the second, in global axes. End forces are F_x, F_y, F_z, M_x, M_y, M_z
 * of end 1, then of end 2, in the segment's axes, as the nodes exert them. Deformations are e, φ,
 * θ_y1, θ_y2, θ_z1, θ_z2. Immutable; every method writes into an array of the caller.
 */
public final class SegmentModel {

  /** Movements, end forces and node forces per segment. */
  public static final int ENDS = 12;

  /** Basic deformations per segment. */
  public static final int DEFORMATIONS = 6;

  /** Load moments per segment: m_0x, m_1x, m_0y .. m_3y, m_0z .. m_3z. */
  public static final int LOAD_MOMENTS = 10;

  private final Segment segment;
  private final double length;
  private final double[] geometry;
  private final double[] stiffness;
  private final Vector[] axes = new Vector[3];
  private final SegmentMatrices matrices;

  /**
   * Evaluates the procedures for a segment.
   *
   * @throws IllegalArgumentException if the segment has no length or a property is out of its
   *     domain
   */
  public SegmentModel(Segment segment) {
    this(segment, new AlikeSegments());
  }

  /** The same, sharing matrices with segments that are alike. */
  SegmentModel(Segment segment, AlikeSegments alike) {
    this.segment = segment;
    geometry = SegmentValues.geometry(segment);
    length = geometry[SegmentValues.LENGTH];
    for (int axis = 0; axis < 3; axis++) {
      axes[axis] = SegmentValues.axis(geometry, axis);
    }
    stiffness = SegmentValues.stiffness(segment, geometry);
    matrices = alike.matrices(geometry, stiffness);
  }

  /** The segment. */
  public Segment segment() {
    return segment;
  }

  /** The length between the member ends, mm. */
  public double length() {
    return length;
  }

  /** The local x axis in global axes. */
  public Vector axisX() {
    return axes[0];
  }

  /** The local y axis in global axes. */
  public Vector axisY() {
    return axes[1];
  }

  /** The local z axis in global axes. */
  public Vector axisZ() {
    return axes[2];
  }

  /** A value of {@link SegmentGeometry#PROCEDURE} by its symbol. */
  public double geometryValue(String symbol) {
    return geometry[SegmentValues.GEOMETRY.slot(symbol)];
  }

  /** A value of {@link SegmentStiffness#PROCEDURE} by its symbol. */
  public double stiffnessValue(String symbol) {
    return stiffness[SegmentValues.STIFFNESS.slot(symbol)];
  }

  /**
   * Basic deformations.
   *
   * @param movements 12, not modified
   * @param into 6, overwritten
   */
  public void deformations(double[] movements, double[] into) {
    multiply(matrices.deformationByMovement, movements, into);
  }

  /**
   * End forces of the deformed segment without load.
   *
   * @param deformations 6, not modified
   * @param into 12, overwritten
   */
  public void endForces(double[] deformations, double[] into) {
    multiply(matrices.endForceByDeformation, deformations, into);
  }

  /**
   * Adds the end forces that loads cause while the nodes stay where they are.
   *
   * @param loadMoments 10, not modified
   * @param weight factor on them
   * @param into 12, added to
   */
  public void addFixedEndForces(double[] loadMoments, double weight, double[] into) {
    addProduct(matrices.endForceByLoad, loadMoments, weight, into);
  }

  /**
   * What the segment takes from its nodes, global axes.
   *
   * @param endForces 12, not modified
   * @param into 12, overwritten
   */
  public void nodeForces(double[] endForces, double[] into) {
    multiply(matrices.nodeForceByEndForce, endForces, into);
  }

  /**
   * Forces at end 1 of the segment without load.
   *
   * @param movements 12, not modified
   * @param into six from {@code at} on, overwritten
   */
  public void startForces(double[] movements, double[] into, int at) {
    for (int i = 0; i < ENDS / 2; i++) {
      double sum = 0;
      for (int j = 0; j < ENDS; j++) {
        sum += matrices.startForceByMovement[i * ENDS + j] * movements[j];
      }
      into[at + i] = sum;
    }
  }

  /**
   * Internal forces that the forces at end 1 alone cause at a cut.
   *
   * @param x mm from the segment's start
   * @param startForces six from {@code at} on, not modified
   * @param into N, V_y, V_z, T, M_y, M_z; overwritten
   */
  public void cutForces(double x, double[] startForces, int at, double[] into) {
    CutForces.linear(x, startForces, at, into);
  }

  /** 6 x 12; not to be modified. */
  double[] deformationByMovement() {
    return matrices.deformationByMovement;
  }

  /** Slopes of the chord in the x-z and the x-y plane, 2 x 12; not to be modified. */
  double[] chordByMovement() {
    return matrices.chordByMovement;
  }

  /** Moments of turned arms per axial force, 6 x 6 over the turns of both nodes, or empty. */
  double[] armMomentByTurn() {
    return matrices.armMomentByTurn;
  }

  /** Carries length, axes and arms over to another procedure. */
  void copyGeometry(SlotCopy copy, double[] slots) {
    copy.copy(geometry, slots);
  }

  /** Carries the stiffness values over to another procedure. */
  void copyStiffness(SlotCopy copy, double[] slots) {
    copy.copy(stiffness, slots);
  }

  /** Entry of the 12 x 12 stiffness between movements and node forces. */
  public double stiffness(int row, int column) {
    return matrices.nodeForceByMovement[row * ENDS + column];
  }

  /** Copies the movements of the two nodes out of those of the frame. */
  static void gather(double[] ofFrame, int firstNode, int secondNode, double[] into) {
    System.arraycopy(ofFrame, 6 * firstNode, into, 0, 6);
    System.arraycopy(ofFrame, 6 * secondNode, into, 6, 6);
  }

  private static void multiply(double[] matrix, double[] vector, double[] into) {
    int columns = vector.length;
    for (int row = 0; row < into.length; row++) {
      double sum = 0;
      for (int column = 0; column < columns; column++) {
        sum += matrix[row * columns + column] * vector[column];
      }
      into[row] = sum;
    }
  }

  private static void addProduct(double[] matrix, double[] vector, double weight, double[] into) {
    int columns = vector.length;
    for (int row = 0; row < into.length; row++) {
      double sum = 0;
      for (int column = 0; column < columns; column++) {
        sum += matrix[row * columns + column] * vector[column];
      }
      into[row] += weight * sum;
    }
  }
}
