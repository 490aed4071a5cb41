package spanledger.joint.sharing;

/**
 * How the member's part moves against the face at the reference point.
 *
 * @param x off the face, mm
 * @param y along +y, mm
 * @param z along +z, mm
 * @param aboutX turn about +x, rad
 * @param aboutY turn about +y, rad
 * @param aboutZ turn about +z, rad
 */
public record FaceMovement(
    double x, double y, double z, double aboutX, double aboutY, double aboutZ) {

  static FaceMovement inFace(double[] movement) {
    return new FaceMovement(0, movement[0], movement[1], movement[2], 0, 0);
  }

  static FaceMovement offFace(double[] movement) {
    return new FaceMovement(movement[0], 0, 0, 0, movement[1], movement[2]);
  }

  /** Both together. */
  FaceMovement with(FaceMovement other) {
    return new FaceMovement(
        x + other.x,
        y + other.y,
        z + other.z,
        aboutX + other.aboutX,
        aboutY + other.aboutY,
        aboutZ + other.aboutZ);
  }
}
