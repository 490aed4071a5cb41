package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import spanledger.frame.Frame;
import spanledger.frame.Member;
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
   */
  public record Share(Segment segment, double from, double to, DeckStrip strip, double width) {}

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

  private List<Share> shares(Frame frame) {
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
    List<DeckStrip> strips = strips(lines);
    List<Share> shares = new ArrayList<>();
    int line = 0;
    for (List<Member> members : lines.values()) {
      DeckStrip strip = strips.get(line++);
      double width = strip.width();
      for (Member member : members) {
        for (Segment segment : frame.segmentsOf(member)) {
          addShare(shares, segment, strip, width);
        }
      }
    }
    return shares;
  }

  private List<DeckStrip> strips(SortedMap<Double, List<Member>> lines) {
    if (lines.firstKey() < acrossFrom - SAME_LINE || lines.lastKey() > acrossTo + SAME_LINE) {
      throw refusal("is carried by a member that lies outside it");
    }
    List<Node> on = lines.values().stream().map(m -> m.get(0).nodes().get(0)).toList();
    int last = on.size() - 1;
    List<DeckStrip> strips = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      strips.add(
          new DeckStrip(
              on.get(i),
              i == 0 ? Optional.empty() : Optional.of(on.get(i - 1)),
              i == last ? Optional.empty() : Optional.of(on.get(i + 1)),
              i <= 1 ? Optional.of(cornerA) : Optional.empty(),
              i >= last - 1 ? Optional.of(cornerB) : Optional.empty(),
              cornerA,
              cornerB,
              i == 1,
              i == last - 1));
    }
    return strips;
  }

  private void addShare(List<Share> shares, Segment segment, DeckStrip strip, double width) {
    double start = segment.from().dot(along);
    double end = segment.to().dot(along);
    double low = Math.max(Math.min(start, end), alongFrom);
    double high = Math.min(Math.max(start, end), alongTo);
    if (high - low < SAME_LINE) {
      return;
    }
    boolean forward = end > start;
    double from = forward ? low - start : start - high;
    double to = forward ? high - start : start - low;
    shares.add(new Share(segment, Math.max(from, 0), Math.min(to, segment.length()), strip, width));
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
