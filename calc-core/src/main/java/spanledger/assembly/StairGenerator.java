package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.RailKind;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** Makes a flight of stairs between platforms that are made already. */
final class StairGenerator {

  private final Flight line;
  private final Stair stair;
  private final Draft draft;
  private final PlatformDraft upper;
  private final Optional<PlatformDraft> lower;

  /**
   * A post or a platform's post that holds the rails of a flight.
   *
   * @param step its place: number of the nosing, 0 at the foot
   */
  private record Holder(int step, DraftMember post, String label) {}

  StairGenerator(Flight line, Draft draft, PlatformDraft upper, Optional<PlatformDraft> lower) {
    this.line = line;
    this.stair = line.stair();
    this.draft = draft;
    this.upper = upper;
    this.lower = lower;
  }

  private String name(String rest) {
    return stair.name() + "/" + rest;
  }

  void generate() {
    DraftMember left = stringer(true);
    DraftMember right = stringer(false);
    for (int step = 1; step < stair.rises(); step++) {
      Node from = tread(left, true, step);
      Node to = tread(right, false, step);
      draft.member(name("tread" + step), MemberRole.FLOOR, stair.tread(), from, to);
    }
    draft.floor(
        line.floorName(),
        List.of(left.first(), right.first(), right.last(), left.last()),
        List.of(left, right),
        0,
        Optional.empty());
    stair
        .rails()
        .ifPresent(
            rails -> {
              makeRails(rails, left, true);
              makeRails(rails, right, false);
            });
  }

  private static String word(boolean onLeft) {
    return onLeft ? "left" : "right";
  }

  private DraftMember stringer(boolean onLeft) {
    String word = word(onLeft);
    Node head = upper.onBeam(stair.side(), line.along(onLeft), name("head-" + word));
    Node foot =
        lower
            .map(
                platform ->
                    platform.onBeam(
                        stair.side().opposite(),
                        line.alongLower(platform.platform(), onLeft),
                        name("foot-" + word)))
            .orElseGet(() -> onGround(onLeft));
    return draft.member(name("stringer-" + word), MemberRole.FLOOR, stair.stringer(), foot, head);
  }

  private Node onGround(boolean onLeft) {
    Node foot = draft.node(name("foot-" + word(onLeft)), line.at(onLeft, 0));
    draft.foot(name("foot-" + word(onLeft)), foot, stair.foot());
    return foot;
  }

  private Node tread(DraftMember stringer, boolean onLeft, int step) {
    return stringer.through(
        draft.node(
            name("tread" + step + "/" + word(onLeft)),
            line.at(onLeft, (double) step / stair.rises())));
  }

  private void makeRails(Stair.StairRails rails, DraftMember stringer, boolean onLeft) {
    List<Holder> holders = holders(rails, stringer, onLeft);
    makeRail("top", RailKind.TOP, rails.topRail(), rails.height(), holders, onLeft);
    for (int i = 0; i < rails.middleRails().size(); i++) {
      Guardrail.MiddleRail middle = rails.middleRails().get(i);
      String word = rails.middleRails().size() == 1 ? "middle" : "middle" + (i + 1);
      makeRail(word, RailKind.MIDDLE, middle.part(), middle.height(), holders, onLeft);
    }
  }

  /** The posts of one side from the foot up; the platforms' own posts where they stand there. */
  private List<Holder> holders(Stair.StairRails rails, DraftMember stringer, boolean onLeft) {
    List<Holder> holders = new ArrayList<>();
    int first = 1;
    if (lower.isPresent()) {
      first = 0;
      Side side = stair.side().opposite();
      double along = line.alongLower(lower.get().platform(), onLeft);
      holders.add(
          lower
              .get()
              .station(side, along)
              .map(s -> new Holder(0, s.post(), s.label()))
              .orElseGet(() -> ownPost(rails, stringer, onLeft, 0)));
    }
    int steps = stair.rises() - first;
    int most = Math.max(1, (int) Math.floor(rails.postSpacing() / line.going() + 1e-9));
    int parts = (int) Math.ceil((double) steps / most);
    for (int i = lower.isPresent() ? 1 : 0; i < parts; i++) {
      int step = first + (int) Math.round((double) i * steps / parts);
      holders.add(ownPost(rails, stringer, onLeft, step));
    }
    holders.add(
        upper
            .station(stair.side(), line.along(onLeft))
            .map(s -> new Holder(stair.rises(), s.post(), s.label()))
            .orElseGet(() -> ownPost(rails, stringer, onLeft, stair.rises())));
    return holders;
  }

  private Holder ownPost(Stair.StairRails rails, DraftMember stringer, boolean onLeft, int step) {
    String label = word(onLeft) + "-step" + step;
    Node base =
        step == 0
            ? stringer.first()
            : step == stair.rises() ? stringer.last() : tread(stringer, onLeft, step);
    Node top =
        draft.node(name(label + "/top"), base.place().plus(new Vector(0, 0, rails.height())));
    return new Holder(
        step,
        draft.member(name("post-" + label), MemberRole.RAIL_POST, rails.post(), base, top),
        label);
  }

  private void makeRail(
      String word, RailKind kind, Part part, double height, List<Holder> holders, boolean onLeft) {
    String rail = word + "-" + word(onLeft);
    List<DraftMember> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < holders.size(); i++) {
      pieces.add(
          draft.member(
              name(rail + "/span" + (i + 1)),
              MemberRole.RAIL,
              part,
              node(holders.get(i), word, height, onLeft),
              node(holders.get(i + 1), word, height, onLeft)));
    }
    Vector out = onLeft ? line.left() : Vector.ZERO.minus(line.left());
    draft.rail(name(rail), kind, pieces, holders.stream().map(Holder::post).toList(), out);
  }

  private Node node(Holder holder, String word, double height, boolean onLeft) {
    Vector nosing = line.at(onLeft, (double) holder.step() / stair.rises());
    Vector foot = holder.post().first().place();
    Vector place = new Vector(foot.x(), foot.y(), nosing.z() + height);
    return holder
        .post()
        .through(draft.node(name(word(onLeft) + "-step" + holder.step() + "/" + word), place));
  }
}
