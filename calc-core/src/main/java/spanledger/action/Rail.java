package spanledger.action;

import java.util.List;
import spanledger.frame.Member;
import spanledger.frame.Vector;

/**
 * A rail of a guardrail and the posts that hold it.
 *
 * @param name unique among rails
 * @param kind its place in the guardrail
 * @param members the members it is made of
 * @param posts the members that hold it up
 * @param outward level direction away from the floor, of length 1
 */
public record Rail(
    String name, RailKind kind, List<Member> members, List<Member> posts, Vector outward) {
  public Rail {
    members = List.copyOf(members);
    posts = List.copyOf(posts);
  }
}
