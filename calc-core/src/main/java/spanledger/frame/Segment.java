package spanledger.frame;

/**
 * The part of a member between two neighbouring nodes; the unit of analysis.
 *
 * @param index its place in {@link Frame#segments()}
 * @param member the member it is part of
 * @param order its place along the member, from 0
 * @param first the node at its x = 0
 * @param second the node at its far end
 * @param start the joint at the first node (rigid between segments)
 * @param end the joint at the second node
 */
public record Segment(
    int index, Member member, int order, Node first, Node second, MemberEnd start, MemberEnd end) {

  /** The member's name, with the segment's number if the member has several. */
  public String name() {
    return member.nodes().size() == 2 ? member.name() : member.name() + "/" + (order + 1);
  }

  /** Where the member end begins: the first node plus its arm, global, mm. */
  public Vector from() {
    return first.place().plus(start.offset());
  }

  /** Where the member end stops: the second node plus its arm, global, mm. */
  public Vector to() {
    return second.place().plus(end.offset());
  }

  /** How far the member end stands back from the first node along the segment, mm. */
  public double standsBack() {
    return from().minus(first.place()).dot(to().minus(from()).unit());
  }

  /** How far the member end stands back from the second node along the segment, mm. */
  public double standsBackAtEnd() {
    return second.place().minus(to()).dot(to().minus(from()).unit());
  }

  /** The length between the member ends, mm. */
  public double length() {
    return to().minus(from()).norm();
  }
}
