package spanledger.joint.sharing;

import java.util.List;

/**
 * The six forces of a member end as its brackets carry them, about the member end and along u, v,
 * w.
 *
 * @param forces what was shared
 * @param brackets what each carries, in the order given
 * @param faces how what is beyond each face moves against what is before it, in the face's own axes
 *     about its origin, bracket by bracket
 * @param movement of the member end
 */
public record BracketShares(
    FaceForces forces,
    List<FaceForces> brackets,
    List<List<FaceMovement>> faces,
    FaceMovement movement) {

  public BracketShares {
    brackets = List.copyOf(brackets);
    faces = faces.stream().map(List::copyOf).toList();
  }
}
