package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import spanledger.frame.Frame;
import spanledger.frame.Member;
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
   * @param width the width of floor carried, mm
   */
  public record Share(Segment segment, double from, double to, double width) {}

  private final Surface surface;
  private final Vector along;
  private final Vector across;
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
    double[] widths = widths(List.copyOf(lines.keySet()));
    List<Share> shares = new ArrayList<>();
    int line = 0;
    for (List<Member> members : lines.values()) {
      for (Member member : members) {
        for (Segment segment : frame.segmentsOf(member)) {
          addShare(shares, segment, widths[line]);
        }
      }
      line++;
    }
    return shares;
  }

  private double[] widths(List<Double> places) {
    int n = places.size();
    double[] widths = new double[n];
    for (int i = 0; i + 1 < n; i++) {
      double half = (places.get(i + 1) - places.get(i)) / 2;
      widths[i] += half;
      widths[i + 1] += half;
    }
    addOverhang(widths, 0, 1, places.get(0) - acrossFrom, places.get(1) - places.get(0));
    addOverhang(
        widths, n - 1, n - 2, acrossTo - places.get(n - 1), places.get(n - 1) - places.get(n - 2));
    return widths;
  }

  private void addOverhang(double[] widths, int outer, int next, double overhang, double span) {
    if (overhang < -SAME_LINE) {
      throw refusal("is carried by a member that lies outside it");
    }
    double reach = Math.max(overhang, 0);
    double lever = reach * reach / (2 * span);
    widths[outer] += reach + lever;
    widths[next] -= lever;
  }

  private void addShare(List<Share> shares, Segment segment, double width) {
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
    shares.add(new Share(segment, Math.max(from, 0), Math.min(to, segment.length()), width));
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
