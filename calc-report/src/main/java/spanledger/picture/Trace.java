package spanledger.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines and arcs, one after another; several runs may follow each other.
 *
 * @param moves in order
 */
public record Trace(List<Move> moves) {

  /** One piece of a trace. */
  public sealed interface Move {}

  /** Lifts the pen and goes on from another place. */
  public record Start(Spot at) implements Move {}

  /** A straight line from where the pen is. */
  public record Line(Spot to) implements Move {}

  /**
   * An arc from where the pen is.
   *
   * @param to where it ends
   * @param bulge tangent of a quarter of the angle that it turns, clockwise positive on the paper
   */
  public record Arc(Spot to, double bulge) implements Move {}

  /** A straight line back to the start of the run. */
  public record Close() implements Move {}

  public Trace {
    moves = List.copyOf(moves);
  }

  /** An open line through places. */
  public static Trace through(Spot... spots) {
    return through(List.of(spots), false);
  }

  /** A closed line through places. */
  public static Trace around(Spot... spots) {
    return through(List.of(spots), true);
  }

  /** A line through places. */
  public static Trace through(List<Spot> spots, boolean closed) {
    List<Move> moves = new ArrayList<>();
    for (Spot spot : spots) {
      moves.add(moves.isEmpty() ? new Start(spot) : new Line(spot));
    }
    if (closed) {
      moves.add(new Close());
    }
    return new Trace(moves);
  }

  /** A circle. */
  public static Trace circle(Spot centre, double radius) {
    Spot right = centre.plus(radius, 0);
    return new Trace(
        List.of(
            new Start(right), new Arc(centre.plus(-radius, 0), 1), new Arc(right, 1), new Close()));
  }

  /** Both, as one. */
  public Trace and(Trace other) {
    List<Move> all = new ArrayList<>(moves);
    all.addAll(other.moves);
    return new Trace(all);
  }
}
