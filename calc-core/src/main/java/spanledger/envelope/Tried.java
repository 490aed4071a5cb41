package spanledger.envelope;

import spanledger.frame.Segment;

/**
 * A candidate that was worked out.
 *
 * @param candidate the place
 * @param segment where the effect is greatest
 * @param value the size of the effect there
 */
record Tried(Candidate candidate, Segment segment, double value) {}
