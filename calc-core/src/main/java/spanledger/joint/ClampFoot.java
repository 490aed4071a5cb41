package spanledger.joint;

import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.provenance.Source;

/**
 * A foot that holds its post by friction alone: bolts clamp a sleeve or jaws on the post.
 *
 * @param name its name in the job
 * @param size of the bolts
 * @param grade of the bolts
 * @param bolts how many clamp
 * @param surfaces how many rubbing faces each bolt presses
 * @param tightening how far the bolts are tightened
 * @param friction between clamp and post, from a test
 * @param source where the description comes from
 */
public record ClampFoot(
    String name,
    BoltSize size,
    BoltGrade grade,
    int bolts,
    int surfaces,
    Tightening tightening,
    FaceFriction friction,
    Source source)
    implements FootType {

  /**
   * @throws IllegalArgumentException if there is no bolt or no face
   */
  public ClampFoot {
    if (bolts < 1 || surfaces < 1) {
      throw new IllegalArgumentException("Foot " + name + " needs a bolt and a rubbing face.");
    }
  }
}
