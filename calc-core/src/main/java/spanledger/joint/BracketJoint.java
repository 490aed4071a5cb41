package spanledger.joint;

import java.util.List;
import spanledger.provenance.Source;

/**
 * A bracketed joint of a member end: one bracket, or several side by side that share the forces.
 *
 * @param name its name in the job
 * @param brackets its brackets, at least one; names of faces are unique among all of them
 * @param source where the description comes from
 */
public record BracketJoint(String name, List<Bracket> brackets, Source source)
    implements JointType {

  /**
   * @throws IllegalArgumentException if there is no bracket
   */
  public BracketJoint {
    brackets = List.copyOf(brackets);
    if (brackets.isEmpty()) {
      throw new IllegalArgumentException("Joint " + name + " needs a bracket.");
    }
  }

  /**
   * A joint of one bracket.
   *
   * @throws IllegalArgumentException if there is no face
   */
  public static BracketJoint ofOne(String name, List<JointFace> faces, Source source) {
    return new BracketJoint(name, List.of(new Bracket("", faces, source)), source);
  }

  /** Whether several brackets share the forces. */
  public boolean isShared() {
    return brackets.size() > 1;
  }

  /** The bracket to which a face belongs. */
  public Bracket bracketOf(JointFace face) {
    return brackets.stream()
        .filter(bracket -> bracket.faces().contains(face))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No bracket has face " + face.name()));
  }

  /** The faces of all brackets, bracket by bracket. */
  public List<JointFace> faces() {
    return brackets.stream().flatMap(bracket -> bracket.faces().stream()).toList();
  }
}
