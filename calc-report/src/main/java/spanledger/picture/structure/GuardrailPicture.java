package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spanledger.action.Rail;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;

/** The level guardrails from outside, to one scale: heights of rails, spacing of posts. */
final class GuardrailPicture {

  private static final int PER_PAGE = 4;

  private static final double HEADING = 20;

  private final Subject subject;

  private GuardrailPicture(Subject subject) {
    this.subject = subject;
  }

  /**
   * The rails of one side of a floor.
   *
   * @param floor its height, mm
   */
  private record SideRails(Vector outward, double floor, List<Rail> rails) {

    Projection projection() {
      return Projection.level(outward);
    }

    String words() {
      String facing =
          outward.y() > 0.9
              ? "north side"
              : outward.y() < -0.9
                  ? "south side"
                  : outward.x() > 0.9
                      ? "east side"
                      : outward.x() < -0.9
                          ? "west side"
                          : String.format(
                              Locale.ROOT, "side facing %.2f, %.2f", outward.x(), outward.y());
      return facing
          + " of the floor at "
          + Sizes.level(floor)
          + ": "
          + String.join(", ", rails.stream().map(Rail::name).toList());
    }
  }

  /** The pictures; none if there are no level guardrails over a floor. */
  static Map<String, Drawing> all(Subject subject) {
    GuardrailPicture picture = new GuardrailPicture(subject);
    List<SideRails> sides = picture.sides();
    Map<String, Drawing> album = new LinkedHashMap<>();
    for (int from = 0; from < sides.size(); from += PER_PAGE) {
      List<SideRails> some = sides.subList(from, Math.min(sides.size(), from + PER_PAGE));
      String name = sides.size() <= PER_PAGE ? "guardrails" : "guardrails-" + (album.size() + 1);
      album.put(name, picture.draw(some));
    }
    return album;
  }

  private List<SideRails> sides() {
    Map<String, SideRails> sides = new LinkedHashMap<>();
    for (Rail rail : subject.rails()) {
      Vector place = rail.members().get(0).nodes().get(0).place();
      boolean level =
          rail.members().stream()
              .flatMap(m -> m.nodes().stream())
              .allMatch(n -> Math.abs(n.place().z() - place.z()) <= Sizes.SAME);
      double floor =
          Levels.floors(subject.surfaces()).stream()
              .filter(z -> z < place.z())
              .reduce((low, high) -> high)
              .orElse(Double.NaN);
      if (level && !Double.isNaN(floor)) {
        String key =
            String.format(
                Locale.ROOT,
                "%.3f %.3f %d %d",
                rail.outward().x(),
                rail.outward().y(),
                Math.round(rail.outward().dot(place)),
                Math.round(floor));
        SideRails known = sides.getOrDefault(key, new SideRails(rail.outward(), floor, List.of()));
        List<Rail> rails = new ArrayList<>(known.rails());
        rails.add(rail);
        sides.put(key, new SideRails(rail.outward(), floor, List.copyOf(rails)));
      }
    }
    return List.copyOf(sides.values());
  }

  /** The rails of a side, and its posts from the floor up. */
  private List<Bar> bars(SideRails side) {
    Frame frame = subject.frame();
    List<Bar> bars = new ArrayList<>();
    Set<String> posts = new LinkedHashSet<>();
    for (Rail rail : side.rails()) {
      for (Member post : rail.posts()) {
        if (posts.add(post.name())) {
          frame.segmentsOf(post).forEach(s -> addAbove(bars, s, side.floor()));
        }
      }
    }
    for (Rail rail : side.rails()) {
      for (Member member : rail.members()) {
        for (Segment segment : frame.segmentsOf(member)) {
          bars.add(
              new Bar(member.name(), segment.from(), segment.to(), BarStyle.of(member.role())));
        }
      }
    }
    return bars;
  }

  private static void addAbove(List<Bar> bars, Segment segment, double floor) {
    if (!Levels.isUpright(segment)) {
      return;
    }
    boolean up = segment.from().z() < segment.to().z();
    Vector lower = up ? segment.from() : segment.to();
    Vector upper = up ? segment.to() : segment.from();
    if (upper.z() > floor + Sizes.SAME) {
      Vector from = new Vector(lower.x(), lower.y(), Math.max(lower.z(), floor));
      Member member = segment.member();
      bars.add(new Bar(member.name(), from, upper, BarStyle.of(member.role())));
    }
  }

