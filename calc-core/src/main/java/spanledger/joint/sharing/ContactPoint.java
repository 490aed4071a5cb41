package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;

/**
 * A place where the two parts of a joint press on each other and cannot pull: a heel, a point of an
 * edge, or a piece of a bearing area.
 *
 * @param name for messages and tables
 * @param y place in the face, mm
 * @param z place in the face, mm
 * @param stiffness against pressing together, N/mm
 */
public record ContactPoint(String name, double y, double z, double stiffness) {

  public ContactPoint {
    Stiffnesses.requirePlace("Contact " + name, y, z);
    Stiffnesses.require("Contact " + name, stiffness);
  }

  /**
   * A rectangular bearing area with its middle at a place, in equal pieces.
   *
   * @param name prefix of the names of the pieces
   * @param y of the middle, mm
   * @param z of the middle, mm
   * @param width along y, mm
   * @param height along z, mm
   * @param piecesAcross along y
   * @param piecesUp along z
   * @param bedding stiffness of the bed, MPa/mm
   */
  public static List<ContactPoint> rectangle(
      String name,
      double y,
      double z,
      double width,
      double height,
      int piecesAcross,
      int piecesUp,
      double bedding) {
    if (!(width > 0) || !(height > 0) || piecesAcross < 1 || piecesUp < 1) {
      throw new IllegalArgumentException(
          "Bearing area " + name + ": width, height and both counts of pieces must be above zero.");
    }
    double stiffness = bedding * (width / piecesAcross) * (height / piecesUp);
    List<ContactPoint> points = new ArrayList<>();
    for (int row = 0; row < piecesUp; row++) {
      for (int column = 0; column < piecesAcross; column++) {
        points.add(
            new ContactPoint(
                name + " " + (row + 1) + "." + (column + 1),
                y + width * ((column + 0.5) / piecesAcross - 0.5),
                z + height * ((row + 0.5) / piecesUp - 0.5),
                stiffness));
      }
    }
    return points;
  }
}
