package spanledger.job;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;

/** Checks how the parts of the frame hang together. */
final class FrameChecks {

  private final Reading reading;
  private final Names<Node> nodes;
  private final Names<Member> members;
  private final Names<Support> supports;
  private final Map<String, List<Member>> membersAt = new HashMap<>();

  FrameChecks(Reading reading, Structure structure) {
    this.reading = reading;
    this.nodes = structure.nodes();
    this.members = structure.members();
    this.supports = structure.supports();
    for (Member member : structure.members().usable()) {
      for (Node node : member.nodes()) {
        membersAt.computeIfAbsent(node.name(), n -> new ArrayList<>()).add(member);
      }
    }
  }

  /** Whether surely no member goes through a node; members with faults might. */
  boolean isLoose(Node node) {
    return members.areAllUsable() && !isJoined(node);
  }

  /** Whether a member goes through a node. */
  boolean isJoined(Node node) {
    return membersAt.containsKey(node.name());
  }

  /**
   * Reports members that pass a node without being joined to it: a joint that was meant but is not
   * there.
   */
  void findMissedJoints() {
    for (Node node : nodes.usable()) {
      if (isJoined(node)) {
        members.usable().stream()
            .filter(member -> !member.nodes().contains(node) && passes(member, node.place()))
            .forEach(member -> reportMissedJoint(member, node));
      }
    }
  }

  private void reportMissedJoint(Member member, Node node) {
    reading.warning(
        members.entry(member.name()),
        "member "
            + Quoted.text(member.name())
            + " passes node "
            + Quoted.text(node.name())
            + " without being joined to it",
        "the node among the member's nodes, if they are joined",
        "add it to \"nodes\" of the member; leave it out only if they do not touch");
  }

  private static boolean passes(Member member, Vector place) {
    Vector first = member.nodes().get(0).place();
    Vector whole = member.nodes().get(member.nodes().size() - 1).place().minus(first);
    Vector arm = place.minus(first);
    double along = arm.dot(whole.unit());
    return along > Tolerance.SAME_PLACE
        && along < whole.norm() - Tolerance.SAME_PLACE
        && arm.cross(whole.unit()).norm() <= Tolerance.SAME_PLACE;
  }

  /** Reports supports of nodes that no member goes through. */
  void findLooseSupports() {
    for (Located.Entry entry : supports.entries()) {
      supports
          .usable(entry.key())
          .filter(support -> !isJoined(support.node()))
          .ifPresent(support -> reportLoose(entry, support));
    }
  }

  private void reportLoose(Located.Entry entry, Support support) {
    reading.error(
        entry,
        "a support of node "
            + Quoted.text(support.node().name())
            + ", which no member goes through",
        "supports of nodes of the frame",
        "correct the node, or add it to a member");
  }

  /** Reports parts of the frame that no support holds along X, Y or Z. */
  void findUnsupported() {
    Map<String, Support> supportAt = new HashMap<>();
    for (Support support : supports.usable()) {
      supportAt.put(support.node().name(), support);
    }
    Set<String> seen = new HashSet<>();
    for (Member member : members.usable()) {
      if (!seen.contains(member.nodes().get(0).name())) {
        List<Member> part = partWith(member, seen);
        List<Support> holding =
            part.stream()
                .flatMap(m -> m.nodes().stream())
                .distinct()
                .flatMap(node -> Optional.ofNullable(supportAt.get(node.name())).stream())
                .toList();
        reportUnheld(part, holding);
      }
    }
  }

  private List<Member> partWith(Member first, Set<String> seen) {
    Set<Member> part = new LinkedHashSet<>();
    Deque<Member> waiting = new ArrayDeque<>(List.of(first));
    while (!waiting.isEmpty()) {
      Member member = waiting.remove();
      if (part.add(member)) {
        for (Node node : member.nodes()) {
          if (seen.add(node.name())) {
            waiting.addAll(membersAt.getOrDefault(node.name(), List.of()));
          }
        }
      }
    }
    return List.copyOf(part);
  }

  private void reportUnheld(List<Member> part, List<Support> holding) {
    List<String> free =
        Stream.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z)
            .filter(
                freedom ->
                    holding.stream().allMatch(one -> one.restraint(freedom).equals(Restraint.FREE)))
            .map(Freedom::words)
            .toList();
    if (free.isEmpty()) {
      return;
    }
    String others = part.size() == 1 ? "" : " and " + (part.size() - 1) + " more joined to it";
    reading.error(
        members.entry(part.get(0).name()),
        "member "
            + Quoted.text(part.get(0).name())
            + others
            + ", which no support holds "
            + String.join(", ", free),
        "supports that hold every part of the frame along X, Y and Z",
        "add supports, or join it to a part that is held");
  }
}
