package spanledger.joint;

import java.util.List;
import spanledger.provenance.Source;

/**
 * One of the brackets of a joint: its faces stand one behind the other, and each hands on all six
 * forces of what the bracket carries.
 *
 * @param name unique in its joint; empty if the joint has no other bracket
 * @param faces its faces, at least one
 * @param source where its description comes from
 */
public record Bracket(String name, List<JointFace> faces, Source source) {

  /**
   * @throws IllegalArgumentException if there is no face
   */
  public Bracket {
    faces = List.copyOf(faces);
    if (faces.isEmpty()) {
      throw new IllegalArgumentException("Bracket " + name + " needs a face.");
    }
  }

  /** Whether it bends away from one face to another, as an angle does. */
  public boolean isAngle() {
    return faces.stream().map(face -> face.normal().axis()).distinct().count() > 1;
  }
}
