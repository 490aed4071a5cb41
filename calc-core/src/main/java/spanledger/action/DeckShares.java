package spanledger.action;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * How much of a floor each of its members carries.
 *
 * <p>Deck panels are taken to span simply from member to member; beyond the outer members they
 * cantilever, which loads the outer member more and relieves the next one (statics of a beam with
 * an overhang).
 */
public final class DeckShares {

  /** Members closer than this across the floor count as one line, mm. */
  private static final double SAME_LINE = 1.0;

  /** Lengths below this are rounding of places, mm. */
  private static final double ROUNDING = 1e-6;

  /** How far directions may stray from parallel or square, as a sine. */
  private static final double SQUARENESS = 1e-3;

  /**
   * A stretch of a segment that carries a width of floor.
   *
   * @param segment the segment
   * @param from start of the stretch from the segment's start, mm
   * @param to end of the stretch, mm
   * @param strip the strip of floor carried
   * @param width its width, mm
   * @param before floor between the node before the segment and a member end that stands back from
   *     it, mm along the member
   * @param after likewise after the segment, mm
   */
  public record Share(
      Segment segment,
      double from,
      double to,
      DeckStrip strip,
      double width,
      double before,
      double after) {

    /** The area of floor carried, mm². */
    public double area() {
      return (to - from + before + after) * width;
    }
  }

  /**
   * A part of a floor that may be loaded by itself.
   *
   * @param name unique on its floor; empty if the floor is one part
   * @param shares what its members carry of it
   */
  public record Bay(String name, List<Share> shares) {
    public Bay {
      shares = List.copyOf(shares);
    }
  }

  private final Surface surface;
  private final Vector along;
  private final Vector across;
  private final Node cornerA;
  private final Node cornerB;
  private double alongFrom = Double.POSITIVE_INFINITY;
  private double alongTo = Double.NEGATIVE_INFINITY;
  private double acrossFrom = Double.POSITIVE_INFINITY;
  private double acrossTo = Double.NEGATIVE_INFINITY;

  private DeckShares(Surface surface) {
    this.surface = surface;
    if (surface.corners().size() != 4) {
      throw refusal("has " + surface.corners().size() + " corners; it must be a rectangle");
    }
    along = direction(surface.carriedBy().get(0));
    Vector corner = surface.corners().get(0).place();
    Vector one = surface.corners().get(1).place().minus(corner);
    Vector other = surface.corners().get(3).place().minus(corner);
    boolean firstIsAlong = Math.abs(one.unit().dot(along)) > Math.abs(other.unit().dot(along));
    across = (firstIsAlong ? other : one).unit();
    cornerA = surface.corners().get(0);
    cornerB = surface.corners().get(firstIsAlong ? 3 : 1);
    requireRectangle((firstIsAlong ? one : other).unit());
    for (var node : surface.corners()) {
      double t = node.place().dot(along);
      double s = node.place().dot(across);
      alongFrom = Math.min(alongFrom, t);
      alongTo = Math.max(alongTo, t);
      acrossFrom = Math.min(acrossFrom, s);
      acrossTo = Math.max(acrossTo, s);
    }
  }

  /**
   * The shares of a floor's members.
   *
   * @throws IllegalArgumentException if the floor is not a rectangle along and square to its
   *     members, or has fewer than two lines of members
   */
  public static List<Share> of(Surface surface, Frame frame) {
    return new DeckShares(surface).shares(frame);
  }

  /**
   * The parts of a floor that may be loaded or not, each with the shares of its members.
   *
   * @throws IllegalArgumentException as {@link #of}
   */
  public static List<Bay> bays(Surface surface, Frame frame) {
    return new DeckShares(surface).bays(frame);
  }

  /**
   * The spans of the decking of a floor.
   *
   * @throws IllegalArgumentException as {@link #of}
   */
  public static DeckSpans spans(Surface surface) {
    return new DeckShares(surface).spans();
  }

