package spanledger.assembly;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.frame.MemberRole;
import spanledger.frame.Vector;

/**
 * Finds members whose axes lie in each other or cross without a joint. Braces may cross each other,
 * floor members and rails: they pass beside or under them.
 */
final class Collisions {

  /** Directions closer than this are parallel, as a sine. */
  private static final double PARALLEL = 1e-6;

  private final List<DraftMember> members;
  private final Problems problems;

  Collisions(Draft draft, Problems problems) {
    this.members = draft.members();
    this.problems = problems;
  }

  /**
   * Reports each pair of platforms or stairs whose members collide once, by the first two members.
   */
  void report(Assembly assembly) {
    Set<String> told = new HashSet<>();
    for (int i = 0; i < members.size(); i++) {
      for (int j = i + 1; j < members.size(); j++) {
        DraftMember first = members.get(i);
        DraftMember second = members.get(j);
        if (mayMeet(first, second)) {
          Optional<String> how = collision(first, second);
          if (how.isPresent() && told.add(maker(first) + " " + maker(second))) {
            boolean stair =
                assembly.stairs().stream().anyMatch(s -> s.name().equals(maker(second)));
            problems
                .at(stair ? "stairs" : "platforms", maker(second))
                .add(
                    second.name() + ", which " + how.get() + " " + first.name(),
                    "members that keep clear of each other, or meet at a joint",
                    "move "
                        + maker(second)
                        + (maker(first).equals(maker(second)) ? " or change its parts' places" : "")
                        + ", or leave one of the two out"
                        + (stair || maker(first).equals(maker(second))
                            ? ""
                            : "; platforms that adjoin share posts, beams and bearers of one part"
                                + " between the same two places; a rail there is left to the \"sides\" of one guardrail"));
          }
        }
      }
    }
  }

  private static String maker(DraftMember member) {
    return member.name().substring(0, member.name().indexOf('/'));
  }

  private static boolean mayMeet(DraftMember one, DraftMember other) {
    return near(
            one.first().place().x(),
            one.last().place().x(),
            other.first().place().x(),
            other.last().place().x())
        && near(
            one.first().place().y(),
            one.last().place().y(),
            other.first().place().y(),
            other.last().place().y())
        && near(
            one.first().place().z(),
            one.last().place().z(),
            other.first().place().z(),
            other.last().place().z());
  }

  private static boolean near(double a, double b, double c, double d) {
    return Math.min(a, b) <= Math.max(c, d) + Draft.SAME_PLACE
        && Math.min(c, d) <= Math.max(a, b) + Draft.SAME_PLACE;
  }

  private static Optional<String> collision(DraftMember one, DraftMember other) {
    double sine = one.direction().cross(other.direction()).norm();
    if (sine < PARALLEL) {
      double shared = shared(one, other);
      return shared > Draft.SAME_PLACE
          ? Optional.of("for " + Problems.mm(shared) + " lies in")
          : Optional.empty();
    }
    return crosses(one, other, sine) ? Optional.of("crosses") : Optional.empty();
  }

  /** The length of a stretch that two parallel members share. */
  private static double shared(DraftMember one, DraftMember other) {
    double from = one.distanceOf(other.first().place());
    double to = one.distanceOf(other.last().place());
    if (one.at(from).minus(other.first().place()).norm() > Draft.SAME_PLACE) {
      return 0;
    }
    return Math.min(one.length(), Math.max(from, to)) - Math.max(0, Math.min(from, to));
  }

  private static boolean crosses(DraftMember one, DraftMember other, double sine) {
    if ((isBrace(one) && !standsUp(other)) || (isBrace(other) && !standsUp(one))) {
      return false;
    }
    Vector between = other.first().place().minus(one.first().place());
    Vector normal = one.direction().cross(other.direction()).times(1 / sine);
    if (Math.abs(between.dot(normal)) > Draft.SAME_PLACE) {
      return false;
    }
    double along = between.cross(other.direction()).dot(normal) / sine;
    Vector place = one.at(along);
    if (!one.holds(place) || !other.holds(place)) {
      return false;
    }
    return one.nodes().stream()
        .noneMatch(
            node ->
                other.isJoinedTo(node) && node.place().minus(place).norm() <= 2 * Draft.SAME_PLACE);
  }

  private static boolean isBrace(DraftMember member) {
    return member.role() == MemberRole.BRACE;
  }

  private static boolean standsUp(DraftMember member) {
    return member.role() == MemberRole.LEG || member.role() == MemberRole.RAIL_POST;
  }
}
