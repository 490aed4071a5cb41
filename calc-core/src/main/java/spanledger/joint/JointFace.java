package spanledger.joint;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;

/**
 * A plane in which bolts, and keys if there are any, hand on all six forces of a member end.
 *
 * <p>Its own first and second axes are axes of the joint, see {@link FaceNormal}: of normal u they
 * are v and w, of normal -v they are u and w.
 *
 * @param name unique in its joint
 * @param normal the direction square to it, towards the member
 * @param origin from the member end, along u, v, w, mm
 * @param bolts the bolts
 * @param keys keys beside them
 * @param plies what the bolts go through, one after the other, at least one; either all say to
 *     which part they belong, or none does
 * @param leg where a bracket leg bends away
 * @param lips the lips of the slot that hold the bolt heads
 * @param wall the wall behind the face that the joint bends
 * @param friction between the plies
 * @param packing thickness of packing between the plies, mm; 0 if there is none
 */
public record JointFace(
    String name,
    FaceNormal normal,
    Vector origin,
    FaceBolts bolts,
    Optional<FaceKeys> keys,
    List<Ply> plies,
    Optional<BracketLeg> leg,
    Optional<SlotLips> lips,
    Optional<FaceWall> wall,
    Optional<FaceFriction> friction,
    double packing) {

  /**
   * @throws IllegalArgumentException if there is no ply, or only some say where they belong
   */
  public JointFace {
    plies = List.copyOf(plies);
    if (plies.isEmpty()) {
      throw new IllegalArgumentException("Face " + name + " needs a ply.");
    }
    long sided = plies.stream().filter(ply -> ply.side().isPresent()).count();
    if (sided > 0 && sided < plies.size()) {
      throw new IllegalArgumentException(
          "All plies of face " + name + " must say where they belong, or none.");
    }
  }

  /** The first axis in the face. */
  public JointAxis first() {
    return normal.first();
  }

  /** The second axis in the face. */
  public JointAxis second() {
    return normal.second();
  }

  /**
   * In how many planes each bolt is sheared: between plies of one part and of the other, or as
   * declared where plies do not say where they belong.
   */
  public int shearPlanes() {
    if (plies.get(0).side().isEmpty()) {
      return bolts.shearPlanes();
    }
    int planes = 0;
    for (int i = 1; i < plies.size(); i++) {
      planes += plies.get(i).side().equals(plies.get(i - 1).side()) ? 0 : 1;
    }
    return planes;
  }
}
