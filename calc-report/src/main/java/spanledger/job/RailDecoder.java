package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;

/** Decodes the rails of guardrails. */
final class RailDecoder {

  private static final Map<String, RailKind> KINDS =
      Map.of("top", RailKind.TOP, "middle", RailKind.MIDDLE, "toe", RailKind.TOE);

  /**
   * A rail may lean this much towards its outward direction, as a cosine: about 30° of a corner cut
   * off.
   */
  private static final double MOST_ALONG = 0.5;

  private final Reading reading;
  private final Values values;
  private final Directions directions;
  private final Names<Member> members;

  RailDecoder(Reading reading, Structure structure) {
    this.reading = reading;
    this.values = new Values(reading);
    this.directions = new Directions(reading);
    this.members = structure.members();
  }

  /**
   * Decodes the rails given by hand.
   *
   * @param names the rails of the assembly; takes the others
   */
  Names<Rail> decode(Located rails, Names<Rail> names) {
    for (Located.Entry entry : reading.named(rails)) {
      if (names.isTaken(entry)) {
        continue;
      }
      names.add(entry, reading.fields("rail", entry.value()).flatMap(f -> rail(entry.key(), f)));
    }
    return names;
  }

  private Optional<Rail> rail(String name, Fields fields) {
    Optional<RailKind> kind = fields.require("kind").flatMap(k -> values.word(k, KINDS));
    List<Located> memberNames = fields.requireList("members");
    List<Located> postNames = fields.requireList("posts");
    Optional<List<Member>> rails = members.resolveAll(memberNames);
    Optional<List<Member>> posts = members.resolveAll(postNames);
    Optional<Vector> outward = fields.require("outward").flatMap(directions::level);
    boolean rightRails = rails.map(all -> checkRails(all, memberNames, outward)).orElse(false);
    boolean rightPosts = posts.map(all -> checkPosts(all, postNames, rails)).orElse(false);
    if (!rightRails
        || !rightPosts
        || kind.isEmpty()
        || rails.isEmpty()
        || posts.isEmpty()
        || outward.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Rail(name, kind.get(), rails.get(), posts.get(), outward.get()));
  }

  private boolean checkRails(List<Member> rails, List<Located> names, Optional<Vector> outward) {
    boolean right = true;
    for (int i = 0; i < rails.size(); i++) {
      Member rail = rails.get(i);
      if (rail.role() != MemberRole.RAIL) {
        right = false;
        reading.error(
            names.get(i),
            "member " + Quoted.text(rail.name()) + ", whose role is " + rail.role().words(),
            "members of role \"rail\"",
            "correct the list, or the role of the member");
      }
      Vector direction =
          rail.nodes().get(rail.nodes().size() - 1).place().minus(rail.nodes().get(0).place());
      if (outward.isPresent() && Math.abs(direction.unit().dot(outward.get())) > MOST_ALONG) {
        reading.warning(
            names.get(i),
            "member " + Quoted.text(rail.name()) + ", which runs along \"outward\"",
            "a rail that runs across its outward direction",
            "check \"outward\": it points level, away from the floor");
      }
    }
    return right;
  }

  private boolean checkPosts(
      List<Member> posts, List<Located> names, Optional<List<Member>> rails) {
    boolean right = true;
    for (int i = 0; i < posts.size(); i++) {
      Member post = posts.get(i);
      if (post.role() != MemberRole.RAIL_POST && post.role() != MemberRole.LEG) {
        right = false;
        reading.error(
            names.get(i),
            "member " + Quoted.text(post.name()) + ", whose role is " + post.role().words(),
            "members of role \"rail-post\" or \"leg\"",
            "correct the list, or the role of the member");
      } else if (rails.isPresent()
          && rails.get().stream()
              .flatMap(rail -> rail.nodes().stream())
              .noneMatch(post.nodes()::contains)) {
        right = false;
        reading.error(
            names.get(i),
            "post " + Quoted.text(post.name()) + ", which meets none of the rail's members",
            "posts that share a node with the rail",
            "correct the list, or add the common node to both");
      }
    }
    return right;
  }
}
