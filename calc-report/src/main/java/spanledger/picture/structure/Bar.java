package spanledger.picture.structure;

import spanledger.frame.Vector;

/**
 * A straight piece of a member as drawn.
 *
 * @param member the member's name
 * @param from one end
 * @param to the other end
 * @param style how it looks
 */
record Bar(String member, Vector from, Vector to, BarStyle style) {

  Vector at(double t) {
    return from.plus(to.minus(from).times(t));
  }
}
