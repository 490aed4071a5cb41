package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Spot;
import spanledger.picture.page.Box;

/** The whole structure from above and beside, with the names of its parts. */
final class GeneralPicture {

  /** Nodes are named where there are no more than this. */
  private static final int MOST_NODES = 24;

  private static final double RIM = 26;

  private final Subject subject;
  private final Page page;
  private final Placing placing;

  private GeneralPicture(Subject subject) {
    this.subject = subject;
    page = new Page(subject, "General view", true);
    placing = Placing.filling(subject.general(), subject.places(), page.room(RIM));
  }

  static Drawing of(Subject subject) {
    return new GeneralPicture(subject).draw();
  }

  /** All members by what they are for, and the floors. */
  static Scene scene(Subject subject) {
    Scene scene = new Scene();
    subject.surfaces().forEach(scene::add);
    for (Segment segment : subject.frame().segments()) {
      scene.add(
          new Bar(
              segment.member().name(),
              segment.from(),
              segment.to(),
              BarStyle.of(segment.member().role())));
    }
    return scene;
  }

  private Drawing draw() {
    scene(subject).draw(page.paper, page.labels, placing);
    boolean arms = false;
    for (Segment segment : subject.frame().segments()) {
      Symbols.joints(page.paper, segment, placing);
      arms |= Symbols.arms(page.paper, segment, placing);
    }
    Set<Symbols.Foot> feet = EnumSet.noneOf(Symbols.Foot.class);
    for (Support support : subject.frame().supports()) {
      Symbols.Foot foot = Symbols.Foot.of(support);
      feet.add(foot);
      Spot at = placing.spot(support.node().place());
      Symbols.foot(page.paper, at, foot);
      page.labels.keepFree(Box.around(at.plus(0, 5), 12, 12));
    }
    Symbols.axes(
        page.paper,
        placing.projection(),
        new Spot(page.room().left() + 34, page.room().bottom() - 30));
    page.labels.keepFree(
        Box.around(new Spot(page.room().left() + 34, page.room().bottom() - 30), 76, 76));
    int left = names();
    legend(feet, arms);
    return page.finish(
        "All members as analysed, in parallel projection; floors are shaded and what lies behind"
            + " them is pale."
            + " Names are those of the sheets and of results.json"
            + (left == 0
                ? "."
                : "; " + left + " names found no room here and stand in the sheet Segments."));
  }

  /** Writes names where there is room; says how many found none. */
  private int names() {
    int left = 0;
    List<PartNames.Named> named = new ArrayList<>(PartNames.of(subject.frame().members()));
    named.sort(Comparator.comparingInt(n -> n.members().get(0).role().ordinal()));
    for (PartNames.Named one : named) {
      if (!page.labels.offer(anchor(one), one.words(), Page.SIZE, Ink.BLACK)) {
        left++;
      }
    }
    if (subject.frame().nodes().size() <= MOST_NODES) {
      for (Node node : subject.frame().nodes()) {
        Spot at = placing.spot(node.place());
        if (!page.labels.offer(at, node.name(), Page.SIZE - 1, Ink.QUIET)) {
          left++;
        }
      }
    }
    return left;
  }

  /** The middle of the member of a row that is nearest to the eye. */
  private Spot anchor(PartNames.Named named) {
    Member nearest = named.members().get(0);
    for (Member member : named.members()) {
      if (nearness(member) > nearness(nearest)) {
        nearest = member;
      }
    }
    return placing.spot(middle(nearest));
  }

  private double nearness(Member member) {
    return placing.projection().nearness(middle(member));
  }

  static Vector middle(Member member) {
    Vector first = member.nodes().get(0).place();
    Vector last = member.nodes().get(member.nodes().size() - 1).place();
    return first.plus(last).times(0.5);
  }

  private void legend(Set<Symbols.Foot> feet, boolean arms) {
    page.legend.heading("Members");
    for (MemberRole role : MemberRole.values()) {
      if (subject.frame().members().stream().anyMatch(m -> m.role() == role)) {
        page.legend.sample(BarStyle.of(role)::sample, role.words());
      }
    }
    page.legend.heading("Supports and joints");
    for (Symbols.Foot foot : feet) {
      page.legend.sample((paper, at) -> Symbols.foot(paper, at.plus(0, -4), foot), foot.words());
    }
    boolean pinned = false;
    boolean sprung = false;
    for (Segment segment : subject.frame().segments()) {
      for (var end : List.of(segment.start(), segment.end())) {
        pinned |= Symbols.isPinned(end);
        sprung |= Symbols.turns(end) && !Symbols.isPinned(end);
      }
    }
    if (pinned) {
      page.legend.sample(
          (paper, at) -> Symbols.joint(paper, at, true), "joint free to turn about an axis");
    }
    if (sprung) {
      page.legend.sample(
          (paper, at) -> Symbols.joint(paper, at, false), "joint that turns against a spring");
    }
    if (arms) {
      page.legend.sample(
          (paper, at) -> Symbols.arm(paper, at.plus(-12, 0), at.plus(12, 0)),
          "rigid arm from node to member");
    }
  }
}
