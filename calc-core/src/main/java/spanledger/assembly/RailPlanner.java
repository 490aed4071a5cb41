package spanledger.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Plans the gaps and rail posts of a platform's guardrail and finds what does not fit. */
final class RailPlanner {

  /**
   * Two posts are no nearer than this, mm: bracket and hand need room. Common practice, no source.
   */
  static final double LEAST_BETWEEN_POSTS = 100;

  private final Platform platform;
  private final Guardrail guardrail;
  private final Map<Side, List<RailGap>> stairs;
  private final Problems.At at;

  /** One missing part is told once, however many posts want it. */
  private boolean partTold;

  /**
   * A planner.
   *
   * @param stairs the openings that stairs need, by side
   */
  RailPlanner(
      Platform platform, Guardrail guardrail, Map<Side, List<RailGap>> stairs, Problems.At at) {
    this.platform = platform;
    this.guardrail = guardrail;
    this.stairs = stairs;
    this.at = at.at("guardrail");
  }

  /** The plans of the sides that have a guardrail. */
  List<RailPlan> plans() {
    Map<Side, List<RailGap>> gates = gates();
    List<RailPlan> plans = new ArrayList<>();
    for (Side side : Side.values()) {
      List<RailGap> gaps = new ArrayList<>(stairs.getOrDefault(side, List.of()));
      gaps.addAll(gates.getOrDefault(side, List.of()));
      gaps.sort(Comparator.comparingDouble(RailGap::from));
      if (guardrail.sides().contains(side)) {
        plans.add(plan(side, gaps));
      } else if (gates.containsKey(side)) {
        at.at("gates")
            .add(
                "a gate in the " + side.words() + " side, which has no guardrail",
                "gates in sides that \"sides\" names",
                "add the side to \"sides\", or remove the gate");
      }
    }
    return plans;
  }

  private Map<Side, List<RailGap>> gates() {
    Map<Side, List<RailGap>> gates = new EnumMap<>(Side.class);
    for (int i = 0; i < guardrail.gates().size(); i++) {
      Guardrail.Gate gate = guardrail.gates().get(i);
      Problems.At here = at.at("gates", i);
      List<Double> lines = gate.side().isLong() ? platform.lines() : List.of(0.0, platform.width());
      int bays = lines.size() - 1;
      if (gate.bay() < 1 || gate.bay() > bays) {
        here.add(
            "bay " + gate.bay() + " of the " + gate.side().words() + " side",
            bays == 1 ? "bay 1, the only one of this side" : "a bay from 1 to " + bays,
            "correct \"bay\"");
        continue;
      }
      double start = lines.get(gate.bay() - 1) + gate.from();
      double end = lines.get(gate.bay());
      double width = gate.width().orElse(end - start);
      double most = end - start;
      if (most < LEAST_BETWEEN_POSTS || width > most + Draft.SAME_PLACE) {
        here.add(
            "a gate of "
                + Problems.mm(width)
                + " from "
                + Problems.mm(gate.from())
                + " on, in a bay of "
                + Problems.mm(end - lines.get(gate.bay() - 1)),
            most < LEAST_BETWEEN_POSTS
                ? "a gate that begins at most "
                    + Problems.mm(end - lines.get(gate.bay() - 1) - LEAST_BETWEEN_POSTS)
                    + " from the beginning of the bay"
                : "a gate no wider than what is left of the bay: at most " + Problems.mm(most),
            "make the gate narrower, or the bay longer");
        continue;
      }
      gates
          .computeIfAbsent(gate.side(), s -> new ArrayList<>())
          .add(new RailGap(start, start + width, true, "gate " + (i + 1)));
    }
    return gates;
  }

  private RailPlan plan(Side side, List<RailGap> gaps) {
    reportOverlaps(gaps);
    TreeSet<Double> standing =
        new TreeSet<>(side.isLong() ? platform.lines() : List.of(0.0, platform.width()));
    for (RailGap gap : gaps) {
      for (double place : standing) {
        if (place > gap.from() + Draft.SAME_PLACE && place < gap.to() - Draft.SAME_PLACE) {
          at.add(
              gap.words()
                  + " on the "
                  + side.words()
                  + " side from "
                  + Problems.mm(gap.from())
                  + " to "
                  + Problems.mm(gap.to())
                  + ", in which a post stands at "
                  + Problems.mm(place),
              "a stretch between two posts",
              "move it, or divide the bays otherwise");
        }
      }
    }
    TreeSet<Double> added = new TreeSet<>();
    for (RailGap gap : gaps) {
      add(side, gap.from(), gap.words(), standing, added, at);
      add(side, gap.to(), gap.words(), standing, added, at);
    }
    addGiven(side, standing, added);
    addBetween(side, gaps, standing, added);
    if (!added.isEmpty()) {
      requireMeans(side, added.first());
    }
    return new RailPlan(side, gaps, List.copyOf(added));
  }