  private static List<Vector> places(List<Bar> bars) {
    List<Vector> places = new ArrayList<>();
    bars.forEach(b -> places.addAll(List.of(b.from(), b.to())));
    return places;
  }

  private Drawing draw(List<SideRails> sides) {
    Page page = new Page(subject, "Guardrails", false);
    List<Box> rooms = rooms(page.room(), sides.size());
    double scale = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.size(); i++) {
      Placing own =
          Placing.toScale(sides.get(i).projection(), places(bars(sides.get(i))), rooms.get(i));
      scale = Math.min(scale, own.scale());
    }
    String scaleWords = "";
    int leftOut = 0;
    for (int i = 0; i < sides.size(); i++) {
      SideRails side = sides.get(i);
      Placing.Extent extent = Placing.Extent.of(side.projection(), places(bars(side)));
      Placing placing = Placing.centred(side.projection(), extent, scale, rooms.get(i));
      leftOut += draw(page, side, placing, rooms.get(i));
      scaleWords = placing.words();
    }
    return page.finish(
        "Seen from outside; sizes in mm between centre lines, heights over the floor, a toe-board"
            + " at its middle. Scale "
            + scaleWords
            + " when printed on A4."
            + Plural.leftOut(leftOut));
  }

  private static List<Box> rooms(Box whole, int count) {
    int across = count > 2 ? 2 : 1;
    int down = (count + across - 1) / across;
    double width = (whole.right() - whole.left()) / across;
    double height = (whole.bottom() - whole.top()) / down;
    List<Box> rooms = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int row = i / across;
      double left = whole.left() + (i - row * across) * width;
      double top = whole.top() + row * height;
      rooms.add(new Box(left + 66, top + 14 + HEADING, left + width - 20, top + height - 66));
    }
    return rooms;
  }

  private int draw(Page page, SideRails side, Placing placing, Box room) {
    List<Bar> bars = bars(side);
    Box box = placing.box(places(bars));
    page.labels.fixed(
        new Spot(room.left() - 56, room.top() - HEADING),
        shortened(page, side.words(), room.right() - room.left() + 60),
        Page.SIZE,
        Mark.Anchor.START,
        Ink.BLACK);
    double floor = placing.base() - placing.scale() * side.floor();
    page.paper.line(
        Trace.through(new Spot(box.left() - 10, floor), new Spot(box.right() + 10, floor)),
        Pen.full(Ink.BLACK, 2));
    Scene scene = new Scene();
    bars.forEach(scene::add);
    scene.draw(page.paper, page.labels, placing);
    List<Double> posts = new ArrayList<>();
    List<Double> heights = new ArrayList<>(List.of(side.floor()));
    for (Bar bar : bars) {
      boolean upright = Math.abs(bar.from().z() - bar.to().z()) > Sizes.SAME;
      if (upright) {
        posts.add(side.projection().right().dot(bar.from()));
      } else {
        heights.add(bar.from().z());
      }
    }
    DimensionLines lines = new DimensionLines(page, placing);
    lines.level(posts, floor + 30, floor + 6);
    List<Double> distinct = Sizes.distinct(posts);
    if (distinct.size() > 2 && !DimensionLines.saySum(posts)) {
      lines.level(
          List.of(distinct.get(0), distinct.get(distinct.size() - 1)), floor + 56, floor + 6);
    }
    lines.upright(heights, box.left() - 26, box.left() - 4);
    List<Double> levels = Sizes.distinct(heights);
    if (levels.size() > 2) {
      lines.upright(
          List.of(levels.get(0), levels.get(levels.size() - 1)), box.left() - 50, box.left() - 4);
    }
    return lines.leftOut();
  }

  private static String shortened(Page page, String words, double room) {
    String shown = words;
    while (shown.length() > 1 && page.lettering.width(shown + " ...", Page.SIZE) > room) {
      shown = shown.substring(0, shown.length() - 1);
    }
    return shown.equals(words) ? words : shown + " ...";
  }
}
