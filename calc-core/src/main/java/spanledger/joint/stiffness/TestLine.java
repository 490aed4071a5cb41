package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The straight line through the rising readings of a test: least squares of the moments. A line
 * that would meet zero before the start goes through the origin.
 *
 * <p>Inputs N (readings), S_φ, S_M, S_φφ, S_φM (sums over them); steps k_f, φ_f (of the free line),
 * φ_0 (play), k_φ (stiffness).
 */
public final class TestLine {

  /** How straight lines are laid through readings. */
  static final Source LEAST_SQUARES =
      Source.derived("Least squares of the moments (docs/theory/joint-sharing.md, 8)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private TestLine() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("test-line", "Line through the rising readings of a test");
    Dimension stiffness = Dimension.MOMENT;
    Reference count = p.input("N", "rising readings", Dimension.NONE, Domain.POSITIVE);
    Reference turns = p.input("S_φ", "sum of their rotations", Dimension.NONE);
    Reference moments = p.input("S_M", "sum of their moments", Dimension.MOMENT);
    Reference squares = p.input("S_φφ", "sum of squares of the rotations", Dimension.NONE);
    Reference products =
        p.input("S_φM", "sum of products of rotation and moment", Dimension.MOMENT);
    Reference slope =
        p.step(
            "k_f",
            "slope of the free line",
            stiffness,
            count
                .times(products)
                .minus(turns.times(moments))
                .over(count.times(squares).minus(turns.pow(2))),
            LEAST_SQUARES);
    Reference zero =
        p.step(
            "φ_f",
            "rotation at which it meets zero",
            Dimension.NONE,
            turns.minus(moments.over(slope)).over(count),
            LEAST_SQUARES);
    p.step(
        "φ_0",
        "play: rotation that nothing resists",
        Dimension.NONE,
        max(zero, number(0)),
        LEAST_SQUARES);
    p.step(
        "k_φ",
        "stiffness: slope of the line, through the origin if it has no play",
        stiffness,
        choose(atLeast(zero, number(0)), slope, products.over(squares)),
        LEAST_SQUARES);
    return p.build();
  }
}