  private void reportOverlaps(List<RailGap> gaps) {
    for (int i = 0; i + 1 < gaps.size(); i++) {
      if (gaps.get(i).overlaps(gaps.get(i + 1))) {
        at.add(
            gaps.get(i).words() + " and " + gaps.get(i + 1).words() + ", which overlap",
            "gates and stairs beside each other: the second from "
                + Problems.mm(gaps.get(i).to())
                + " on",
            "move one of them");
      }
    }
  }

  private void addGiven(Side side, NavigableSet<Double> standing, NavigableSet<Double> added) {
    for (int i = 0; i < guardrail.posts().size(); i++) {
      Guardrail.PostPlace post = guardrail.posts().get(i);
      if (post.side() != side) {
        continue;
      }
      Problems.At here = at.at("posts", i);
      double length = platform.lengthOf(side);
      if (post.at() < 0 || post.at() > length) {
        here.add(
            "a post " + Problems.mm(post.at()) + " along the " + side.words() + " side",
            "a place on the platform: from 0 mm to " + Problems.mm(length),
            "correct \"at\"");
      } else {
        add(side, post.at(), "the post", standing, added, here);
      }
    }
  }

  private void add(
      Side side,
      double place,
      String what,
      NavigableSet<Double> standing,
      NavigableSet<Double> added,
      Problems.At here) {
    TreeSet<Double> all = new TreeSet<>(standing);
    all.addAll(added);
    Double below = all.floor(place + Draft.SAME_PLACE);
    Double above = all.ceiling(place - Draft.SAME_PLACE);
    double down = below == null ? Double.POSITIVE_INFINITY : place - below;
    double up = above == null ? Double.POSITIVE_INFINITY : above - place;
    if (Math.min(Math.abs(down), Math.abs(up)) <= Draft.SAME_PLACE) {
      return;
    }
    if (Math.min(down, up) < LEAST_BETWEEN_POSTS) {
      double other = down < up && below != null ? below : above == null ? place : above;
      here.add(
          "a post for "
              + what
              + " at "
              + Problems.mm(place)
              + " of the "
              + side.words()
              + " side, "
              + Problems.mm(Math.min(down, up))
              + " from the post at "
              + Problems.mm(other),
          "a post at the same place, or at least " + Problems.mm(LEAST_BETWEEN_POSTS) + " from it",
          "move it to " + Problems.mm(other) + ", or farther away");
      return;
    }
    added.add(place);
  }

  private void addBetween(
      Side side, List<RailGap> gaps, NavigableSet<Double> standing, NavigableSet<Double> added) {
    TreeSet<Double> all = new TreeSet<>(standing);
    all.addAll(added);
    List<Double> places = List.copyOf(all);
    for (int i = 0; i + 1 < places.size(); i++) {
      double from = places.get(i);
      double stretch = places.get(i + 1) - from;
      if (gaps.stream().noneMatch(gap -> gap.covers(from + stretch / 2))) {
        int parts = EvenDivision.parts(stretch, guardrail.postSpacing());
        if (parts > 1 && stretch / parts < LEAST_BETWEEN_POSTS) {
          at.add(
              "posts every " + Problems.mm(stretch / parts) + " on the " + side.words() + " side",
              "a post spacing of at least " + Problems.mm(LEAST_BETWEEN_POSTS),
              "correct \"postSpacing\"");
          continue;
        }
        for (int k = 1; k < parts; k++) {
          added.add(from + stretch * k / parts);
        }
      }
    }
  }

  private void requireMeans(Side side, double place) {
    String where = "a rail post at " + Problems.mm(place) + " of the " + side.words() + " side";
    if (guardrail.railPost().isEmpty() && !partTold) {
      partTold = true;
      at.add(
          where + ", and no part for it",
          "\"railPost\": the part of posts that stand on the floor alone",
          "name the part, or place bays, gates and stairs so that posts of the platform suffice");
    }
    boolean beam =
        side.isLong() || platform.bearers().fromEnds() == 0 || platform.endBeams().isPresent();
    if (!beam) {
      at.add(
          where + ", where no floor member lies",
          "a bearer or an end beam at the " + side.words() + " end",
          "add \"endBeams\", or put the first bearer at 0 mm from the ends");
    }
  }
}
