package spanledger.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import spanledger.action.Figure;
import spanledger.action.RuleSet;

/** Which numbers of rises, and which goings for each, a rule set allows over a given height. */
public final class StairSolver {

  /** No stair has more rises. */
  private static final int MOST_RISES = 200;

  private static final double ROUNDING = 1e-9;

  private final double height;
  private final Optional<Double> space;
  private final RuleSet rules;

  /**
   * A solver.
   *
   * @param height from the foot to the floor, mm
   * @param space the level length from the first nosing to that of the floor that is at hand, mm
   */
  public StairSolver(double height, Optional<Double> space, RuleSet rules) {
    this.height = height;
    this.space = space;
    this.rules = rules;
  }

  /**
   * A limit that a number of rises breaks.
   *
   * @param words what is broken and by how much
   * @param share by which share of the limit
   */
  public record Miss(String words, double share) {}

  /**
   * What comes of a number of rises.
   *
   * @param rises their number
   * @param rise one of them, mm
   * @param goingLeast the least going allowed, mm
   * @param goingMost the greatest going allowed, mm; infinite where nothing limits it
   * @param misses what keeps it from being allowed; empty if it is allowed
   */
  public record Answer(
      int rises, double rise, double goingLeast, double goingMost, List<Miss> misses) {
    public Answer {
      misses = List.copyOf(misses);
    }

    /** Whether some going is allowed. */
    public boolean isAllowed() {
      return misses.isEmpty();
    }

    /** The pitch of a going, rad. */
    public double pitch(double going) {
      return Math.atan2(rise, going);
    }

    /** By which share of its limits it misses them in all. */
    double share() {
      return misses.stream().mapToDouble(Miss::share).sum();
    }
  }

  /** The allowed numbers of rises, the fewest first. */
  public List<Answer> allowed() {
    return answers().stream().filter(Answer::isAllowed).toList();
  }

  /** The numbers of rises that come nearest to being allowed, the nearest first. */
  public List<Answer> nearestMisses(int most) {
    return answers().stream()
        .filter(answer -> !answer.isAllowed())
        .sorted(Comparator.comparingDouble(Answer::share).thenComparingInt(Answer::rises))
        .limit(most)
        .toList();
  }

  private List<Answer> answers() {
    List<Answer> answers = new ArrayList<>();
    for (int rises = 2; rises <= MOST_RISES; rises++) {
      answers.add(answer(rises));
    }
    return answers;
  }

  private Answer answer(int rises) {
    double rise = height / rises;
    List<Miss> misses = new ArrayList<>();
    require(GeometryRule.RISE_LEAST, rise, "a rise", misses);
    require(GeometryRule.RISE_MOST, rise, "a rise", misses);
    require(GeometryRule.RISES_MOST, rises, "rises in one flight", misses);
    require(GeometryRule.FLIGHT_HEIGHT_MOST, height, "a flight", misses);
    List<Bound> least = new ArrayList<>();
    bound(GeometryRule.GOING_LEAST, x -> x, least);
    bound(GeometryRule.STEP_LEAST, x -> x - 2 * rise, least);
    bound(GeometryRule.PITCH_MOST, x -> rise / Math.tan(x), least);
    List<Bound> most = new ArrayList<>();
    bound(GeometryRule.GOING_MOST, x -> x, most);
    bound(GeometryRule.STEP_MOST, x -> x - 2 * rise, most);
    bound(GeometryRule.PITCH_LEAST, x -> rise / Math.tan(x), most);
    space.ifPresent(
        length -> most.add(new Bound("the space of " + SizeText.mm(length), length / (rises - 1))));
    Bound low =
        least.stream().max(Comparator.comparingDouble(Bound::going)).orElse(new Bound("", 1));
    Bound high =
        most.stream()
            .min(Comparator.comparingDouble(Bound::going))
            .orElse(new Bound("", Double.POSITIVE_INFINITY));
    if (low.going() > high.going() + ROUNDING * low.going()) {
      misses.add(
          new Miss(
              "no going: "
                  + low.from()
                  + " asks for at least "
                  + SizeText.mm(low.going())
                  + ", "
                  + high.from()
                  + " for at most "
                  + SizeText.mm(high.going()),
              (low.going() - high.going()) / low.going()));
    }
    return new Answer(rises, rise, low.going(), high.going(), misses);
  }

  /** A limit of the going and where it comes from. */
  private record Bound(String from, double going) {}

  private void bound(GeometryRule rule, DoubleUnaryOperator going, List<Bound> into) {
    rules
        .find(rule.id())
        .ifPresent(
            figure ->
                into.add(new Bound(named(rule, figure), going.applyAsDouble(figure.value()))));
  }

  private static String named(GeometryRule rule, Figure figure) {
    return rule.check() + " of " + figure.text() + " (" + figure.source().citation() + ")";
  }

  private void require(GeometryRule rule, double size, String what, List<Miss> misses) {
    Optional<Figure> figure = rules.find(rule.id());
    if (figure.isEmpty()) {
      return;
    }
    double limit = figure.get().value();
    double over = rule.isAtMost() ? size - limit : limit - size;
    if (over > ROUNDING * limit) {
      misses.add(
          new Miss(
              what
                  + (rule.isAtMost() ? " over " : " under ")
                  + figure.get().text()
                  + " ("
                  + figure.get().source().citation()
                  + ") by "
                  + (rule == GeometryRule.RISES_MOST
                      ? String.valueOf(Math.round(over))
                      : SizeText.mm(over)),
              over / limit));
    }
  }
}
