package spanledger.joint;

import java.util.List;
import java.util.Optional;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;

/**
 * The bolts of a joint face, all alike.
 *
 * @param size of the thread
 * @param grade of the steel
 * @param head what they bear with
 * @param places of their axes in the face, at least one
 * @param shearPlanes in how many planes each is sheared, 1 or 2
 * @param threadInShear whether a shear plane passes the thread
 * @param tightening how far they are tightened, if that is known
 */
public record FaceBolts(
    BoltSize size,
    BoltGrade grade,
    BoltHead head,
    List<FacePlace> places,
    int shearPlanes,
    boolean threadInShear,
    Optional<Tightening> tightening) {

  /** In how many planes a bolt can be sheared where the plies do not say it. */
  public static final int MOST_PLANES = 2;

  /**
   * @throws IllegalArgumentException if there is no bolt, or not one or two shear planes
   */
  public FaceBolts {
    places = List.copyOf(places);
    if (places.isEmpty() || shearPlanes < 1 || shearPlanes > MOST_PLANES) {
      throw new IllegalArgumentException("A face needs a bolt, with one or two shear planes.");
    }
  }
}
