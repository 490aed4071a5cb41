package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.function.Function;

/**
 * A face under many sets of forces: its springs are made once. Its movement is that of {@link
 * JointSharing}, by the same steps; what the parts carry follows from it.
 */
public final class MovingFace {

  private final FaceBalance inFace;
  private final Function<FaceForces, double[]> loadInFace;
  private final FaceBalance offFace;

  /**
   * Makes it.
   *
   * @throws IllegalArgumentException if the stiffnesses of the face lie too far apart
   */
  public MovingFace(JointGeometry joint, KeySharing keySharing) {
    boolean keysAlone = keySharing == KeySharing.KEYS_CARRY_ACROSS && !joint.keys().isEmpty();
    JointGeometry resisting =
        keySharing == KeySharing.BEFORE_SLIP ? InFaceSharing.gripped(joint) : joint;
    inFace = InFaceSharing.balance(resisting, !keysAlone);
    loadInFace =
        keysAlone
            ? forces -> InFaceSharing.loadOnKeys(joint, forces, new ArrayList<>())
            : InFaceSharing::load;
    offFace = OffFaceSharing.balance(joint);
  }

  /**
   * How far the face moves.
   *
   * @throws UnresistedFaceException if nothing at the face resists one of the forces
   */
  public FaceMovement under(FaceForces forces) {
    double[] inPlane = inFace.movement(loadInFace.apply(forces));
    double[] offPlane = offFace.movement(OffFaceSharing.load(forces));
    return FaceMovement.inFace(inPlane).with(FaceMovement.offFace(offPlane));
  }
}
