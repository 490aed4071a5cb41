package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.assembly.Flight;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Stair;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.geometry.StairSteps;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.procedure.CompiledProcedure;

/** A flight of stairs from its right side, to scale: rises, goings, pitch, rails and posts. */
final class StairPicture {

  private static final CompiledProcedure STEPS = StairSteps.PROCEDURE.compile();

  /** How much of the floors at both ends is drawn, mm. */
  private static final double FLOOR = 350;

  private static final double ARC = 70;

  private final Subject subject;
  private final Flight flight;
  private final Stair stair;
  private final Projection projection;
  private final Vector foot;
  private final Vector head;

  private StairPicture(Subject subject, GeneratedFrame frame, Flight flight) {
    this.subject = subject;
    this.flight = flight;
    stair = flight.stair();
    Member stringer = member(frame, stair.name() + "/stringer-right");
    foot = stringer.nodes().get(0).place();
    head = stringer.nodes().get(stringer.nodes().size() - 1).place();
    Vector climbing = stair.side().opposite().outward();
    // Seen from the right of one who goes up, so that the flight rises to the right.
    projection = Projection.level(climbing.cross(new Vector(0, 0, 1)));
  }

  private static Member member(GeneratedFrame frame, String name) {
    return frame.members().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No member is named " + name + "."));
  }

  /** The pictures of all flights of a described structure. */
  static Map<String, Drawing> all(Subject subject) {
    Map<String, Drawing> album = new LinkedHashMap<>();
    subject
        .assembly()
        .ifPresent(
            built -> {
              for (Flight flight : built.frame().flights()) {
                int number = album.size() + 1;
                boolean one = built.frame().flights().size() == 1;
                album.put(
                    one ? "stair" : "stair-" + number,
                    new StairPicture(subject, built.frame(), flight).draw());
              }
            });
    return album;
  }

  private double right(Vector place) {
    return projection.right().dot(place);
  }

  /** The pieces of the right side, treads, and the floors' posts beside it, from the foot up. */
  private List<Bar> bars() {
    List<Bar> bars = new ArrayList<>();
    double side = projection.nearness(foot);
    for (Segment segment : subject.frame().segments()) {
      boolean own = segment.member().name().startsWith(stair.name() + "/");
      boolean inSide =
          Math.abs(projection.nearness(segment.from()) - side) <= Sizes.SAME
              && Math.abs(projection.nearness(segment.to()) - side) <= Sizes.SAME;
      boolean post =
          Levels.isUpright(segment)
              && (Math.abs(right(segment.from()) - right(foot)) <= Sizes.SAME
                  || Math.abs(right(segment.from()) - right(head)) <= Sizes.SAME);
      if (inSide && (own || post)) {
        clipped(segment).ifPresent(bars::add);
      }
    }
    return bars;
  }

  /** What of a segment is not below the foot. */
  private Optional<Bar> clipped(Segment segment) {
    Vector from = segment.from();
    Vector to = segment.to();
    double low = foot.z();
    if (Math.max(from.z(), to.z()) <= low + Sizes.SAME && !Levels.isLevel(segment)) {
      return Optional.empty();
    }
    Vector lower = from.z() < to.z() ? from : to;
    Vector upper = from.z() < to.z() ? to : from;
    if (lower.z() < low - Sizes.SAME) {
      double t = (low - lower.z()) / (upper.z() - lower.z());
      lower = lower.plus(upper.minus(lower).times(t));
    }
    return Optional.of(
        new Bar(segment.member().name(), lower, upper, BarStyle.of(segment.member().role())));
  }

  private Drawing draw() {
    Page page = new Page(subject, "Stair " + stair.name(), false);
    Box whole = page.room();
    Box room =
        new Box(whole.left() + 90, whole.top() + 20, whole.right() - 150, whole.bottom() - 96);
    List<Bar> bars = bars();
    List<Vector> places = new ArrayList<>();
    bars.forEach(b -> places.addAll(List.of(b.from(), b.to())));
    Vector beyond = projection.right().times(FLOOR);
    Vector before = foot.minus(flight.lower().isPresent() ? beyond : Vector.ZERO);
    places.addAll(List.of(head.plus(beyond), before));
    Placing placing = Placing.toScale(projection, places, room);
    floors(page, placing, before, head.plus(beyond));
    treads(page, placing);
    Scene scene = new Scene();
    bars.forEach(scene::add);
    scene.draw(page.paper, page.labels, placing);
    double[] steps = STEPS.run(flight.totalRise(), stair.rises(), flight.going());
    pitch(page, placing, steps[STEPS.slot("θ")], steps[STEPS.slot("θ_deg")]);
    DimensionLines lines = new DimensionLines(page, placing);
    dimensions(lines, placing.box(places), placing, bars);
    floorNames(page, placing, before, head.plus(beyond));
    Spot middle = placing.spot(foot.plus(head).times(0.5));
    page.labels.offer(
        middle,
        "stringers "
            + Sizes.mm(head.minus(foot).norm())
            + ", "
            + Sizes.mm(stair.width())
            + " apart",
        Page.SIZE,
        Ink.BLACK);
    return page.finish(
        "Seen from the right of one who goes up; sizes in mm between centre lines, heights of"
            + " rails over the line through the"
            + " nosings. Two rises and a going: "
            + Sizes.mm(steps[STEPS.slot("S")])
            + " mm. The last rise leads to the floor. Scale "
            + placing.words()
            + " when printed on A4."
            + Plural.leftOut(lines.leftOut()));
  }

