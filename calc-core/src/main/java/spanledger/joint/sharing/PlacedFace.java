package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;
import spanledger.joint.FaceNormal;

/**
 * A face of a bracket where it stands at the member end.
 *
 * @param geometry in its own axes; keys are taken as bearing
 * @param normal which way it looks
 * @param origin from the member end along u, v, w, mm
 */
public record PlacedFace(JointGeometry geometry, FaceNormal normal, Vector origin) {

  /** Its own axes x, y, z as arrows along u, v, w. */
  private List<Vector> axes() {
    return List.of(
        normal.axis().direction().times(normal.sign()),
        normal.first().direction(),
        normal.second().direction());
  }

  /**
   * What shifts and turns of a body about the member end, along and about u, v, w, give of the six
   * movements here: a row for each of them in the order of {@link FaceMovement}.
   */
  private double[][] rows() {
    List<Vector> axes = axes();
    double[][] rows = new double[6][];
    for (int i = 0; i < 3; i++) {
      Vector axis = axes.get(i);
      Vector arm = origin.cross(axis);
      rows[i] = new double[] {axis.x(), axis.y(), axis.z(), arm.x(), arm.y(), arm.z()};
      rows[3 + i] = new double[] {0, 0, 0, axis.x(), axis.y(), axis.z()};
    }
    return rows;
  }

  /** The movement here of a body that moves so at the member end. */
  FaceMovement movement(double[] atEnd) {
    double[][] rows = rows();
    double[] own = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        own[i] += rows[i][j] * atEnd[j];
      }
    }
    return new FaceMovement(own[0], own[1], own[2], own[3], own[4], own[5]);
  }

  /** Its springs, by the movement at the member end. */
  List<SpringLine> springs(Softening softening) {
    double[][] rows = rows();
    List<SpringLine> springs = new ArrayList<>();
    for (SpringLine spring : InFaceSharing.bearing(geometry)) {
      springs.add(spring.through(rows[1], rows[2], rows[3]).softer(softening.inFace()));
    }
    for (SpringLine spring : OffFaceSharing.springs(geometry)) {
      springs.add(spring.through(rows[0], rows[4], rows[5]).softer(softening.offFace()));
    }
    return springs;
  }

  /** The farthest from the member end that anything can be, mm. */
  double reach() {
    return origin.norm() + geometry.reach();
  }
}
