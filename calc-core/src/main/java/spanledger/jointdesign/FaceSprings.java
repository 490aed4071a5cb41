package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import spanledger.resistance.member.Feed;

/**
 * Where the stiffnesses of a face's parts come from, beside their values in the geometry.
 *
 * @param bolts of each bolt off the face
 * @param bed of each piece of the bed
 * @param halfKey of half a key, if there are keys; all are alike
 */
record FaceSprings(List<Feed> bolts, Feed bed, Optional<Feed> halfKey) {

  FaceSprings {
    bolts = List.copyOf(bolts);
  }
}