  /** The floors that the flight joins, or the ground. */
  private void floors(Page page, Placing placing, Vector before, Vector beyond) {
    Pen floor = Pen.full(Ink.BLACK, 3);
    page.paper.line(Trace.through(placing.spot(head), placing.spot(beyond)), floor);
    page.labels.avoid(placing.spot(head), placing.spot(beyond));
    if (flight.lower().isPresent()) {
      page.paper.line(Trace.through(placing.spot(before), placing.spot(foot)), floor);
      page.labels.avoid(placing.spot(before), placing.spot(foot));
    } else {
      Spot ground = placing.spot(foot);
      Symbols.foot(page.paper, ground, Symbols.Foot.PINNED);
      page.paper.line(
          Trace.through(ground.plus(-40, 11), new Spot(placing.spot(head).x(), ground.y() + 11)),
          Pen.dashed(Ink.QUIET, 0.6, 8.0, 3.0));
    }
  }

  private void floorNames(Page page, Placing placing, Vector before, Vector beyond) {
    page.labels.offer(
        placing.spot(head.plus(beyond).times(0.5)), flight.upper().name(), Page.SIZE, Ink.BLACK);
    flight
        .lower()
        .ifPresent(
            lower ->
                page.labels.offer(
                    placing.spot(before.plus(foot).times(0.5)),
                    lower.name(),
                    Page.SIZE,
                    Ink.BLACK));
  }

  /** Treads as they are trodden on: from nosing to nosing. */
  private void treads(Page page, Placing placing) {
    BarStyle style = BarStyle.of(MemberRole.FLOOR);
    for (int k = 1; k < stair.rises(); k++) {
      Vector nosing = foot.plus(head.minus(foot).times((double) k / stair.rises()));
      Vector back = nosing.plus(projection.right().times(flight.going()));
      style.draw(page.paper, placing.spot(nosing), placing.spot(back));
      page.labels.avoid(placing.spot(nosing), placing.spot(back));
    }
  }

  private void pitch(Page page, Placing placing, double pitch, double degrees) {
    Spot at = placing.spot(foot);
    Spot level = at.plus(ARC, 0);
    Spot onLine = at.plus(ARC * Math.cos(pitch), -ARC * Math.sin(pitch));
    Pen pen = Pen.full(Ink.QUIET, 0.7);
    page.paper.line(Trace.through(at, at.plus(ARC + 14, 0)), pen);
    page.paper.line(
        new Trace(List.of(new Trace.Start(level), new Trace.Arc(onLine, -Math.tan(pitch / 4)))),
        pen);
    page.labels.fixed(
        at.plus(ARC * Math.cos(pitch / 2) + 8, -ARC * Math.sin(pitch / 2) + 5),
        Sizes.mm(degrees) + "°",
        Page.SIZE,
        Mark.Anchor.START,
        Ink.BLACK);
  }

  private void dimensions(DimensionLines lines, Box box, Placing placing, List<Bar> bars) {
    List<Double> rises = new ArrayList<>();
    List<Double> goings = new ArrayList<>();
    for (int k = 0; k <= stair.rises(); k++) {
      double t = (double) k / stair.rises();
      rises.add(foot.z() + (head.z() - foot.z()) * t);
      goings.add(right(foot) + (right(head) - right(foot)) * t);
    }
    lines.upright(rises, box.right() + 30, placing.spot(head).x() + 8);
    lines.level(goings, box.bottom() + 40, box.bottom() + 14);
    List<Double> posts = new ArrayList<>(List.of(right(foot), right(head)));
    List<Vector> own = new ArrayList<>();
    for (Bar bar : bars) {
      if (Math.abs(right(bar.from()) - right(bar.to())) <= Sizes.SAME
          && bar.member().startsWith(stair.name() + "/post-")) {
        posts.add(right(bar.from()));
        own.add(bar.from());
      }
    }
    lines.level(posts, box.bottom() + 72, box.bottom() + 14);
    stair.rails().ifPresent(rails -> heights(lines, box, placing, rails, own));
  }

  /** Heights of rails over the line through the nosings, at the lowest post of the flight. */
  private void heights(
      DimensionLines lines, Box box, Placing placing, Stair.StairRails rails, List<Vector> own) {
    Vector base = foot;
    double lowest = Double.POSITIVE_INFINITY;
    for (Vector place : own) {
      if (right(place) < lowest) {
        lowest = right(place);
        base = place;
      }
    }
    double t = (right(base) - right(foot)) / (right(head) - right(foot));
    double nosing = foot.z() + (head.z() - foot.z()) * t;
    List<Double> heights = new ArrayList<>(List.of(nosing, nosing + rails.height()));
    for (Guardrail.MiddleRail middle : rails.middleRails()) {
      heights.add(nosing + middle.height());
    }
    double from = placing.spot(base).x() - 6;
    lines.upright(heights, Math.min(box.left() - 26, from - 20), from);
    lines.upright(
        List.of(nosing, nosing + rails.height()), Math.min(box.left() - 58, from - 52), from);
  }
}
