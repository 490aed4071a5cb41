package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spanledger.action.Surface;
import spanledger.assembly.Platform;
import spanledger.assembly.RailStretch;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;

/** One floor from above, to scale: bearers, posts, how the deck spans, stairs and gates. */
final class PlanPicture {

  /** A floor's posts stand at most this far from its rim, mm. */
  private static final double BESIDE = 60;

  private static final double POST = 8;
  private static final double RAIL_POST = 5.5;

  private final Subject subject;
  private final double level;
  private final List<Surface> floors = new ArrayList<>();
  private final List<Surface> flights = new ArrayList<>();

  private PlanPicture(Subject subject, double level) {
    this.subject = subject;
    this.level = level;
    for (Surface surface : subject.surfaces()) {
      if (Levels.of(surface).isPresent()) {
        if (isAtLevel(surface.corners().get(0).place())) {
          floors.add(surface);
        }
      } else if (surface.corners().stream().anyMatch(c -> isAtLevel(c.place()))) {
        flights.add(surface);
      }
    }
  }

  /** The plans of all level floors, from below. */
  static Map<String, Drawing> all(Subject subject) {
    Map<String, Drawing> album = new LinkedHashMap<>();
    List<Double> levels = Levels.floors(subject.surfaces());
    for (double level : levels) {
      String name = levels.size() == 1 ? "plan" : "plan-" + (album.size() + 1);
      album.put(name, new PlanPicture(subject, level).draw());
    }
    return album;
  }

  private boolean isAtLevel(Vector place) {
    return Math.abs(place.z() - level) <= Sizes.SAME;
  }

  private Drawing draw() {
    Page page = new Page(subject, "Plan of the floor at " + Sizes.level(level) + " mm", false);
    Box whole = page.room();
    Box room =
        new Box(whole.left() + 100, whole.top() + 26, whole.right() - 40, whole.bottom() - 116);
    List<Vector> places = new ArrayList<>();
    floors.forEach(s -> s.corners().forEach(c -> places.add(c.place())));
    List<Vector> own = List.copyOf(places);
    flights.forEach(s -> s.corners().forEach(c -> places.add(c.place())));
    Placing placing = Placing.toScale(Projection.plan(), places, room);
    Scene scene = new Scene();
    floors.forEach(scene::add);
    Set<String> stairs = new HashSet<>();
    flights.forEach(s -> stairs.addAll(nodes(s.carriedBy())));
    for (Segment segment : subject.frame().segments()) {
      if (isShown(segment, stairs)) {
        MemberRole role = segment.member().role();
        scene.add(
            new Bar(segment.member().name(), segment.from(), segment.to(), BarStyle.of(role)));
      }
    }
    scene.draw(page.paper, page.labels, placing);
    List<Vector> posts = posts(page, placing, own);
    for (Surface floor : floors) {
      PlanMarks.deckArrow(page, placing, floor);
    }
    flights.forEach(flight -> PlanMarks.stairArrow(page, placing, flight));
    gates(page, placing);
    DimensionLines lines = new DimensionLines(page, placing);
    dimensions(lines, placing.box(places), own, posts);
    names(page, placing);
    Symbols.axes(
        page.paper, placing.projection(), new Spot(whole.left() + 12, whole.bottom() - 14));
    return page.finish(
        "Seen from above, sizes in mm between centre lines. Filled squares are posts that go up or"
            + " down, open ones stand on the floor; blue arrows show how the deck spans. Scale "
            + placing.words()
            + " when printed on A4."
            + Plural.leftOut(lines.leftOut()));
  }

  private static Set<String> nodes(List<Member> members) {
    Set<String> nodes = new HashSet<>();
    members.forEach(m -> m.nodes().forEach(n -> nodes.add(n.name())));
    return nodes;
  }

  /** Members in the floor, and stringers and treads of the flights that end at it. */
  private boolean isShown(Segment segment, Set<String> stairs) {
    if (isAtLevel(segment.from()) && isAtLevel(segment.to())) {
      return true;
    }
    return segment.member().role() == MemberRole.FLOOR
        && stairs.contains(segment.first().name())
        && stairs.contains(segment.second().name());
  }

