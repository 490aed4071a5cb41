package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.RoundConstants;
import spanledger.resistance.adm.Symbols;

/**
 * Design stress of the wall of a round tube by AS/NZS 1664.1. Elastic buckling has a smaller
 * capacity factor than the line, so the design stress drops where they meet.
 */
public final class RoundWall {

  private static final Source COLUMN_CLAUSE = Given.clause("3.4.11");
  private static final Source BEAM_CLAUSE = Given.clause("3.4.12 and 3.4.16.1");

  /**
   * Compression. Inputs R_b, t, F_cy, E, B_t, D_t, C_t, φ_y, φ_c, φ_cp, k_c; steps λ, F_e, λ_1,
   * F_c.
   */
  public static final Procedure IN_COLUMN = column();

  /**
   * Bending. Inputs R_b, t, F_cy, E, B_t, D_t, C_t, B_tb, D_tb, C_tb, φ_y, φ_b, φ_cp; steps λ, F_e,
   * λ_1, F_c.
   */
  public static final Procedure IN_BEAM = beam();

  private RoundWall() {}

  private record Wall(Reference slenderness, RoundConstants constants, Reference elastic) {

    static Wall write(Procedure.Builder p, Source clause) {
      Reference radius = Symbols.length(p, "R_b", "radius to the middle of the wall");
      Reference thickness = Symbols.length(p, "t", "thickness");
      RoundConstants constants = RoundConstants.inputs(p);
      Reference slenderness =
          p.step("λ", "slenderness", Dimension.NONE, radius.over(thickness), clause);
      Reference elastic =
          p.step(
              "F_e",
              "elastic buckling stress",
              Dimension.STRESS,
              constants.elastic(slenderness),
              clause);
      return new Wall(slenderness, constants, elastic);
    }

    Expression lineThen(Reference factor, Reference elasticFactor) {
      return choose(
          less(slenderness, constants.end()),
          factor.times(constants.line(slenderness)),
          elasticFactor.times(elastic));
    }
  }

  private static void strength(
      Procedure.Builder p,
      Wall wall,
      Expression plateau,
      Expression intercept,
      Expression slope,
      Expression beyond,
      Source clause) {
    Reference first =
        p.step(
            "λ_1",
            "slenderness up to which it yields",
            Dimension.NONE,
            intercept.minus(plateau).over(slope).pow(2),
            clause);
    p.step(
        "F_c",
        "design stress",
        Dimension.STRESS,
        choose(atMost(wall.slenderness(), first), plateau, beyond),
        clause);
  }

  private static Procedure column() {
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-round-wall", "Wall of a round tube, AS/NZS 1664.1");
    Wall wall = Wall.write(p, COLUMN_CLAUSE);
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference buckling = Given.factor(p, "c", "elements of columns");
    Reference elastic = Given.factor(p, "cp", "elastic buckling of curved elements");
    Reference knee = Given.knee(p);
    strength(
        p,
        wall,
        yielding.times(wall.constants().yield()).over(knee),
        buckling.times(wall.constants().intercept()),
        buckling.times(wall.constants().slope()),
        wall.lineThen(buckling, elastic),
        COLUMN_CLAUSE);
    return p.build();
  }

  private static Procedure beam() {
    Procedure.Builder p =
        Procedure.named(
            "as-nzs-1664-round-wall-bent", "Wall of a round tube in bending, AS/NZS 1664.1");
    Wall wall = Wall.write(p, BEAM_CLAUSE);
    Reference intercept = Symbols.stress(p, "B_tb", "intercept, round walls, bending");
    Reference slope = Symbols.stress(p, "D_tb", "slope, round walls, bending");
    Reference end =
        Symbols.ratio(p, "C_tb", "slenderness where the lines of bending and compression meet");
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference buckling = Given.factor(p, "b", "beams");
    Reference elastic = Given.factor(p, "cp", "elastic buckling of curved elements");
    strength(
        p,
        wall,
        yielding.times(wall.constants().yield()).times(1.17),
        buckling.times(intercept),
        buckling.times(slope),
        choose(
            less(wall.slenderness(), end),
            buckling.times(intercept.minus(slope.times(sqrt(wall.slenderness())))),
            wall.lineThen(buckling, elastic)),
        BEAM_CLAUSE);
    return p.build();
  }
}
