package spanledger.action;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** Members end to end in one line, as paths of loads. */
public final class Chains {

  /** How far members of a chain may stray from one line, as a sine. */
  private static final double STRAIGHT = 1e-3;

  private final Frame frame;

  public Chains(Frame frame) {
    this.frame = frame;
  }

  /** The longest straight paths that some members make, each member in one of them. */
  public List<LoadPath> straight(List<Member> members, Vector direction) {
    List<LoadPath> paths = new ArrayList<>();
    Set<String> used = new HashSet<>();
    for (Member member : members) {
      if (used.add(member.name())) {
        List<Member> chain = new ArrayList<>(List.of(member));
        grow(chain, members, used, member.nodes().get(member.nodes().size() - 1), false);
        grow(chain, members, used, member.nodes().get(0), true);
        paths.add(path(chain, direction).orElseThrow());
      }
    }
    return paths;
  }

  private static void grow(
      List<Member> chain, List<Member> members, Set<String> used, Node from, boolean atFront) {
    Node end = from;
    boolean grown = true;
    while (grown) {
      grown = false;
      Member last = chain.get(atFront ? 0 : chain.size() - 1);
      for (Member next : members) {
        if (!used.contains(next.name()) && follows(last, next, end)) {
          used.add(next.name());
          chain.add(atFront ? 0 : chain.size(), next);
          end = otherEnd(next, end);
          grown = true;
          break;
        }
      }
    }
  }

  private static boolean follows(Member one, Member next, Node at) {
    Node start = next.nodes().get(0);
    Node end = next.nodes().get(next.nodes().size() - 1);
    if (!start.equals(at) && !end.equals(at)) {
      return false;
    }
    Vector before = at.place().minus(otherEnd(one, at).place()).unit();
    Vector after = otherEnd(next, at).place().minus(at.place()).unit();
    return before.dot(after) > 0 && before.cross(after).norm() < STRAIGHT;
  }

  private static Node otherEnd(Member member, Node end) {
    Node start = member.nodes().get(0);
    return start.equals(end) ? member.nodes().get(member.nodes().size() - 1) : start;
  }

  /**
   * The path along members in order, each of which begins where the one before ends.
   *
   * @param direction in which the load acts, global, of length 1
   * @return empty if they do not follow each other
   */
  public Optional<LoadPath> path(List<Member> members, Vector direction) {
    List<LoadPath.Lane> lanes = new ArrayList<>();
    Node end = members.size() == 1 ? members.get(0).nodes().get(0) : free(members);
    for (Member member : members) {
      List<Segment> segments = frame.segmentsOf(member);
      boolean forward = member.nodes().get(0).equals(end);
      if (!forward && !member.nodes().get(member.nodes().size() - 1).equals(end)) {
        return Optional.empty();
      }
      for (int i = 0; i < segments.size(); i++) {
        Segment segment = segments.get(forward ? i : segments.size() - 1 - i);
        lanes.add(new LoadPath.Lane(segment, direction, forward));
      }
      end = otherEnd(member, end);
    }
    String first = members.get(0).name();
    String last = members.get(members.size() - 1).name();
    return Optional.of(new LoadPath(members.size() == 1 ? first : first + " to " + last, lanes));
  }

  /** The end of the first member that the second does not share. */
  private static Node free(List<Member> members) {
    Node start = members.get(0).nodes().get(0);
    Member second = members.get(1);
    boolean shared =
        second.nodes().get(0).equals(start)
            || second.nodes().get(second.nodes().size() - 1).equals(start);
    return shared ? otherEnd(members.get(0), start) : start;
  }
}