  private DeckSpans spans() {
    List<List<Member>> lines = lines();
    int widest = 1;
    for (int i = 2; i < lines.size(); i++) {
      if (gap(lines, i) > gap(lines, widest)) {
        widest = i;
      }
    }
    double overhang =
        Math.max(place(lines.get(0)) - acrossFrom, acrossTo - place(lines.get(lines.size() - 1)));
    return new DeckSpans(
        gap(lines, widest),
        lines.get(widest - 1).get(0).name(),
        lines.get(widest).get(0).name(),
        Math.max(overhang, 0));
  }

  private double gap(List<List<Member>> lines, int line) {
    return place(lines.get(line)) - place(lines.get(line - 1));
  }

  private List<Share> shares(Frame frame) {
    List<List<Member>> lines = lines();
    return shares(frame, lines, 0, lines.size() - 1, alongFrom, alongTo);
  }

  private List<Bay> bays(Frame frame) {
    List<List<Member>> lines = lines();
    TreeSet<Integer> across = new TreeSet<>(List.of(0, lines.size() - 1));
    TreeSet<Double> parts = new TreeSet<>(List.of(alongFrom, alongTo));
    if (surface.bays() != FloorBays.WHOLE) {
      for (Node node : stands(frame)) {
        across.add(nearestLine(lines, node));
        double t = node.place().dot(along);
        if (parts.stream().allMatch(p -> Math.abs(p - t) > SAME_LINE)) {
          parts.add(t);
        }
      }
    }
    if (surface.bays() == FloorBays.STRIPS) {
      for (int line = 0; line < lines.size(); line++) {
        across.add(line);
      }
    }
    List<Bay> bays = new ArrayList<>();
    List<Integer> atLines = List.copyOf(across);
    List<Double> atParts = List.copyOf(parts);
    int count = (atLines.size() - 1) * (atParts.size() - 1);
    for (int i = 0; i + 1 < atLines.size(); i++) {
      for (int j = 0; j + 1 < atParts.size(); j++) {
        bays.add(
            new Bay(
                count == 1 ? "" : "bay " + (bays.size() + 1),
                shares(
                    frame,
                    lines,
                    atLines.get(i),
                    atLines.get(i + 1),
                    atParts.get(j),
                    atParts.get(j + 1))));
      }
    }
    return bays;
  }

