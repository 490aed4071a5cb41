package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Local buckling of a flat element under uniform compression, Aluminum Design Manual 2020, B.5.4.
 */
public final class UniformElement {

  private static final String WORK = "Aluminum Design Manual 2020";
  static final Source FLAT = Source.fromMemory(WORK, "B.5.4.1 and B.5.4.2");
  static final Source POST = Source.fromMemory(WORK, "Table B.4.3");
  private static final Source ELASTIC = Source.fromMemory(WORK, "Table B.5.1");

  /** The factor on b/t of an element held along one edge. */
  static final double ONE_EDGE = 5.0;

  /** The factor on b/t of an element held along both edges. */
  static final double BOTH_EDGES = 1.6;

  /**
   * Inputs b, t, edges, post, F_cy, E, aged, B_p, D_p, C_p; steps end in F_c, the strength, and
   * F_e, the elastic buckling stress.
   */
  public static final Procedure PROCEDURE = procedure();

  private UniformElement() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-flat-element", "Flat element under uniform compression");
    Reference width = Symbols.length(p, "b", "flat width");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference edges = p.input("edges", "edges held, 1 or 2", Dimension.NONE, Domain.POSITIVE);
    Reference post =
        Symbols.flag(
            p,
            "post",
            "strength after buckling counts (not for outstands of a column that buckles about an axis"
                + " without symmetry)");
    FlatConstants constants = FlatConstants.inputs(p);
    Reference slenderness = p.step("λ", "slenderness", Dimension.NONE, width.over(thickness), FLAT);
    Reference factor =
        p.step(
            "k_e",
            "factor for the edges held",
            Dimension.NONE,
            choose(less(edges, number(1.5)), number(ONE_EDGE), number(BOTH_EDGES)),
            FLAT);
    Reference elastic =
        elastic(
            p, "F_e", "elastic buckling stress", constants.modulus(), factor.times(slenderness));
    FlatConstants.AfterBuckling after = constants.afterBuckling(p, POST);
    ThreeRanges kept = constants.ranges(slenderness, factor, after);
    new ThreeRanges(
            slenderness,
            kept.plateau(),
            kept.intercept(),
            kept.slope(),
            choose(Symbols.is(post), kept.second(), constants.end().over(factor)),
            choose(Symbols.is(post), kept.beyond(), elastic))
        .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_c", "flat element"), FLAT);
    return p.build();
  }

  /** Writes π²E per square of an equivalent slenderness. */
  static Reference elastic(
      Procedure.Builder p, String symbol, String words, Reference modulus, Expression equivalent) {
    return p.step(
        symbol,
        words,
        Dimension.STRESS,
        pi().pow(2).times(modulus).over(equivalent.pow(2)),
        ELASTIC);
  }
}
