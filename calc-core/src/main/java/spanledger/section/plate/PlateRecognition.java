package spanledger.section.plate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;

/**
 * Recognises plates: walls between facing edges, chained where one continues another, with the kind
 * of their ends.
 *
 * <p>What holds an edge is a matter of judgement where lips, bulbs and small ribs are concerned;
 * those plates are marked unsure, and a rib does not count as support.
 */
final class PlateRecognition {

  private static final double STRAIGHT_ON = Math.cos(Math.toRadians(170));

  /**
   * A tip with more boundary than this, per thickness, is thickened to a bulb. A round tip has 1.6.
   */
  private static final double BULB_TIP = 2.5;

  /** Outstands shorter than this, per thickness of the wall they stand on, are ribs. */
  private static final double RIB = 3;

  /** Outstands shorter than this part of the plate whose edge they close are lips. */
  private static final double LIP = 0.5;

  /** Plates should make up this much of the area. */
  private static final double LEAST_SHARE = 0.6;

  private final Outline outline;
  private final Walls walls;
  private final Joints joints;
  private final Map<Joints.End, Joints.End> continued = new HashMap<>();
  private final Map<Joints.End, String> reasons = new HashMap<>();
  private final List<PlateDoubt> branches = new ArrayList<>();

  private PlateRecognition(Outline outline) {
    this.outline = outline;
    walls = Walls.of(outline.edges());
    joints = Joints.of(outline, walls);
  }

  static Plates recognise(Outline outline) {
    PlateRecognition recognition = new PlateRecognition(outline);
    for (int w = 0; w < recognition.walls.walls().size(); w++) {
      recognition.continueBeyond(new Joints.End(w, true));
      recognition.continueBeyond(new Joints.End(w, false));
    }
    return recognition.plates();
  }

  private Wall wall(Joints.End end) {
    return walls.walls().get(end.wall());
  }

  private static Joints.End otherEnd(Joints.End end) {
    return new Joints.End(end.wall(), !end.atStart());
  }

  /** Looks for the one wall that continues this one straight on or along the same circle. */
  private void continueBeyond(Joints.End end) {
    List<Joints.End> straightOn = new ArrayList<>();
    List<Joints.End> rest = new ArrayList<>();
    for (Joints.End other : joints.othersAt(end)) {
      (isStraightOn(end, other) ? straightOn : rest).add(other);
    }
    if (straightOn.size() != 1 || !rest.stream().allMatch(other -> isRib(other, wall(end)))) {
      return;
    }
    continued.put(end, straightOn.get(0));
    double mine = wall(end).thickness();
    double next = wall(straightOn.get(0)).thickness();
    if (Math.abs(mine - next) > 0.1 * Math.max(mine, next)) {
      reasons.put(end, "its thickness changes at " + joints.place(end) + "; the smaller is taken");
    } else if (!rest.isEmpty()) {
      reasons.put(end, "the rib at " + joints.place(end) + " is not counted as support");
    }
  }

  private boolean isStraightOn(Joints.End end, Joints.End other) {
    Wall one = wall(end);
    Wall two = wall(other);
    return one.isCurved() == two.isCurved()
        && one.inwardFrom(end.atStart()).dot(two.inwardFrom(other.atStart())) < STRAIGHT_ON;
  }

  private boolean isRib(Joints.End end, Wall on) {
    return joints.tip(otherEnd(end)) > 0 && wall(end).length() < RIB * on.thickness();
  }

  /** Walls in a row from one outer end to the other. */
  private record Chain(
      List<Joints.End> entries, Joints.End first, Joints.End last, boolean closed) {}

  private Plates plates() {
    Set<Integer> used = new HashSet<>();
    List<Chain> chains = new ArrayList<>();
    for (int w = 0; w < walls.walls().size(); w++) {
      if (!used.contains(w)) {
        chains.add(chain(w, used));
      }
    }
    List<Plate> plates = new ArrayList<>();
    for (Chain chain : chains) {
      plates.add(plate(chain, chains, "P" + (plates.size() + 1)));
    }
    List<PlateDoubt> doubts = new ArrayList<>(joints.doubts());
    doubts.addAll(branches);
    addShareDoubt(plates, doubts);
    return new Plates(plates, doubts);
  }

  private Chain chain(int wall, Set<Integer> used) {
    // Back to the beginning of the row, unless it closes upon itself.
    Joints.End entry = new Joints.End(wall, true);
    Joints.End before = continued.get(entry);
    boolean closed = false;
    Set<Integer> passed = new HashSet<>();
    while (before != null && passed.add(before.wall())) {
      entry = otherEnd(before);
      if (entry.wall() == wall) {
        closed = true;
        break;
      }
      before = continued.get(entry);
    }
    if (used.contains(entry.wall())) {
      // Three walls that seem to continue each other: this one is taken by itself.
      entry = new Joints.End(wall, true);
      closed = false;
      branches.add(
          new PlateDoubt(joints.place(entry), "the walls that meet near here are not told apart"));
    }
    List<Joints.End> entries = new ArrayList<>();
    Joints.End at = entry;
    while (used.add(at.wall())) {
      entries.add(at);
      Joints.End next = continued.get(otherEnd(at));
      if (next == null) {
        break;
      }
      at = next;
    }
    return new Chain(entries, entries.get(0), otherEnd(entries.get(entries.size() - 1)), closed);
  }

