package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import spanledger.action.RailKind;
import spanledger.assembly.PlatformDraft.Station;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** Makes the guardrail of one side of a platform. */
final class GuardrailGenerator {

  private final PlatformDraft made;
  private final Platform platform;
  private final Guardrail guardrail;
  private final Side side;
  private final List<RailGap> gaps;

  /**
   * A generator.
   *
   * @param gaps the gates and openings of this side, from its beginning
   */
  GuardrailGenerator(PlatformDraft made, Guardrail guardrail, Side side, List<RailGap> gaps) {
    this.made = made;
    this.platform = made.platform();
    this.guardrail = guardrail;
    this.side = side;
    this.gaps = gaps;
  }

  void generate() {
    makeRail("top", RailKind.TOP, guardrail.topRail(), guardrail.height());
    for (int i = 0; i < guardrail.middleRails().size(); i++) {
      Guardrail.MiddleRail middle = guardrail.middleRails().get(i);
      String word = guardrail.middleRails().size() == 1 ? "middle" : "middle" + (i + 1);
      makeRail(word, RailKind.MIDDLE, middle.part(), middle.height());
    }
    guardrail.toeBoard().ifPresent(t -> makeRail("toe", RailKind.TOE, t.part(), t.middle()));
  }

  /** Puts rail posts on the floor where none stand yet, as planned before. */
  void makePosts(List<Double> places) {
    NavigableMap<Double, Station> stations = made.stations(side);
    int count = 0;
    for (double at : places) {
      if (made.station(side, at).isEmpty()) {
        String label = side.words() + "-post" + ++count;
        Node floor = made.onBeam(side, at, made.name(label + "/floor"));
        Vector top = floor.place().plus(new Vector(0, 0, guardrail.height()));
        DraftMember post =
            made.draft()
                .member(
                    made.name("rail-post-" + label),
                    MemberRole.RAIL_POST,
                    guardrail.railPost().orElseThrow(),
                    floor,
                    made.draft().node(made.name(label + "/top"), top));
        stations.put(at, new Station(at, label, post));
      }
    }
  }

  private void makeRail(String word, RailKind kind, Part part, double height) {
    List<Station> stations = List.copyOf(made.stations(side).values());
    double level = platform.floorLevel() + height;
    List<DraftMember> pieces = new ArrayList<>();
    List<DraftMember> posts = new ArrayList<>();
    String rail = word + "-" + side.words();
    int span = 0;
    int gate = 0;
    for (int i = 0; i + 1 < stations.size(); i++) {
      Station from = stations.get(i);
      Station to = stations.get(i + 1);
      double middle = (from.at() + to.at()) / 2;
      Optional<RailGap> gap = gaps.stream().filter(g -> g.covers(middle)).findFirst();
      if (gap.isPresent() && !gap.get().isGate()) {
        continue;
      }
      String piece = gap.isPresent() ? "gate" + ++gate : "span" + ++span;
      if (kind == RailKind.TOP) {
        made.draft()
            .stretch(new RailStretch(platform.name(), side, from.at(), to.at(), gap.isPresent()));
      }
      Node start = made.onPost(from.post(), from.label(), level, word);
      Node end = made.onPost(to.post(), to.label(), level, word);
      pieces.add(
          made.draft().member(made.name(rail + "/" + piece), MemberRole.RAIL, part, start, end));
      addNew(posts, from.post());
      addNew(posts, to.post());
    }
    if (!pieces.isEmpty()) {
      made.draft().rail(made.name(rail), kind, pieces, posts, side.outward());
    }
  }

  private static void addNew(List<DraftMember> posts, DraftMember post) {
    if (!posts.contains(post)) {
      posts.add(post);
    }
  }
}
