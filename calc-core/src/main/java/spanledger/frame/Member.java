package spanledger.frame;

import java.util.List;
import spanledger.material.Alloy;
import spanledger.section.Section;

/**
 * A straight physical member through two or more nodes; continuous over the inner ones.
 *
 * @param name unique in its frame
 * @param role what it is for
 * @param nodes the nodes in order along the member, at least two
 * @param section its cross-section
 * @param alloy what it is made of
 * @param roll turn of the section about the member's x axis, rad; positive from y to z
 * @param start the joint at the first node
 * @param end the joint at the last node
 */
public record Member(
    String name,
    MemberRole role,
    List<Node> nodes,
    Section section,
    Alloy alloy,
    double roll,
    MemberEnd start,
    MemberEnd end) {

  public Member {
    nodes = List.copyOf(nodes);
    if (nodes.size() < 2) {
      throw new IllegalArgumentException("Member " + name + " needs at least two nodes.");
    }
    if (!start.axial().isLinear() && !end.axial().isLinear()) {
      throw new IllegalArgumentException(
          "Member "
              + name
              + " has play or acts one way along its axis at both ends. Give it at one end only.");
    }
  }

  /** The distance between the first and the last node, mm. */
  public double length() {
    return nodes.get(nodes.size() - 1).place().minus(nodes.get(0).place()).norm();
  }

  /** The same with other joints. */
  public Member withEnds(MemberEnd first, MemberEnd last) {
    return new Member(name, role, nodes, section, alloy, roll, first, last);
  }

  /** The same as a tie: it pulls, and goes slack instead of pushing. */
  public Member tensionOnly() {
    return withEnds(start.withAxial(Restraint.PULLS_ONLY), end);
  }

  /** The same as a strut that rests on its nodes: it pushes, and opens instead of pulling. */
  public Member compressionOnly() {
    return withEnds(start.withAxial(Restraint.PUSHES_ONLY), end);
  }
}