  /** Nodes of floor members in the floor at which a leg meets them or a support holds them. */
  private List<Node> stands(Frame frame) {
    Set<Node> held = new LinkedHashSet<>();
    frame.supports().forEach(support -> held.add(support.node()));
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.LEG) {
        held.addAll(member.nodes());
      }
    }
    Set<Node> found = new LinkedHashSet<>();
    for (Member member : frame.members()) {
      if (member.role() == MemberRole.FLOOR) {
        member.nodes().stream().filter(held::contains).filter(this::isOn).forEach(found::add);
      }
    }
    return List.copyOf(found);
  }

  private boolean isOn(Node node) {
    double t = node.place().dot(along);
    double s = node.place().dot(across);
    double above =
        node.place().minus(surface.corners().get(0).place()).dot(along.cross(across).unit());
    return t > alongFrom - SAME_LINE
        && t < alongTo + SAME_LINE
        && s > acrossFrom - SAME_LINE
        && s < acrossTo + SAME_LINE
        && Math.abs(above) < SAME_LINE;
  }

  private int nearestLine(List<List<Member>> lines, Node node) {
    double s = node.place().dot(across);
    int nearest = 0;
    for (int i = 1; i < lines.size(); i++) {
      if (Math.abs(place(lines.get(i)) - s) < Math.abs(place(lines.get(nearest)) - s)) {
        nearest = i;
      }
    }
    return nearest;
  }

  private double place(List<Member> line) {
    return line.get(0).nodes().get(0).place().dot(across);
  }

  /** The members by the lines they lie on, in order across the floor. */
  private List<List<Member>> lines() {
    TreeMap<Double, List<Member>> lines = new TreeMap<>();
    for (Member member : surface.carriedBy()) {
      if (direction(member).cross(along).norm() > SQUARENESS) {
        throw refusal("is carried by " + member.name() + ", which is not parallel to the others");
      }
      double place = member.nodes().get(0).place().dot(across);
      Double known = lines.floorKey(place + SAME_LINE);
      boolean joins = known != null && place - known <= SAME_LINE;
      lines
          .computeIfAbsent(joins && known != null ? known : place, s -> new ArrayList<>())
          .add(member);
    }
    if (lines.size() < 2) {
      throw refusal("is carried along one line only; it needs at least two");
    }
    if (lines.firstKey() < acrossFrom - SAME_LINE || lines.lastKey() > acrossTo + SAME_LINE) {
      throw refusal("is carried by a member that lies outside it");
    }
    return List.copyOf(lines.values());
  }

  /**
   * The shares of a part of the floor.
   *
   * @param first the line of members at which it begins; overhang beyond the floor's first line
   *     belongs to it if that is this one
   * @param last the line at which it ends, likewise
   * @param from where it begins along the members, mm
   * @param to where it ends, mm
   */
  private List<Share> shares(
      Frame frame, List<List<Member>> lines, int first, int last, double from, double to) {
    List<Share> shares = new ArrayList<>();
    for (int line = first; line <= last; line++) {
      DeckStrip strip = strip(lines, line, first, last);
      double width = strip.width();
      for (Member member : lines.get(line)) {
        for (Segment segment : frame.segmentsOf(member)) {
          addShare(shares, segment, strip, width, from, to);
        }
      }
    }
    return shares;
  }

  private DeckStrip strip(List<List<Member>> lines, int line, int first, int last) {
    boolean overhangBefore = first == 0 && line <= 1;
    boolean overhangAfter = last == lines.size() - 1 && line >= last - 1;
    return new DeckStrip(
        node(lines, line),
        line == first ? Optional.empty() : Optional.of(node(lines, line - 1)),
        line == last ? Optional.empty() : Optional.of(node(lines, line + 1)),
        overhangBefore ? Optional.of(cornerA) : Optional.empty(),
        overhangAfter ? Optional.of(cornerB) : Optional.empty(),
        cornerA,
        cornerB,
        overhangBefore && line == 1,
        overhangAfter && line == last - 1);
  }

  private static Node node(List<List<Member>> lines, int line) {
    return lines.get(line).get(0).nodes().get(0);
  }

  private void addShare(
      List<Share> shares,
      Segment segment,
      DeckStrip strip,
      double width,
      double partFrom,
      double partTo) {
    double start = segment.from().dot(along);
    double end = segment.to().dot(along);
    double low = Math.max(Math.min(start, end), partFrom);
    double high = Math.min(Math.max(start, end), partTo);
    if (high - low < SAME_LINE) {
      return;
    }
    boolean forward = end > start;
    double from = forward ? low - start : start - high;
    double to = forward ? high - start : start - low;
    double nodeBefore = segment.first().place().dot(along);
    double nodeAfter = segment.second().place().dot(along);
    shares.add(
        new Share(
            segment,
            Math.max(from, 0),
            Math.min(to, segment.length()),
            strip,
            width,
            forward
                ? common(nodeBefore, start, partFrom, partTo)
                : common(start, nodeBefore, partFrom, partTo),
            forward
                ? common(end, nodeAfter, partFrom, partTo)
                : common(nodeAfter, end, partFrom, partTo)));
  }

  /** What two stretches have in common; nothing if it is only rounding. */
  private static double common(double from, double to, double otherFrom, double otherTo) {
    double length = Math.min(to, otherTo) - Math.max(from, otherFrom);
    return length > ROUNDING ? length : 0;
  }

  private void requireRectangle(Vector parallelSide) {
    Vector corner = surface.corners().get(0).place();
    Vector opposite = surface.corners().get(2).place();
    Vector closing =
        surface
            .corners()
            .get(1)
            .place()
            .plus(surface.corners().get(3).place())
            .minus(corner)
            .minus(opposite);
    if (closing.norm() > SAME_LINE
        || parallelSide.cross(along).norm() > SQUARENESS
        || Math.abs(across.dot(along)) > SQUARENESS) {
      throw refusal("is not a rectangle with sides along and square to its members");
    }
  }

  private static Vector direction(Member member) {
    return member
        .nodes()
        .get(member.nodes().size() - 1)
        .place()
        .minus(member.nodes().get(0).place())
        .unit();
  }

  private IllegalArgumentException refusal(String what) {
    return new IllegalArgumentException("Surface " + surface.name() + " " + what + ".");
  }
}
