package spanledger.envelope;

import java.util.Comparator;
import spanledger.action.MovingLoad;

/**
 * A place of a moving load that may govern.
 *
 * @param state the combination with its fixed part
 * @param lane where the load stands
 * @param place which of the evenly spaced places on the lane
 * @param bound at least the size of the effect there
 */
record Candidate(CombinedState state, MovingLoad.Lane lane, int place, double bound) {

  /** Candidates with the highest bound first. */
  static final Comparator<Candidate> HIGHEST_FIRST =
      Comparator.comparingDouble(Candidate::bound).reversed();
}
