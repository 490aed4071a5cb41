package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.NetLine;

/**
 * The line across a ply, from edge to edge and from hole to hole, straight or in a zigzag, that
 * leaves the least area.
 *
 * <p>A line only goes forward across the force. So the most that lines ending at a hole take away
 * is found from the holes before it, hole by hole, and with it all lines have been tried.
 */
public final class PlyNet {

  private final Ply ply;
  private final List<FacePlace> places;
  private final boolean alongFirst;

  private PlyNet(Ply ply, List<FacePlace> places, boolean alongFirst) {
    this.ply = ply;
    this.places = places;
    this.alongFirst = alongFirst;
  }

  /**
   * The worst line.
   *
   * @param places of the holes, at least one
   * @param alongFirst whether the force acts along the first axis of the face (else the second)
   */
  public static NetLine of(
      String name, Ply ply, List<FacePlace> places, boolean alongFirst, Source source) {
    PlyNet net = new PlyNet(ply, places, alongFirst);
    List<Integer> worst = net.worst();
    List<NetLine.Slant> slants = new ArrayList<>();
    for (int i = 1; i < worst.size(); i++) {
      NetLine.Slant leg = net.leg(worst.get(i - 1), worst.get(i));
      if (leg.along() > 0) {
        slants.add(leg);
      }
    }
    return new NetLine(
        name,
        Metal.of(ply.alloy()),
        alongFirst ? ply.to().b() - ply.from().b() : ply.to().a() - ply.from().a(),
        ply.thickness(),
        ply.hole(),
        worst.size(),
        slants,
        source);
  }

  /** The holes of the worst line, in the order of the line. */
  private List<Integer> worst() {
    List<Integer> order =
        IntStream.range(0, places.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> across(places.get(i))))
            .toList();
    double[] taken = new double[places.size()];
    int[] before = new int[places.size()];
    int last = order.get(0);
    for (int at : order) {
      taken[at] = ply.hole();
      before[at] = -1;
      for (int other : order) {
        if (across(places.get(other)) < across(places.get(at))) {
          double along = taken[other] + ply.hole() - leg(other, at).added();
          if (along > taken[at]) {
            taken[at] = along;
            before[at] = other;
          }
        }
      }
      last = taken[at] > taken[last] ? at : last;
    }
    List<Integer> line = new ArrayList<>();
    for (int at = last; at >= 0; at = before[at]) {
      line.add(at);
    }
    Collections.reverse(line);
    return line;
  }

  private NetLine.Slant leg(int from, int to) {
    FacePlace one = places.get(from);
    FacePlace other = places.get(to);
    return new NetLine.Slant(
        "from bolt " + (from + 1) + " to bolt " + (to + 1),
        Math.abs(along(other) - along(one)),
        across(other) - across(one));
  }

  private double along(FacePlace place) {
    return alongFirst ? place.a() : place.b();
  }

  private double across(FacePlace place) {
    return alongFirst ? place.b() : place.a();
  }
}
