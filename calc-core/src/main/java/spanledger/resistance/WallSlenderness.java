package spanledger.resistance;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Whether the walls of a section are stocky enough for the full elastic resistance: slenderness of
 * each kind of wall against the limit between class 3 and class 4.
 *
 * <p>The limit is met with the compression that is there instead of the proof strength; at full
 * utilisation both are the same. A value above 1 means that the elastic check does not hold and an
 * effective section is needed.
 */
public final class WallSlenderness {

  private static final Source LIMITS =
      Source.fromMemory("EN 1999-1-1:2007", "6.1.4.3, 6.1.4.4, Table 6.2");
  private static final Source GRADIENT = Source.fromMemory("EN 1999-1-1:2007", "6.1.4.3(1)");
  private static final Source ACTUAL_STRESS =
      Source.fromMemory(
          "EN 1999-1-1:2007 6.1.4.4, with the stress reduction of EN 1993-1-5:2006", "4.4(4)");

  /** Steps end in β_int, β_out, ε_σ, η_wall. */
  public static final Procedure PROCEDURE = procedure();

  /** MPa; what is left of stresses that cancel is less, and has no gradient to speak of. */
  private static final double NO_STRESS = 1e-9;

  private WallSlenderness() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("wall-slenderness", "Slenderness of walls in compression");
    Reference axial = p.input("σ_N", "axial stress, tension positive", Dimension.STRESS);
    Reference aboutY = p.input("σ_My", "bending stress about y", Dimension.STRESS);
    Reference aboutZ = p.input("σ_Mz", "bending stress about z", Dimension.STRESS);
    Reference strength = p.input("f_o", "0.2 % proof strength", Dimension.STRESS, Domain.POSITIVE);
    Reference design = p.input("f_d", "design strength", Dimension.STRESS, Domain.POSITIVE);
    Reference web =
        p.input("s_web", "b/t of inner walls along z", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference flange =
        p.input("s_flange_int", "b/t of inner walls along y", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference outstand =
        p.input("s_flange_out", "b/t of outstanding walls", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference round =
        p.input("s_round", "D/t of a round tube", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference innerLimit =
        p.input("β3_int", "class 3 limit of inner walls per ε", Dimension.NONE, Domain.POSITIVE);
    Reference outerLimit =
        p.input("β3_out", "class 3 limit of outstands per ε", Dimension.NONE, Domain.POSITIVE);

    Reference compression =
        p.step(
            "σ_c",
            "greatest compression",
            Dimension.STRESS,
            max(aboutY.plus(aboutZ).minus(axial), axial.times(number(0))),
            Source.derived("Elastic bending of beams"));
    Reference webGradient = gradient(p, "web", aboutZ.minus(axial), aboutY);
    Reference flangeGradient = gradient(p, "flange", aboutY.minus(axial), aboutZ);
    Reference inner =
        p.step(
            "β_int",
            "slenderness of inner walls",
            Dimension.NONE,
            max(webGradient.times(web), flangeGradient.times(flange), sqrt(round).times(3)),
            LIMITS);
    Reference squareEpsilon =
        p.step(
            "σ_lim",
            "stress that the class limits are met with",
            Dimension.STRESS,
            compression.times(strength).over(design),
            ACTUAL_STRESS);
    Expression bound = sqrt(squareEpsilon.over(constant(250, Dimension.STRESS)));
    p.step(
        "η_wall",
        "slenderness of the walls per class 3 limit",
        Dimension.NONE,
        max(inner.over(innerLimit), outstand.over(outerLimit)).times(bound),
        LIMITS);
    return p.build();
  }

  /**
   * The factor on b/t for a wall with a uniform part u and a gradient part g of stress, compression
   * positive.
   */
  private static Reference gradient(
      Procedure.Builder p, String wall, Expression uniform, Reference bending) {
    Expression peak = uniform.plus(bending);
    Reference ratio =
        p.step(
            "ψ_" + wall,
            "stress at the far edge of the " + wall + " per greatest compression",
            Dimension.NONE,
            choose(
                greater(peak, constant(NO_STRESS, Dimension.STRESS)),
                uniform.minus(bending).over(peak),
                number(-1)),
            GRADIENT);
    return p.step(
        "η_" + wall,
        "factor on b/t of the " + wall + " for the stress gradient",
        Dimension.NONE,
        choose(
            greater(ratio, number(-1)),
            number(0.70).plus(ratio.times(0.30)),
            number(0.80).over(number(1).minus(ratio))),
        GRADIENT);
  }
}
