package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Condition;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Bending moment and shear that a load causes at a cut of a bar on simple bearings under axial
 * force, before the share β that shear leaves. Both definitions end in h (moment) and h' (its
 * change along the bar), for a load in its own direction.
 */
public final class BeamColumnCutLoad {

  /** Inputs P, a, x, L, κ. A force exactly at the cut counts as beyond it. */
  public static final Procedure POINT = point();

  /** Inputs q_1, q_2, a, b, x, L, κ. */
  public static final Procedure DISTRIBUTED = distributed();

  private BeamColumnCutLoad() {}

  private static Procedure point() {
    Procedure.Builder p =
        Procedure.named("beam-column-point-at-cut", "Point load at a cut under axial force");
    Reference force = p.input("P", "force", Dimension.FORCE);
    Reference at = p.input("a", "distance from the start", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference k = p.input("κ", "reduced axial force, compression positive", Dimension.NONE);
    Reference s = share(p, "ξ_a", "place of the force per length", at.over(length));
    Reference x = share(p, "ξ", "place of the cut per length", cut.over(length));
    Condition passed = greater(cut, at);
    Expression otherSide = number(1).minus(x);
    Expression beyond = number(1).minus(s);
    moment(
        p,
        force
            .times(length)
            .times(
                choose(
                    passed,
                    BeamFunctions.sine(k, s).times(BeamFunctions.share(k, otherSide)),
                    BeamFunctions.sine(k, x).times(BeamFunctions.share(k, beyond)))));
    change(
        p,
        force.times(
            choose(
                passed,
                BeamFunctions.sine(k, s).times(BeamFunctions.shareSlope(k, otherSide)).negated(),
                BeamFunctions.cosine(k, x).times(BeamFunctions.share(k, beyond)))));
    return p.build();
  }

  private static Procedure distributed() {
    Procedure.Builder p =
        Procedure.named(
            "beam-column-distributed-at-cut", "Distributed load at a cut under axial force");
    Reference from = p.input("q_1", "intensity where it begins", Dimension.LINE_LOAD);
    Reference to = p.input("q_2", "intensity where it ends", Dimension.LINE_LOAD);
    Reference a = p.input("a", "where it begins", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference b = p.input("b", "where it ends", Dimension.LENGTH, Domain.POSITIVE);
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference k = p.input("κ", "reduced axial force, compression positive", Dimension.NONE);
    Reference first = share(p, "ξ_a", "start per length", a.over(length));
    Reference second = share(p, "ξ_b", "end per length", b.over(length));
    Reference x = share(p, "ξ", "place of the cut per length", cut.over(length));
    Reference middle =
        share(p, "ξ_m", "where the part before the cut ends", max(first, min(second, x)));
    Reference slope =
        p.step(
            "q'",
            "change of intensity over the whole length",
            Dimension.LINE_LOAD,
            to.minus(from).over(second.minus(first)),
            MechanicsSources.STATICS);
    Reference between =
        p.step(
            "q_m",
            "intensity there",
            Dimension.LINE_LOAD,
            from.plus(slope.times(middle.minus(first))),
            MechanicsSources.STATICS);
    Reference before =
        p.step(
            "b_1",
            "part before the cut",
            Dimension.LINE_LOAD,
            between
                .times(BeamFunctions.sineSum(k, middle))
                .minus(from.times(BeamFunctions.sineSum(k, first)))
                .minus(
                    slope.times(
                        BeamFunctions.sineSecondSum(k, middle)
                            .minus(BeamFunctions.sineSecondSum(k, first)))),
            MechanicsSources.STABILITY_FUNCTIONS);
    Expression restMiddle = number(1).minus(middle);
    Expression restSecond = number(1).minus(second);
    Reference after =
        p.step(
            "b_2",
            "part beyond the cut",
            Dimension.LINE_LOAD,
            between
                .times(shareSum(k, restMiddle))
                .minus(to.times(shareSum(k, restSecond)))
                .plus(
                    slope.times(
                        shareSecondSum(k, restMiddle).minus(shareSecondSum(k, restSecond)))),
            MechanicsSources.STABILITY_FUNCTIONS);
    Expression otherSide = number(1).minus(x);
    moment(
        p,
        length
            .pow(2)
            .times(
                before
                    .times(BeamFunctions.share(k, otherSide))
                    .plus(after.times(BeamFunctions.sine(k, x)))));
    change(
        p,
        length.times(
            after
                .times(BeamFunctions.cosine(k, x))
                .minus(before.times(BeamFunctions.shareSlope(k, otherSide)))));
    return p.build();
  }

  private static Expression shareSum(Expression k, Expression x) {
    return x.pow(2).over(2).plus(k.times(BeamFunctions.bowSum(k, x)));
  }

  private static Expression shareSecondSum(Expression k, Expression x) {
    return x.pow(3).over(6).plus(k.times(BeamFunctions.bowSecondSum(k, x)));
  }

  private static Reference share(
      Procedure.Builder p, String symbol, String words, Expression formula) {
    return p.step(symbol, words, Dimension.NONE, formula, MechanicsSources.STATICS);
  }

  private static void moment(Procedure.Builder p, Expression formula) {
    p.step(
        "h",
        "bending moment by the load at the cut",
        Dimension.MOMENT,
        formula,
        MechanicsSources.STABILITY_FUNCTIONS);
  }

  private static void change(Procedure.Builder p, Expression formula) {
    p.step(
        "h'",
        "its change along the bar",
        Dimension.FORCE,
        formula,
        MechanicsSources.STABILITY_FUNCTIONS);
  }
}
