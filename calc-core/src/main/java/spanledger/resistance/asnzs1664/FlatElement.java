package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.FlatConstants;
import spanledger.resistance.adm.Symbols;
import spanledger.resistance.adm.ThreeRanges;

/**
 * Design stress of a flat element under uniform compression by AS/NZS 1664.1. The factor on b/t of
 * outstands is 5.1 here, 5.0 in the Aluminum Design Manual 2020.
 *
 * <p>Inputs b, t, edges, post, F_cy, E, aged, B_p, D_p, C_p, φ_y, then φ_c and k_c or φ_b; steps
 * end in F_e, λ_1, λ_2, F_c.
 */
public final class FlatElement {

  private static final Source COLUMN_CLAUSE = Given.clause("3.4.9 and 3.4.10");
  private static final Source BEAM_CLAUSE = Given.clause("3.4.15 and 3.4.16");
  private static final Source ELASTIC = Given.clause("4.7");

  /** Of a column. */
  public static final Procedure IN_COLUMN = procedure(true);

  /** Of a beam. */
  public static final Procedure IN_BEAM = procedure(false);

  private FlatElement() {}

  private static Procedure procedure(boolean column) {
    Source clause = column ? COLUMN_CLAUSE : BEAM_CLAUSE;
    Procedure.Builder p =
        Procedure.named(
            column ? "as-nzs-1664-column-element" : "as-nzs-1664-beam-element",
            "Flat element of a " + (column ? "column" : "beam") + ", AS/NZS 1664.1");
    Reference width = Symbols.length(p, "b", "flat width");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference edges = p.input("edges", "edges held, 1 or 2", Dimension.NONE, Domain.POSITIVE);
    Reference post = Symbols.flag(p, "post", "strength after buckling counts");
    FlatConstants constants = FlatConstants.inputs(p);
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference buckling =
        Given.factor(p, column ? "c" : "b", column ? "elements of columns" : "beams");
    Expression yield = constants.yield();
    Expression plateau = yielding.times(column ? yield.over(Given.knee(p)) : yield);

    Reference slenderness =
        p.step("λ", "slenderness", Dimension.NONE, width.over(thickness), clause);
    Reference factor =
        p.step(
            "k_e",
            "factor for the edges held",
            Dimension.NONE,
            choose(less(edges, number(1.5)), number(5.1), number(1.6)),
            clause);
    Expression equivalent = factor.times(slenderness);
    Reference elastic =
        p.step(
            "F_e",
            "elastic buckling stress",
            Dimension.STRESS,
            pi().pow(2).times(constants.modulus()).over(equivalent.pow(2)),
            ELASTIC);
    FlatConstants.AfterBuckling after = constants.afterBuckling(p, Given.clause("Table 3.3(E)"));
    Expression steepness = factor.times(constants.slope());
    new ThreeRanges(
            slenderness,
            plateau,
            buckling.times(constants.intercept()),
            buckling.times(steepness),
            choose(
                Symbols.is(post),
                after.k1().times(constants.intercept()).over(steepness),
                constants.end().over(factor)),
            buckling.times(
                choose(
                    Symbols.is(post),
                    after
                        .k2()
                        .times(sqrt(constants.intercept().times(constants.modulus())))
                        .over(equivalent),
                    elastic)))
        .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_c", "flat element, design"), clause);
    return p.build();
  }
}
