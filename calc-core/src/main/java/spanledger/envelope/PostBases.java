package spanledger.envelope;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Rail;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;

/**
 * Where guardrail posts stand: the highest node below a post's top at which a floor member meets
 * it, or its lowest node if there is none. The cut is in the segment above that node.
 */
public final class PostBases {

  private final Map<String, Station> bases = new HashMap<>();

  /** Finds the bases of all posts of the rails. */
  public PostBases(Frame frame, List<Rail> rails) {
    Set<Node> floorNodes = new HashSet<>();
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.FLOOR) {
        floorNodes.addAll(member.nodes());
      }
    }
    for (Rail rail : rails) {
      for (Member post : rail.posts()) {
        bases.computeIfAbsent(post.name(), name -> base(frame, post, floorNodes));
      }
    }
  }

  /** The base of a member, if it is a guardrail post. */
  public Optional<Station> of(Member member) {
    return Optional.ofNullable(bases.get(member.name()));
  }

  private static Station base(Frame frame, Member post, Set<Node> floorNodes) {
    List<Segment> segments = frame.segmentsOf(post);
    boolean upward = height(post.nodes().get(0)) <= height(post.nodes().get(segments.size()));
    Station lowest = null;
    Station onFloor = null;
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(upward ? i : segments.size() - 1 - i);
      Node below = upward ? segment.first() : segment.second();
      Station station = new Station(segment, upward ? 0 : segment.length());
      if (lowest == null) {
        lowest = station;
      }
      if (floorNodes.contains(below)) {
        onFloor = station;
      }
    }
    if (onFloor != null) {
      return onFloor;
    }
    if (lowest == null) {
      throw new IllegalStateException("A member has at least one segment.");
    }
    return lowest;
  }

  private static double height(Node node) {
    return node.place().z();
  }
}