  private Plate plate(Chain chain, List<Chain> chains, String name) {
    double thickness = Double.POSITIVE_INFINITY;
    double turn = 0;
    List<String> because = new ArrayList<>();
    for (Joints.End entry : chain.entries()) {
      Wall wall = wall(entry);
      thickness = Math.min(thickness, wall.thickness());
      turn += entry.atStart() ? wall.turn() : -wall.turn();
      addReason(entry, because);
      addReason(otherEnd(entry), because);
    }
    Point start = joints.place(chain.first());
    Point end = joints.place(chain.last());
    if (chain.closed() && Math.abs(turn) > 1.9 * Math.PI) {
      double diameter = outerDiameter(chain);
      return new Plate(
          name, PlateKind.ROUND, start, end, 0, diameter, thickness, certainty(because));
    }
    double width = turn == 0 ? start.distance(end) : length(chain);
    if (Math.abs(turn) > Math.toRadians(10)) {
      because.add(
          "it is curved by "
              + Math.round(Math.toDegrees(Math.abs(turn)))
              + "°; its developed width is taken");
    }
    boolean swap = joints.tip(chain.first()) > 0 && joints.tip(chain.last()) == 0;
    PlateKind kind = kind(chain, chains, width, thickness, because);
    return new Plate(
        name,
        kind,
        swap ? end : start,
        swap ? start : end,
        Math.tan((swap ? -turn : turn) / 4),
        width,
        thickness,
        certainty(because));
  }

  private PlateKind kind(
      Chain chain, List<Chain> chains, double width, double thickness, List<String> because) {
    double firstTip = joints.tip(chain.first());
    double lastTip = joints.tip(chain.last());
    if (firstTip > 0 || lastTip > 0) {
      if (Math.max(firstTip, lastTip) > BULB_TIP * thickness) {
        because.add("a bulb at its edge may or may not hold it");
        return PlateKind.STIFFENED_OUTSTAND;
      }
      return firstTip > 0 && lastTip > 0 ? PlateKind.FREE : PlateKind.OUTSTAND;
    }
    Double first = outstandAt(chain.first(), chains);
    Double last = outstandAt(chain.last(), chains);
    boolean firstIsLip = first != null && first < LIP * width;
    boolean lastIsLip = last != null && last < LIP * width;
    // With short outstands at both edges the plate is the web of a channel, which they hold.
    Double lip = firstIsLip == lastIsLip ? null : firstIsLip ? first : last;
    if (lip != null) {
      because.add("the lip of " + Math.round(lip * 10) / 10.0 + " mm may or may not hold its edge");
      return PlateKind.STIFFENED_OUTSTAND;
    }
    return PlateKind.INTERNAL;
  }

  /** The width of the outstand that alone closes an edge; null if there is another support. */
  private @Nullable Double outstandAt(Joints.End end, List<Chain> chains) {
    List<Joints.End> others = joints.othersAt(end);
    if (others.size() != 1) {
      return null;
    }
    for (Chain chain : chains) {
      boolean begins = chain.first().equals(others.get(0));
      boolean ends = chain.last().equals(others.get(0));
      if ((begins && joints.tip(chain.last()) > 0) || (ends && joints.tip(chain.first()) > 0)) {
        return length(chain);
      }
    }
    return null;
  }

  private double length(Chain chain) {
    return chain.entries().stream().mapToDouble(entry -> wall(entry).length()).sum();
  }

  private double outerDiameter(Chain chain) {
    double radius = 0;
    for (Joints.End entry : chain.entries()) {
      if (wall(entry).nearEdge() instanceof ArcEdge near
          && wall(entry).farEdge() instanceof ArcEdge far) {
        radius = Math.max(radius, Math.max(near.radius(), far.radius()));
      }
    }
    return 2 * radius;
  }

  private void addReason(Joints.End end, List<String> because) {
    String reason = reasons.get(end);
    if (reason != null && !because.contains(reason)) {
      because.add(reason);
    }
  }

  private static Certainty certainty(List<String> because) {
    return because.isEmpty() ? Certainty.sure() : Certainty.unsure(String.join("; ", because));
  }

  private void addShareDoubt(List<Plate> plates, List<PlateDoubt> doubts) {
    PlaneProperties plane = PlaneProperties.of(outline);
    double share = 0;
    for (Plate plate : plates) {
      double length =
          plate.kind() == PlateKind.ROUND
              ? Math.PI * (plate.width() - plate.thickness())
              : plate.width();
      share += length * plate.thickness() / plane.area();
    }
    if (share < LEAST_SHARE) {
      doubts.add(
          new PlateDoubt(
              plane.centroid(),
              "plates make up only " + Math.round(100 * share) + " % of the section's area"));
    }
  }
}
