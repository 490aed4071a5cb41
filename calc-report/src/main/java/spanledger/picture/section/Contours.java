package spanledger.picture.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/**
 * Where a field over a section reaches a level.
 *
 * <p>Regions are made of clipped triangles whose common sides cancel, so that what is left is the
 * rim of the region.
 */
final class Contours {

  private final FieldSamples samples;
  private final View view;
  private final double[] values;

  /** A corner of a region: a node (b = a), or where the level crosses the side between two. */
  private record Corner(int a, int b) {
    static Corner at(int node) {
      return new Corner(node, node);
    }

    static Corner between(int one, int other) {
      return new Corner(Math.min(one, other), Math.max(one, other));
    }

    boolean isCut() {
      return a != b;
    }
  }

  /** The rim of a region, and the part of it inside of the section. */
  record Region(Trace rim, Trace line) {}

  /**
   * Prepares a field.
   *
   * @param values at the places of the samples
   */
  Contours(FieldSamples samples, double[] values, View view) {
    this.samples = samples;
    this.values = values.clone();
    this.view = view;
  }

  double least() {
    double least = Double.POSITIVE_INFINITY;
    for (double value : values) {
      least = Math.min(least, value);
    }
    return least;
  }

  double greatest() {
    double greatest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      greatest = Math.max(greatest, value);
    }
    return greatest;
  }

  /** The region in which the field is not below a level. */
  Region above(double level) {
    Sides sides = new Sides();
    samples.triangles().forEach(triangle -> clip(triangle, level, sides));
    Map<Corner, List<Corner>> cuts = new LinkedHashMap<>();
    sides.next.forEach(
        (from, ends) ->
            ends.forEach(
                to -> {
                  if (from.isCut() && to.isCut()) {
                    cuts.computeIfAbsent(from, f -> new ArrayList<>()).add(to);
                  }
                }));
    return new Region(trace(sides.copy(), level, true), trace(cuts, level, false));
  }

  private void clip(int[] nodes, double level, Sides sides) {
    List<Corner> corners = new ArrayList<>(4);
    for (int i = 0; i < 3; i++) {
      int node = nodes[i];
      int next = nodes[(i + 1) % 3];
      boolean in = values[node] >= level;
      if (in) {
        corners.add(Corner.at(node));
      }
      if (in != values[next] >= level) {
        corners.add(Corner.between(node, next));
      }
    }
    for (int i = 0; i < corners.size(); i++) {
      sides.add(corners.get(i), corners.get((i + 1) % corners.size()));
    }
  }

  /** Directed sides; a side and its opposite cancel. */
  private static final class Sides {
    private final Map<Corner, List<Corner>> next = new LinkedHashMap<>();

    void add(Corner from, Corner to) {
      List<Corner> back = next.get(to);
      if (back != null && back.remove(from)) {
        if (back.isEmpty()) {
          next.remove(to);
        }
        return;
      }
      next.computeIfAbsent(from, f -> new ArrayList<>(1)).add(to);
    }

    Map<Corner, List<Corner>> copy() {
      Map<Corner, List<Corner>> copy = new LinkedHashMap<>();
      next.forEach((from, ends) -> copy.put(from, new ArrayList<>(ends)));
      return copy;
    }
  }

  /** Chains sides into runs; takes them out of the map. */
  private Trace trace(Map<Corner, List<Corner>> sides, double level, boolean closed) {
    List<Trace.Move> moves = new ArrayList<>();
    LinkedHashSet<Corner> starts = new LinkedHashSet<>(sides.keySet());
    if (!closed) {
      // Open lines are followed from their ends first, then what is left are loops.
      Map<Corner, Integer> ending = new HashMap<>();
      sides.values().forEach(ends -> ends.forEach(end -> ending.merge(end, 1, Integer::sum)));
      LinkedHashSet<Corner> first = new LinkedHashSet<>(starts);
      first.removeIf(ending::containsKey);
      first.addAll(starts);
      starts = first;
    }
    for (Corner start : starts) {
      while (sides.containsKey(start)) {
        List<Spot> run = run(sides, start, level);
        moves.addAll(Trace.through(Simplified.of(run), closed).moves());
      }
    }
    return new Trace(moves);
  }

  private List<Spot> run(Map<Corner, List<Corner>> sides, Corner start, double level) {
    List<Spot> run = new ArrayList<>();
    run.add(spot(start, level));
    Corner here = start;
    while (true) {
      @Nullable List<Corner> ends = sides.get(here);
      if (ends == null) {
        return run;
      }
      Corner to = ends.remove(ends.size() - 1);
      if (ends.isEmpty()) {
        sides.remove(here);
      }
      run.add(spot(to, level));
      if (to.equals(start)) {
        return run;
      }
      here = to;
    }
  }

  private Spot spot(Corner corner, double level) {
    Spot a = view.spot(samples.place(corner.a()));
    if (!corner.isCut()) {
      return a;
    }
    double from = values[corner.a()];
    double to = values[corner.b()];
    return a.towards(view.spot(samples.place(corner.b())), (level - from) / (to - from));
  }
}
