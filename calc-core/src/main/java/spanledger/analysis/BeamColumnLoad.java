package spanledger.analysis;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * How much a load turns the ends of a bar on simple bearings under axial force.
 *
 * <p>The turns are t_1 L²/(E I β) at the start and t_2 L²/(E I β) at the end, towards the load.
 * Both definitions end in these two steps, in N, for a load in its own direction.
 */
public final class BeamColumnLoad {

  /** Inputs P, a, L, κ. */
  public static final Procedure POINT = point();

  /** Inputs q_1, q_2, a, b, L, κ. */
  public static final Procedure DISTRIBUTED = distributed();

  private BeamColumnLoad() {}

  private static Procedure point() {
    Procedure.Builder p =
        Procedure.named("beam-column-point-load", "End turns by a point load under axial force");
    Reference force = p.input("P", "force", Dimension.FORCE);
    Reference at = p.input("a", "distance from the start", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference k = p.input("κ", "reduced axial force, compression positive", Dimension.NONE);
    Reference x =
        p.step("ξ", "place per length", Dimension.NONE, at.over(length), MechanicsSources.STATICS);
    turn(p, "t_1", "start", force.times(BeamFunctions.bow(k, number(1).minus(x))));
    turn(p, "t_2", "end", force.times(BeamFunctions.bow(k, x)));
    return p.build();
  }

  private static Procedure distributed() {
    Procedure.Builder p =
        Procedure.named(
            "beam-column-distributed-load", "End turns by a distributed load under axial force");
    Reference from = p.input("q_1", "intensity where it begins", Dimension.LINE_LOAD);
    Reference to = p.input("q_2", "intensity where it ends", Dimension.LINE_LOAD);
    Reference a = p.input("a", "where it begins", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference b = p.input("b", "where it ends", Dimension.LENGTH, Domain.POSITIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference k = p.input("κ", "reduced axial force, compression positive", Dimension.NONE);
    Reference first =
        p.step("ξ_a", "start per length", Dimension.NONE, a.over(length), MechanicsSources.STATICS);
    Reference second =
        p.step("ξ_b", "end per length", Dimension.NONE, b.over(length), MechanicsSources.STATICS);
    Reference slope =
        p.step(
            "q'",
            "change of intensity over the whole length",
            Dimension.LINE_LOAD,
            to.minus(from).over(second.minus(first)),
            MechanicsSources.STATICS);
    Expression mirroredFirst = number(1).minus(first);
    Expression mirroredSecond = number(1).minus(second);
    turn(
        p,
        "t_1",
        "start",
        length.times(
            from.times(BeamFunctions.bowSum(k, mirroredFirst))
                .minus(to.times(BeamFunctions.bowSum(k, mirroredSecond)))
                .plus(
                    slope.times(
                        BeamFunctions.bowSecondSum(k, mirroredFirst)
                            .minus(BeamFunctions.bowSecondSum(k, mirroredSecond))))));
    turn(
        p,
        "t_2",
        "end",
        length.times(
            to.times(BeamFunctions.bowSum(k, second))
                .minus(from.times(BeamFunctions.bowSum(k, first)))
                .minus(
                    slope.times(
                        BeamFunctions.bowSecondSum(k, second)
                            .minus(BeamFunctions.bowSecondSum(k, first))))));
    return p.build();
  }

  private static void turn(Procedure.Builder p, String symbol, String end, Expression formula) {
    p.step(
        symbol,
        "what the load turns the " + end + " by, per L²/(E I β)",
        Dimension.FORCE,
        formula,
        MechanicsSources.STABILITY_FUNCTIONS);
  }
}
