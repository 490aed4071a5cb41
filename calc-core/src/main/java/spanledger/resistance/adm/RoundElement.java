package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Local buckling of the wall of a round tube, Aluminum Design Manual 2020. */
public final class RoundElement {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source COMPRESSED = Source.fromMemory(WORK, "B.5.4.5");
  private static final Source BENT = Source.fromMemory(WORK, "B.5.5.4");
  private static final Source ELASTIC = Source.fromMemory(WORK, "Table B.5.1");

  /** In compression. Inputs R_b, t, F_cy, E, B_t, D_t, C_t; steps λ, F_e, λ_1, F_c. */
  public static final Procedure COMPRESSION = compression();

  /** In bending. Inputs as in compression and B_tb, D_tb, C_tb; steps λ, F_e, λ_1, F_c. */
  public static final Procedure BENDING = bending();

  private RoundElement() {}

  private static Procedure compression() {
    Procedure.Builder p =
        Procedure.named("adm-round-element", "Wall of a round tube under compression");
    Wall wall = Wall.inputs(p, COMPRESSED);
    Reference elastic = wall.elastic(p);
    wall.strength(
        p,
        wall.constants().yield(),
        wall.constants().intercept(),
        wall.constants().slope(),
        wall.lineThen(elastic),
        COMPRESSED);
    return p.build();
  }

  private static Procedure bending() {
    Procedure.Builder p =
        Procedure.named("adm-round-element-bent", "Wall of a round tube in bending");
    Wall wall = Wall.inputs(p, BENT);
    Reference intercept = Symbols.stress(p, "B_tb", "intercept, round walls, bending");
    Reference slope = Symbols.stress(p, "D_tb", "slope, round walls, bending");
    Reference end =
        Symbols.ratio(p, "C_tb", "slenderness where the lines of bending and compression meet");
    Reference elastic = wall.elastic(p);
    wall.strength(
        p,
        wall.constants().yield().times(1.17),
        intercept,
        slope,
        choose(
            less(wall.slenderness(), end),
            intercept.minus(slope.times(sqrt(wall.slenderness()))),
            wall.lineThen(elastic)),
        BENT);
    return p.build();
  }

  private record Wall(Reference slenderness, RoundConstants constants) {

    static Wall inputs(Procedure.Builder p, Source source) {
      Reference radius = Symbols.length(p, "R_b", "radius to the middle of the wall");
      Reference thickness = Symbols.length(p, "t", "thickness");
      RoundConstants constants = RoundConstants.inputs(p);
      Reference slenderness =
          p.step("λ", "slenderness", Dimension.NONE, radius.over(thickness), source);
      return new Wall(slenderness, constants);
    }

    Reference elastic(Procedure.Builder p) {
      return p.step(
          "F_e",
          "elastic buckling stress",
          Dimension.STRESS,
          constants.elastic(slenderness),
          ELASTIC);
    }

    Expression lineThen(Reference elastic) {
      return choose(less(slenderness, constants.end()), constants.line(slenderness), elastic);
    }

    void strength(
        Procedure.Builder p,
        Expression plateau,
        Expression intercept,
        Expression slope,
        Expression beyond,
        Source source) {
      Reference first =
          p.step(
              "λ_1",
              "slenderness up to which it yields",
              Dimension.NONE,
              intercept.minus(plateau).over(slope).pow(2),
              source);
      p.step(
          "F_c",
          "strength",
          Dimension.STRESS,
          choose(atMost(slenderness, first), plateau, beyond),
          source);
    }
  }
}
