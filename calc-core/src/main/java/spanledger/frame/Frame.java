package spanledger.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A frame of straight members, its nodes and supports. Immutable. */
public final class Frame {

  private final List<Node> nodes;
  private final List<Member> members;
  private final List<Support> supports;
  private final List<Segment> segments;
  private final Map<String, Integer> nodeIndices = new HashMap<>();
  private final Map<String, List<Segment>> segmentsByMember = new LinkedHashMap<>();

  /**
   * Puts a frame together.
   *
   * @throws IllegalArgumentException if two nodes or members share a name or a member uses a node
   *     that is not in the list
   */
  public Frame(List<Node> nodes, List<Member> members, List<Support> supports) {
    this.nodes = List.copyOf(nodes);
    this.members = List.copyOf(members);
    this.supports = List.copyOf(supports);
    for (int i = 0; i < nodes.size(); i++) {
      if (nodeIndices.put(nodes.get(i).name(), i) != null) {
        throw new IllegalArgumentException("Two nodes are named " + nodes.get(i).name() + ".");
      }
    }
    List<Segment> all = new ArrayList<>();
    for (Member member : members) {
      List<Segment> own = split(member, all.size());
      if (segmentsByMember.put(member.name(), own) != null) {
        throw new IllegalArgumentException("Two members are named " + member.name() + ".");
      }
      all.addAll(own);
    }
    this.segments = List.copyOf(all);
  }

  private List<Segment> split(Member member, int firstIndex) {
    List<Node> along = member.nodes();
    List<Segment> own = new ArrayList<>();
    for (int i = 0; i + 1 < along.size(); i++) {
      indexOf(along.get(i));
      indexOf(along.get(i + 1));
      MemberEnd start = i == 0 ? member.start() : MemberEnd.RIGID;
      MemberEnd end = i + 2 == along.size() ? member.end() : MemberEnd.RIGID;
      own.add(new Segment(firstIndex + i, member, i, along.get(i), along.get(i + 1), start, end));
    }
    return List.copyOf(own);
  }

  /** The nodes in their given order. */
  public List<Node> nodes() {
    return nodes;
  }

  /** The members in their given order. */
  public List<Member> members() {
    return members;
  }

  /** The supports in their given order. */
  public List<Support> supports() {
    return supports;
  }

  /** All segments, members in order and each along its member. */
  public List<Segment> segments() {
    return segments;
  }

  /** The segments of one member, in order along it. */
  public List<Segment> segmentsOf(Member member) {
    List<Segment> own = segmentsByMember.get(member.name());
    if (own == null) {
      throw new IllegalArgumentException("No member is named " + member.name() + ".");
    }
    return own;
  }

  /**
   * The place of a node in {@link #nodes()}.
   *
   * @throws IllegalArgumentException if the node is not in this frame
   */
  public int indexOf(Node node) {
    Integer index = nodeIndices.get(node.name());
    if (index == null) {
      throw new IllegalArgumentException("Node " + node.name() + " is not in the frame.");
    }
    return index;
  }

  /** Whether every joint and support is linear, so that results of cases may be added. */
  public boolean isLinear() {
    return members.stream()
            .allMatch(
                m ->
                    m.start().holds().stream().allMatch(Restraint::isLinear)
                        && m.end().holds().stream().allMatch(Restraint::isLinear))
        && supports.stream().allMatch(s -> s.restraints().stream().allMatch(Restraint::isLinear));
  }
}
