package spanledger.action;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;

import java.util.Optional;
import spanledger.frame.Node;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The strip of a floor that one line of members carries.
 *
 * @param on a node on the line
 * @param before a node on the neighbouring line towards corner A, if there is one
 * @param after a node on the neighbouring line towards corner B, if there is one
 * @param edgeBefore the floor's corner on A's side, if this line or the one before is the outermost
 *     there
 * @param edgeAfter the floor's corner on B's side, if this line or the one after is the outermost
 *     there
 * @param cornerA where the side across the floor begins
 * @param cornerB where it ends
 * @param outermostBefore whether the line before this one is the outermost on A's side
 * @param outermostAfter whether the line after this one is the outermost on B's side
 */
public record DeckStrip(
    Node on,
    Optional<Node> before,
    Optional<Node> after,
    Optional<Node> edgeBefore,
    Optional<Node> edgeAfter,
    Node cornerA,
    Node cornerB,
    boolean outermostBefore,
    boolean outermostAfter) {

  private static final Source STATICS =
      Source.derived("Panels spanning simply from line to line, overhang by the lever rule");

  /**
   * The width carried. Inputs b_1, b_2 (to the lines before and after, 0 if none), c (overhang
   * beyond this line), c_1, c_2 (overhang beyond the line before or after); step b_t.
   */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("deck-strip", "Width of floor carried by a line");
    Reference before = length(p, "b_1", "distance to the line before, 0 if none");
    Reference after = length(p, "b_2", "distance to the line after, 0 if none");
    Reference overhang = length(p, "c", "overhang beyond this line");
    Reference overhangBefore = length(p, "c_1", "overhang beyond the line before");
    Reference overhangAfter = length(p, "c_2", "overhang beyond the line after");
    Expression none = before.times(0);
    Reference lever =
        p.step(
            "c_l",
            "more by the lever of the overhang",
            Dimension.LENGTH,
            choose(
                greater(overhang, none), overhang.pow(2).over(max(before, after).times(2)), none),
            STATICS);
    Reference relief =
        p.step(
            "c_r",
            "less by the lever of the neighbours' overhangs",
            Dimension.LENGTH,
            choose(greater(overhangBefore, none), overhangBefore.pow(2).over(before.times(2)), none)
                .plus(
                    choose(
                        greater(overhangAfter, none),
                        overhangAfter.pow(2).over(after.times(2)),
                        none)),
            STATICS);
    p.step(
        "b_t",
        "width of floor carried",
        Dimension.LENGTH,
        before.over(2).plus(after.over(2)).plus(overhang).plus(lever).minus(relief),
        STATICS);
    return p.build();
  }

  private static Reference length(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.NOT_NEGATIVE);
  }

  /** The corner that ends the overhang beyond this line; empty if it is not an outermost line. */
  public Optional<Node> overhangTo() {
    return before.isEmpty() ? edgeBefore : after.isEmpty() ? edgeAfter : Optional.empty();
  }

  /** The corner that ends the overhang beyond the line before; empty if there is none. */
  public Optional<Node> overhangBeforeTo() {
    return outermostBefore ? edgeBefore : Optional.empty();
  }

  /** The corner that ends the overhang beyond the line after; empty if there is none. */
  public Optional<Node> overhangAfterTo() {
    return outermostAfter ? edgeAfter : Optional.empty();
  }

  /** The width carried, mm. */
  public double width() {
    double[] values =
        COMPILED.run(
            distance(Optional.of(on), before),
            distance(Optional.of(on), after),
            distance(Optional.of(on), overhangTo()),
            distance(before, overhangBeforeTo()),
            distance(after, overhangAfterTo()));
    return values[COMPILED.slot("b_t")];
  }

  private double distance(Optional<Node> from, Optional<Node> to) {
    return from.isPresent() && to.isPresent()
        ? DistanceAcross.between(from.get(), to.get(), cornerA, cornerB)
        : 0;
  }
}
