package spanledger.joint.sharing;

/**
 * The six forces that a member puts on the face of its joint, about the face's reference point.
 *
 * <p>The face looks along +x, towards the member, square to the bolts; y and z lie in the face,
 * right-handed. The forces are those on that face, so for a member that leaves the joint along +x
 * they are its internal forces with the frame's own signs (docs/theory/frame.md).
 *
 * @param axial along +x, N; positive pulls the member off the face
 * @param shearY along +y, N
 * @param shearZ along +z, N
 * @param torsion about +x by the right-hand rule, N·mm
 * @param momentY about +y, N·mm; positive pulls at +z
 * @param momentZ about +z, N·mm; positive pulls at -y
 */
public record FaceForces(
    double axial, double shearY, double shearZ, double torsion, double momentY, double momentZ) {

  public FaceForces {
    double sum = axial + shearY + shearZ + torsion + momentY + momentZ;
    if (!Double.isFinite(sum)) {
      throw new IllegalArgumentException("The forces at a joint's face must be finite numbers.");
    }
  }

  /**
   * The same forces about another reference point.
   *
   * @param x place of the new point along the face's normal, mm
   * @param y place of the new point in the face, mm
   * @param z place of the new point in the face, mm
   */
  public FaceForces about(double x, double y, double z) {
    return new FaceForces(
        axial,
        shearY,
        shearZ,
        torsion - (y * shearZ - z * shearY),
        momentY - (z * axial - x * shearZ),
        momentZ - (x * shearY - y * axial));
  }

  /** All six multiplied. */
  public FaceForces times(double factor) {
    return new FaceForces(
        factor * axial,
        factor * shearY,
        factor * shearZ,
        factor * torsion,
        factor * momentY,
        factor * momentZ);
  }

  /**
   * The greatest of them in size, N.
   *
   * @param reach by which moments are divided, mm
   */
  public double greatest(double reach) {
    double force = Math.max(Math.abs(axial), Math.max(Math.abs(shearY), Math.abs(shearZ)));
    double moment = Math.max(Math.abs(torsion), Math.max(Math.abs(momentY), Math.abs(momentZ)));
    return Math.max(force, moment / reach);
  }

  /**
   * The same with what is only rounding set to zero.
   *
   * @param least the greatest force, N, or moment by reach, that is rounding
   * @param reach by which moments are divided, mm
   */
  public FaceForces whole(double least, double reach) {
    double leastMoment = least * reach;
    return new FaceForces(
        counted(axial, least),
        counted(shearY, least),
        counted(shearZ, least),
        counted(torsion, leastMoment),
        counted(momentY, leastMoment),
        counted(momentZ, leastMoment));
  }

  private static double counted(double value, double least) {
    return Math.abs(value) <= least ? 0 : value;
  }
}