  /** Draws what stands upright at this floor; the places of what goes down from it. */
  private List<Vector> posts(Page page, Placing placing, List<Vector> own) {
    Placing.Extent rim = Placing.Extent.of(Projection.plan(), own);
    List<Vector> posts = new ArrayList<>();
    for (Segment segment : subject.frame().segments()) {
      double low = Math.min(segment.from().z(), segment.to().z());
      double high = Math.max(segment.from().z(), segment.to().z());
      Vector at = segment.from();
      boolean touches =
          Levels.isUpright(segment) && low <= level + Sizes.SAME && high >= level - Sizes.SAME;
      boolean beside =
          at.x() >= rim.left() - BESIDE
              && at.x() <= rim.right() + BESIDE
              && at.y() >= rim.low() - BESIDE
              && at.y() <= rim.high() + BESIDE;
      if (touches && beside) {
        boolean down = low < level - Sizes.SAME;
        boolean rail = segment.member().role() == MemberRole.RAIL_POST && !down;
        if (!rail) {
          posts.add(at);
        }
        double size = rail ? RAIL_POST : POST;
        Spot middle = placing.spot(at);
        page.paper.area(
            PlanMarks.square(middle, size / 2),
            rail ? Ink.WHITE : Ink.BLACK,
            Pen.full(Ink.BLACK, 1));
        page.labels.keepFree(Box.around(middle, size, size));
      }
    }
    return posts;
  }

  private void gates(Page page, Placing placing) {
    if (subject.assembly().isEmpty()) {
      return;
    }
    for (RailStretch stretch : subject.assembly().get().frame().stretches()) {
      Platform platform =
          subject.assembly().get().assembly().platform(stretch.platform()).orElseThrow();
      if (stretch.isGate() && Math.abs(platform.floorLevel() - level) <= Sizes.SAME) {
        Spot from = placing.spot(platform.onSide(stretch.side(), stretch.from()));
        Spot to = placing.spot(platform.onSide(stretch.side(), stretch.to()));
        page.paper.line(Trace.through(from, to), Pen.dashed(Ink.BLACK, 3.4, 5.0, 3.0));
        page.labels.near(from.towards(to, 0.5), "gate", Page.SIZE, Ink.BLACK, false);
      }
    }
  }

  private void names(Page page, Placing placing) {
    List<Member> members =
        subject.frame().members().stream()
            .filter(m -> m.role() == MemberRole.FLOOR)
            .filter(m -> m.nodes().stream().allMatch(n -> isAtLevel(n.place())))
            .toList();
    for (PartNames.Named named : PartNames.rows(members)) {
      Member first = named.members().get(named.members().size() / 2);
      page.labels.offer(
          placing.spot(GeneralPicture.middle(first)), named.words(), Page.SIZE, Ink.BLACK);
    }
  }

  private void dimensions(DimensionLines lines, Box box, List<Vector> own, List<Vector> posts) {
    List<Double> bearers = new ArrayList<>();
    List<Double> beams = new ArrayList<>();
    for (Segment segment : subject.frame().segments()) {
      boolean inFloor = isAtLevel(segment.from()) && isAtLevel(segment.to());
      if (inFloor && segment.member().role() == MemberRole.FLOOR) {
        if (Math.abs(segment.from().x() - segment.to().x()) <= Sizes.SAME) {
          bearers.add(segment.from().x());
        } else if (Math.abs(segment.from().y() - segment.to().y()) <= Sizes.SAME) {
          beams.add(segment.from().y());
        }
      }
    }
    Placing.Extent rim = Placing.Extent.of(Projection.plan(), own);
    List<Double> along = List.of(rim.left(), rim.right());
    List<Double> across = List.of(rim.low(), rim.high());
    List<Double> standing = new ArrayList<>(posts.stream().map(Vector::x).toList());
    flights.forEach(f -> f.corners().forEach(c -> standing.add(c.place().x())));
    chains(List.of(with(bearers, along), with(standing, along), along), box, lines, true);
    List<Double> beside = new ArrayList<>(posts.stream().map(Vector::y).toList());
    flights.forEach(f -> f.corners().forEach(c -> beside.add(c.place().y())));
    chains(List.of(with(beams, across), with(beside, across), across), box, lines, false);
  }

  private static List<Double> with(List<Double> some, List<Double> more) {
    List<Double> all = new ArrayList<>(some);
    all.addAll(more);
    return Sizes.distinct(all);
  }

  /** Chains beside each other, each once. */
  private static void chains(
      List<List<Double>> chains, Box box, DimensionLines lines, boolean level) {
    List<List<Double>> drawn = new ArrayList<>();
    for (List<Double> chain : chains) {
      boolean known = drawn.stream().anyMatch(other -> isIn(chain, other));
      if (!known) {
        double off = 40 + 32 * drawn.size();
        if (level) {
          lines.level(chain, box.bottom() + off, box.bottom() + 10);
        } else {
          lines.upright(chain, box.left() - off, box.left() - 10);
        }
        drawn.add(chain);
      }
    }
  }

  /** Whether a chain says nothing that another does not: the same, or one size out of it. */
  private static boolean isIn(List<Double> chain, List<Double> other) {
    for (int from = 0; from + chain.size() <= other.size(); from++) {
      boolean same = chain.size() == 2 || chain.size() == other.size();
      for (int i = 0; i < chain.size() && same; i++) {
        same = Math.abs(chain.get(i) - other.get(from + i)) <= Sizes.SAME;
      }
      if (same) {
        return true;
      }
    }
    return false;
  }
}
