package spanledger.joint.sharing;

import java.util.List;

/**
 * Shares the six forces at a joint's face to its bolts, keys and bearing places.
 *
 * <p>The member's part moves as one rigid body on springs. In the face (two shears and torsion)
 * bolts resist both ways and keys one way, once their clearance is closed. Off the face (axial
 * force and two moments) bolts only pull and contacts only press. Whatever is found is proved by
 * its residual. The theory is in docs/theory/joint-sharing.md.
 */
public final class JointSharing {

  private JointSharing() {}

  /** Shares by the stiffnesses of all parts. */
  public static SharedForces of(JointGeometry joint, FaceForces forces) {
    return of(joint, forces, KeySharing.BY_STIFFNESS);
  }

  /**
   * Shares by a stated model.
   *
   * @throws UnresistedFaceException if nothing at the face resists one of the forces
   */
  public static SharedForces of(JointGeometry joint, FaceForces forces, KeySharing keySharing) {
    InFace inFace =
        switch (keySharing) {
          case BY_STIFFNESS -> InFaceSharing.byStiffness(joint, forces);
          case KEYS_CARRY_ACROSS ->
              joint.keys().isEmpty()
                  ? InFaceSharing.byStiffness(joint, forces)
                  : InFaceSharing.keysAcross(joint, forces);
          case BEFORE_SLIP -> InFaceSharing.beforeSlip(joint, forces);
        };
    OffFace offFace = OffFaceSharing.of(joint, forces);
    List<BoltForce> bolts = merged(inFace.bolts(), offFace.bolts());
    FaceForces carried = carried(bolts, inFace, offFace);
    FaceForces unbalanced =
        new FaceForces(
            carried.axial() - forces.axial(),
            carried.shearY() - forces.shearY(),
            carried.shearZ() - forces.shearZ(),
            carried.torsion() - forces.torsion(),
            carried.momentY() - forces.momentY(),
            carried.momentZ() - forces.momentZ());
    double size = forces.greatest(joint.reach());
    return new SharedForces(
        forces,
        bolts,
        inFace.keys(),
        offFace.contacts(),
        inFace.movement().with(offFace.movement()),
        unbalanced,
        size > 0 ? unbalanced.greatest(joint.reach()) / size : 0);
  }

  /**
   * What was found in the face.
   *
   * @param bolts with their shears
   * @param keys with their bearing
   * @param movement in the face
   */
  record InFace(List<BoltForce> bolts, List<KeyForce> keys, FaceMovement movement) {}

  /**
   * What was found off the face.
   *
   * @param bolts with their tensions
   * @param contacts with their pressing
   * @param movement off the face
   */
  record OffFace(List<BoltForce> bolts, List<ContactForce> contacts, FaceMovement movement) {}

  private static List<BoltForce> merged(List<BoltForce> sheared, List<BoltForce> pulled) {
    BoltForce[] all = new BoltForce[sheared.size()];
    for (int i = 0; i < all.length; i++) {
      BoltForce shear = sheared.get(i);
      all[i] =
          new BoltForce(
              shear.bolt(), shear.shearY(), shear.shearZ(), shear.shear(), pulled.get(i).tension());
    }
    return List.of(all);
  }

  /** Adds up what all parts carry, from their places and forces alone. */
  private static FaceForces carried(List<BoltForce> bolts, InFace inFace, OffFace offFace) {
    double[] sum = new double[6];
    for (BoltForce bolt : bolts) {
      add(sum, bolt.bolt().y(), bolt.bolt().z(), bolt.tension(), bolt.shearY(), bolt.shearZ(), 0);
    }
    for (KeyForce key : inFace.keys()) {
      add(sum, key.key().y(), key.key().z(), 0, key.shearY(), key.shearZ(), key.twist());
    }
    for (ContactForce contact : offFace.contacts()) {
      add(sum, contact.contact().y(), contact.contact().z(), -contact.force(), 0, 0, 0);
    }
    return new FaceForces(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
  }

  private static void add(
      double[] sum, double y, double z, double alongX, double alongY, double alongZ, double twist) {
    sum[0] += alongX;
    sum[1] += alongY;
    sum[2] += alongZ;
    sum[3] += y * alongZ - z * alongY + twist;
    sum[4] += z * alongX;
    sum[5] -= y * alongX;
  }
}
