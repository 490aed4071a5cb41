package spanledger.joint.stiffness;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.frame.Vector;
import spanledger.joint.FaceNormal;
import spanledger.joint.JointAxis;
import spanledger.joint.sharing.BracketSharing;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.UnresistedFaceException;
import spanledger.provenance.Source;

/**
 * Stiffness of a joint along and about three axes; empty where nothing resists.
 *
 * <p>It is the movement of the very model that shares the forces ({@link JointSharing}), so
 * analysis and check agree. Keys are taken as bearing: their clearance is play, not softness, and
 * is told apart. Movement along one axis caused by a force along another is left out.
 *
 * @param along the three axes, in order
 * @param about the three axes, in order
 */
public record JointStiffness(
    List<Optional<AxisStiffness>> along, List<Optional<AxisStiffness>> about) {

  /** Where joints' stiffness modification comes from. */
  public static final Source MODIFICATION =
      Source.fromMemory("EN 1993-1-8:2005", "5.1.2(4), Table 5.2");

  /** Of bolted end plates elsewhere, and of base plates. */
  public static final double OTHER = 3;

  public JointStiffness {
    along = List.copyOf(along);
    about = List.copyOf(about);
    if (along.size() != 3 || about.size() != 3) {
      throw new IllegalArgumentException("A joint's stiffness needs three axes.");
    }
  }

  /**
   * Of one face, in its own axes: its normal, then its first and second axis.
   *
   * @param modification divides the initial stiffness for the lower bound; 1 or more
   */
  public static JointStiffness of(JointGeometry joint, double modification) {
    JointGeometry closed = joint.bearing();
    return of(forces -> JointSharing.of(closed, forces).movement(), modification);
  }

  /**
   * Of brackets side by side, about the member end and along u, v, w: each movement under its own
   * force alone, all others free.
   *
   * @param modification divides the initial stiffness for the lower bound; 1 or more
   */
  public static JointStiffness of(BracketSharing brackets, double modification) {
    return of(brackets::moved, modification);
  }

  private static JointStiffness of(Function<FaceForces, FaceMovement> moved, double modification) {
    return new JointStiffness(
        List.of(
            axis(moved, new FaceForces(1, 0, 0, 0, 0, 0), FaceMovement::x, modification),
            axis(moved, new FaceForces(0, 1, 0, 0, 0, 0), FaceMovement::y, modification),
            axis(moved, new FaceForces(0, 0, 1, 0, 0, 0), FaceMovement::z, modification)),
        List.of(
            axis(moved, new FaceForces(0, 0, 0, 1, 0, 0), FaceMovement::aboutX, modification),
            axis(moved, new FaceForces(0, 0, 0, 0, 1, 0), FaceMovement::aboutY, modification),
            axis(moved, new FaceForces(0, 0, 0, 0, 0, 1), FaceMovement::aboutZ, modification)));
  }

  private static Optional<AxisStiffness> axis(
      Function<FaceForces, FaceMovement> moved,
      FaceForces unit,
      ToDoubleFunction<FaceMovement> movement,
      double modification) {
    try {
      double forwards = movement.applyAsDouble(moved.apply(unit));
      double backwards = -movement.applyAsDouble(moved.apply(unit.times(-1)));
      return Optional.of(AxisStiffness.of(forwards, backwards, modification));
    } catch (UnresistedFaceException unresisted) {
      return Optional.empty();
    }
  }

  /**
   * The stiffness of a face in the order u, v, w, if this is in the order normal, first, second of
   * a face that looks this way.
   */
  public JointStiffness onAxesOf(FaceNormal normal) {
    if (normal.positive()) {
      return onAxesOf(normal.axis());
    }
    // Against its axis, a push is a pull along it, and first and second axis change places.
    return new JointStiffness(against(along), against(about)).onAxesOf(normal.axis());
  }

  private static List<Optional<AxisStiffness>> against(List<Optional<AxisStiffness>> faceOrder) {
    return List.of(faceOrder.get(0).map(AxisStiffness::turned), faceOrder.get(2), faceOrder.get(1));
  }

  /**
   * The stiffness of a face in the order u, v, w, if this is in the order normal, first, second.
   */
  public JointStiffness onAxesOf(JointAxis normal) {
    return new JointStiffness(turned(along, normal), turned(about, normal));
  }

  private static List<Optional<AxisStiffness>> turned(
      List<Optional<AxisStiffness>> faceOrder, JointAxis normal) {
    JointAxis first = normal.next();
    return List.of(JointAxis.U, JointAxis.V, JointAxis.W).stream()
        .map(
            axis ->
                axis == normal
                    ? faceOrder.get(0)
                    : axis == first ? faceOrder.get(1) : faceOrder.get(2))
        .toList();
  }

  /** Two faces that hand on the same forces, one after the other; both in the same axes. */
  public JointStiffness inSeries(JointStiffness other) {
    return new JointStiffness(inSeries(along, other.along), inSeries(about, other.about));
  }

  private static List<Optional<AxisStiffness>> inSeries(
      List<Optional<AxisStiffness>> first, List<Optional<AxisStiffness>> second) {
    return List.of(
        inSeries(first, second, 0), inSeries(first, second, 1), inSeries(first, second, 2));
  }

  private static Optional<AxisStiffness> inSeries(
      List<Optional<AxisStiffness>> first, List<Optional<AxisStiffness>> second, int at) {
    return first.get(at).flatMap(a -> second.get(at).map(a::inSeries));
  }

  /**
   * As a member end, if this is in the order u, v, w.
   *
   * @param offset of the member end from its node, global axes, mm
   * @throws IllegalArgumentException if nothing resists along the member
   */
  public MemberEnd memberEnd(StiffnessBounds.Bound bound, Vector offset) {
    return new MemberEnd(
        restraint(along.get(0), bound),
        restraint(about.get(0), bound),
        restraint(about.get(1), bound),
        restraint(about.get(2), bound),
        offset);
  }

  private static Restraint restraint(Optional<AxisStiffness> axis, StiffnessBounds.Bound bound) {
    return axis.map(a -> a.bounds(MODIFICATION).restraint(bound)).orElse(Restraint.FREE);
  }
}
