package spanledger.joint;

import java.util.List;
import spanledger.provenance.Source;

/**
 * A bracketed joint of a member end: the faces through which its forces go one after the other.
 *
 * @param name its name in the job
 * @param faces the faces, each of which hands on all six forces
 * @param source where the description comes from
 */
public record BracketJoint(String name, List<JointFace> faces, Source source) implements JointType {

  /**
   * @throws IllegalArgumentException if there is no face
   */
  public BracketJoint {
    faces = List.copyOf(faces);
    if (faces.isEmpty()) {
      throw new IllegalArgumentException("Joint " + name + " needs a face.");
    }
  }
}
