package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.ElasticLateralMoment;
import spanledger.resistance.adm.MomentDiagram;
import spanledger.resistance.adm.Side;
import spanledger.resistance.adm.Symbols;
import spanledger.resistance.adm.ThreeRanges;

/**
 * Bending about y with lateral buckling by AS/NZS 1664.1, for the moments at hand: straight line,
 * then elastic. The Aluminum Design Manual 2020 has a line from the plastic moment instead.
 *
 * <p>The slenderness π√(E W_c/(C_b M_e)) is L_b/(1.2 r_ye √C_b) with the effective radius of
 * gyration of 4.9.3, and for tubes 1.6 √(L_b W_c/(0.5 √(I_z I_t)))/√C_b of 3.4.14; so open and
 * closed sections need no branch.
 *
 * <p>Inputs M_y, M_y_max, M_y_A, M_y_B, M_y_C, C_b_dec, load, z_g, z_j, P_e_z, K_T, E, F_cy, B_c,
 * D_c, C_c; W_c and M_c (without lateral buckling) for both signs of M_y; I_y, I_z, φ_y, φ_b. The
 * last step is M_c_y.
 */
public final class LateralBuckling {

  private static final Source CLAUSE = Given.clause("3.4.12 to 3.4.14 and 4.9.3");
  private static final Source SIDE = Source.derived("The sign of the moment");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LateralBuckling() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-lateral-buckling", "Lateral buckling, AS/NZS 1664.1");
    Reference moment = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Side side = new Side(moment);
    Reference factor = MomentDiagram.write(p, Given.clause("4.9.4"));
    Reference elastic = ElasticLateralMoment.write(p, side, factor, Given.clause("4.9.3"));
    Reference modulus = Symbols.modulus(p);
    Reference yield = Symbols.compressionYield(p);
    Reference intercept = Symbols.stress(p, "B_c", "intercept, members");
    Reference slope = Symbols.stress(p, "D_c", "slope, members");
    Reference end = Symbols.ratio(p, "C_c", "slenderness where the elastic range begins");
    Reference compressed =
        side.chosen(p, "W_c", "elastic modulus, compressed side", Dimension.SECTION_MODULUS, SIDE);
    Reference stocky =
        side.chosen(p, "M_c", "design strength without lateral buckling", Dimension.MOMENT, SIDE);
    Reference momentY = Symbols.secondMoment(p, "I_y", "second moment of area about y");
    Reference momentZ = Symbols.secondMoment(p, "I_z", "second moment of area about z");
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference buckling = Given.factor(p, "b", "beams");
    Reference slenderness =
        p.step(
            "λ_LT",
            "slenderness for lateral buckling",
            Dimension.NONE,
            pi().times(sqrt(modulus.times(compressed).over(factor.times(elastic)))),
            CLAUSE);
    Reference stress =
        new ThreeRanges(
                slenderness,
                yielding.times(yield),
                buckling.times(intercept),
                buckling.times(slope),
                end,
                buckling.times(pi().pow(2).times(modulus).over(slenderness.pow(2))))
            .write(
                p, new ThreeRanges.Names("λ_1", "λ_2", "F_LT", "lateral buckling, design"), CLAUSE);
    p.step(
        "M_c_y",
        "design strength in bending about y; no lateral buckling where y is not the stiffer axis",
        Dimension.MOMENT,
        choose(
            atMost(momentY, momentZ.times(1.001)), stocky, min(stocky, stress.times(compressed))),
        CLAUSE);
    return p.build();
  }
}
