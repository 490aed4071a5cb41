package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import spanledger.assembly.Side;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;

/** The structure as one sees it from a side, to scale, with levels and dimensions. */
final class ElevationPicture {

  /** A side from which all looks narrower than this share of its height or less shows nothing. */
  private static final double NARROWEST = 1e-3;

  private static final Side[] SIDES = {Side.SOUTH, Side.EAST, Side.NORTH, Side.WEST};

  private final Subject subject;
  private final Side side;
  private final Projection projection;

  private ElevationPicture(Subject subject, Side side) {
    this.subject = subject;
    this.side = side;
    projection = Projection.level(side.outward());
  }

  /** The elevations from all sides that do not look like another in a mirror. */
  static Map<String, Drawing> all(Subject subject) {
    Map<String, Drawing> album = new LinkedHashMap<>();
    Map<Side, ElevationPicture> shown = new LinkedHashMap<>();
    Map<Side, Side> mirrored = new LinkedHashMap<>();
    for (Side side : SIDES) {
      ElevationPicture picture = new ElevationPicture(subject, side);
      Placing.Extent extent = Placing.Extent.of(picture.projection, subject.places());
      if (extent.width() <= NARROWEST * Math.max(extent.height(), 1)) {
        continue;
      }
      ElevationPicture opposite = shown.get(side.opposite());
      if (opposite != null && opposite.outlines(true).equals(picture.outlines(false))) {
        mirrored.put(side.opposite(), side);
      } else {
        shown.put(side, picture);
      }
    }
    shown.forEach(
        (side, picture) ->
            album.put(
                "elevation-" + side.words(),
                picture.draw(
                    mirrored.containsKey(side)
                        ? " The " + side.opposite().words() + " side looks the same in a mirror."
                        : "")));
    return album;
  }

  /** The middle between the nearest and the farthest place, as nearness to the eye. */
  private double middle() {
    double near = Double.NEGATIVE_INFINITY;
    double far = Double.POSITIVE_INFINITY;
    for (Vector place : subject.places()) {
      near = Math.max(near, projection.nearness(place));
      far = Math.min(far, projection.nearness(place));
    }
    return (near + far) / 2;
  }

  private boolean isInFront(Segment segment, double middle) {
    Vector half = segment.from().plus(segment.to()).times(0.5);
    return projection.nearness(half) >= middle - Sizes.SAME;
  }

  /** What is in the front half, in words that can be compared with those of the opposite side. */
  private Set<String> outlines(boolean inMirror) {
    Placing.Extent extent = Placing.Extent.of(projection, subject.places());
    double middle = middle();
    Set<String> outlines = new TreeSet<>();
    for (Segment segment : subject.frame().segments()) {
      if (isInFront(segment, middle)) {
        List<String> ends = new ArrayList<>();
        for (Vector place : List.of(segment.from(), segment.to())) {
          double right = projection.right().dot(place);
          double across = inMirror ? extent.right() - right : right - extent.left();
          ends.add(String.format(Locale.ROOT, "%d %d", Math.round(across), Math.round(place.z())));
        }
        ends.sort(null);
        outlines.add(segment.member().role() + String.join(" to ", ends));
      }
    }
    return outlines;
  }

  private Drawing draw(String more) {
    Page page = new Page(subject, "Elevation from the " + side.words(), false);
    Box whole = page.room();
    Box room =
        new Box(whole.left() + 84, whole.top() + 12, whole.right() - 110, whole.bottom() - 72);
    Placing placing = Placing.toScale(projection, subject.places(), room);
    Box box = placing.box(subject.places());
    double middle = middle();
    Scene behind = new Scene();
    Scene front = new Scene();
    for (Segment segment : subject.frame().segments()) {
      boolean inFront = isInFront(segment, middle);
      BarStyle style = BarStyle.of(segment.member().role());
      (inFront ? front : behind)
          .add(
              new Bar(
                  segment.member().name(),
                  segment.from(),
                  segment.to(),
                  inFront ? style : style.behind()));
    }
    behind.draw(page.paper, page.labels, placing);
    front.draw(page.paper, page.labels, placing);
    for (Support support : subject.frame().supports()) {
      Spot at = placing.spot(support.node().place());
      Symbols.foot(page.paper, at, Symbols.Foot.of(support));
    }
    ground(page, placing, box);
    DimensionLines lines = new DimensionLines(page, placing);
    dimensions(lines, box);
    marks(lines, box);
    return page.finish(
        "Parallel projection, sizes in mm between centre lines, levels above the origin of the job;"
            + " what lies in the rear half is pale. Scale "
            + placing.words()
            + " when printed on A4."
            + more
            + Plural.leftOut(lines.leftOut()));
  }

  /** A line where feet stand. */
  private void ground(Page page, Placing placing, Box box) {
    for (double level :
        Sizes.distinct(
            subject.frame().supports().stream().map(s -> s.node().place().z()).toList())) {
      double y = placing.spot(new Vector(0, 0, level)).y() + 11;
      page.paper.line(
          Trace.through(new Spot(box.left() - 8, y), new Spot(box.right() + 8, y)),
          Pen.dashed(Ink.QUIET, 0.6, 8.0, 3.0));
    }
  }

  private void dimensions(DimensionLines lines, Box box) {
    List<Double> standing =
        Sizes.distinct(
            Levels.standing(subject).stream().map(p -> projection.right().dot(p)).toList());
    Placing.Extent extent = Placing.Extent.of(projection, subject.places());
    List<Double> overall = List.of(extent.left(), extent.right());
    List<Double> chain = new ArrayList<>(standing);
    chain.addAll(overall);
    double below = box.bottom() + 14;
    boolean two = Sizes.distinct(chain).size() > 2;
    if (two) {
      lines.level(chain, below + 22, below);
    }
    if (!two || !DimensionLines.saySum(chain)) {
      lines.level(overall, below + (two ? 56 : 22), below);
    }
    List<Double> heights = Levels.all(subject);
    List<Double> total = List.of(extent.low(), extent.high());
    List<Double> upright = new ArrayList<>(heights);
    upright.addAll(total);
    boolean several = Sizes.distinct(upright).size() > 2;
    if (several) {
      lines.upright(upright, box.left() - 30, box.left() - 4);
    }
    lines.upright(total, box.left() - (several ? 66 : 30), box.left() - 4);
  }

  private void marks(DimensionLines lines, Box box) {
    List<Double> floors = Levels.floors(subject.surfaces());
    List<Double> feet =
        Sizes.distinct(subject.frame().supports().stream().map(s -> s.node().place().z()).toList());
    for (double floor : floors) {
      boolean stands = feet.stream().anyMatch(foot -> Math.abs(foot - floor) <= Sizes.SAME);
      lines.levelMark(floor, box.right() + 22, stands ? "floor, feet" : "floor");
    }
    for (double foot : feet) {
      if (floors.stream().noneMatch(floor -> Math.abs(foot - floor) <= Sizes.SAME)) {
        lines.levelMark(foot, box.right() + 22, "feet");
      }
    }
    double top =
        subject.frame().segments().stream()
            .filter(s -> s.member().role() == MemberRole.RAIL && Levels.isLevel(s))
            .mapToDouble(s -> s.from().z())
            .max()
            .orElse(Double.NaN);
    if (!Double.isNaN(top)) {
      lines.levelMark(top, box.right() + 22, "top rail");
    }
  }
}
