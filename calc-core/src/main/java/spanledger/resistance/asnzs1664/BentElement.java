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
import spanledger.resistance.adm.Symbols;
import spanledger.resistance.adm.ThreeRanges;

/**
 * Design stress of a flat element bent in its plane by AS/NZS 1664.1: both edges held, or the
 * compressed edge free. Unlike the Aluminum Design Manual 2020 it takes no account of where the
 * neutral axis lies, and yields at 1.3 instead of 1.5 times F_cy.
 *
 * <p>Inputs b, t, edges, F_cy, E, B_br, D_br, C_br, φ_y, φ_b; steps end in F_e, λ_1, λ_2, F_c.
 */
public final class BentElement {

  private static final Source CLAUSE = Given.clause("3.4.17 and 3.4.18");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BentElement() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named(
            "as-nzs-1664-bent-element", "Flat element bent in its plane, AS/NZS 1664.1");
    Reference width = Symbols.length(p, "b", "flat width");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference edges = p.input("edges", "edges held, 1 or 2", Dimension.NONE, Domain.POSITIVE);
    Reference yield = Symbols.compressionYield(p);
    Reference modulus = Symbols.modulus(p);
    Reference intercept = Symbols.stress(p, "B_br", "intercept, bending in plane");
    Reference slope = Symbols.stress(p, "D_br", "slope, bending in plane");
    Reference end = Symbols.ratio(p, "C_br", "end of the line, bending in plane");
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference buckling = Given.factor(p, "b", "beams");
    Reference slenderness =
        p.step("λ", "slenderness", Dimension.NONE, width.over(thickness), CLAUSE);
    Reference factor =
        p.step(
            "k_e",
            "factor for the edges held",
            Dimension.NONE,
            choose(less(edges, number(1.5)), number(3.5), number(0.67)),
            CLAUSE);
    Expression equivalent = factor.times(slenderness);
    Reference elastic =
        p.step(
            "F_e",
            "elastic buckling stress",
            Dimension.STRESS,
            pi().pow(2).times(modulus).over(equivalent.pow(2)),
            CLAUSE);
    Expression kept = sqrt(intercept.times(modulus)).times(2.04).over(equivalent);
    new ThreeRanges(
            slenderness,
            yielding.times(yield.times(1.3)),
            buckling.times(intercept),
            buckling.times(factor.times(slope)),
            choose(
                less(edges, number(1.5)),
                end.over(factor),
                intercept.times(0.5).over(factor.times(slope))),
            buckling.times(choose(less(edges, number(1.5)), elastic, kept)))
        .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_c", "bent element, design"), CLAUSE);
    return p.build();
  }
}
