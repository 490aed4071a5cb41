package spanledger.job.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.StraightEdge;

/** Joins edges end to end to closed rings. */
final class ChainJoiner {

  /** A gap that was closed and is larger than this part of the distance allowed is told. */
  private static final double TELLING = 0.1;

  private final List<DrawnEdge> edges;
  private final double within;
  private final DxfLog log;

  /** The place where the ends meet that have number 2 i (start of edge i) and 2 i + 1. */
  private final int[] meeting;

  private boolean sound = true;

  ChainJoiner(List<DrawnEdge> edges, double within, DxfLog log) {
    this.edges = edges;
    this.within = within;
    this.log = log;
    this.meeting = new int[2 * edges.size()];
  }

  /**
   * A ring and the entity that begins it.
   *
   * @param ring the ring
   * @param first the entity
   */
  record Chain(Ring ring, DxfEntity first) {}

  /** The rings; empty if an end meets none or several, which is reported. */
  List<Chain> join() {
    meet();
    findOpenAndForked();
    if (!sound) {
      return List.of();
    }
    List<Chain> rings = new ArrayList<>();
    boolean[] used = new boolean[edges.size()];
    for (int e = 0; e < edges.size(); e++) {
      if (!used[e]) {
        travel(e, used, rings);
      }
    }
    return sound ? rings : List.of();
  }

  private Point end(int number) {
    Edge edge = edges.get(number / 2).edge();
    return number % 2 == 0 ? edge.start() : edge.end();
  }

  private void meet() {
    Arrays.fill(meeting, -1);
    double widest = 0;
    for (int a = 0; a < meeting.length; a++) {
      if (meeting[a] >= 0) {
        continue;
      }
      meeting[a] = a;
      for (int b = a + 1; b < meeting.length; b++) {
        double gap = end(a).distance(end(b));
        if (meeting[b] < 0 && gap <= within) {
          meeting[b] = a;
          widest = Math.max(widest, gap);
        }
      }
    }
    if (widest > TELLING * within) {
      log.warning(
          0,
          "ends up to " + rounded(widest) + " mm apart, which were joined",
          "ends that meet",
          "nothing, if that is how exactly the section is drawn");
    }
  }

  private void findOpenAndForked() {
    for (int place = 0; place < meeting.length; place++) {
      if (meeting[place] != place) {
        continue;
      }
      List<Integer> ends = endsAt(place);
      DxfEntity entity = edges.get(place / 2).entity();
      if (ends.size() == 1) {
        sound = false;
        log.error(
            entity.line(),
            entity.words() + " ends at " + end(place) + " mm and meets nothing" + nearest(place),
            "closed chains of lines and arcs",
            "close the chain in the drawing, or allow more distance between ends"
                + " (--join, or \"joinWithin\" beside the drawing)");
      } else if (ends.size() > 2) {
        sound = false;
        log.error(
            entity.line(),
            ends.size() + " ends that meet at " + end(place) + " mm",
            "two ends at each corner",
            "remove what is drawn twice or does not belong to the outline, or move it to a layer"
                + " that is left out");
      }
    }
  }

  private List<Integer> endsAt(int place) {
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < meeting.length; i++) {
      if (meeting[i] == place) {
        ends.add(i);
      }
    }
    return ends;
  }

  private String nearest(int open) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < meeting.length; i++) {
      if (i / 2 != open / 2) {
        least = Math.min(least, end(open).distance(end(i)));
      }
    }
    return Double.isFinite(least)
        ? "; the nearest other end is " + rounded(least) + " mm away"
        : "";
  }

  private void travel(int first, boolean[] used, List<Chain> rings) {
    List<Edge> chain = new ArrayList<>();
    int edge = first;
    boolean forward = true;
    while (!used[edge]) {
      used[edge] = true;
      int leaving = 2 * edge + (forward ? 1 : 0);
      chain.add(snapped(edge, forward));
      int next = other(leaving);
      edge = next / 2;
      forward = next % 2 == 0;
    }
    DxfEntity entity = edges.get(first).entity();
    try {
      rings.add(new Chain(new Ring(chain), entity));
    } catch (InvalidOutlineException e) {
      sound = false;
      e.faults()
          .forEach(
              fault ->
                  log.error(
                      entity.line(),
                      "at " + fault.where() + " mm: " + fault.message(),
                      "a closed chain that encloses an area",
                      "correct the drawing; look for something drawn twice"));
    }
  }

  private int other(int end) {
    for (int i = 0; i < meeting.length; i++) {
      if (i != end && meeting[i] == meeting[end]) {
        return i;
      }
    }
    throw new IllegalStateException("An end that meets nothing was not reported.");
  }

  /** The edge in the direction of travel, between the places where its ends meet others. */
  private Edge snapped(int number, boolean forward) {
    Point start = end(meeting[2 * number + (forward ? 0 : 1)]);
    Point end = end(meeting[2 * number + (forward ? 1 : 0)]);
    if (edges.get(number).edge() instanceof ArcEdge arc) {
      return new ArcEdge(start, end, forward ? arc.bulge() : -arc.bulge());
    }
    return new StraightEdge(start, end);
  }

  private static double rounded(double length) {
    return Math.rint(length * 1e4) / 1e4;
  }
}
