package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Bending about y with lateral-torsional buckling by the Aluminum Design Manual 2020, F.4, for the
 * moments at hand.
 *
 * <p>Inputs M_y, M_y_max, M_y_A, M_y_B, M_y_C, C_b_dec, load, z_g, z_j, P_e_z, K_T, E, C_c; W_c,
 * M_np, M_n, M_u and F_e_fl for both signs of M_y, marked _pos and _neg; I_y, I_z, φ_b, Ω_b. Steps
 * C_b, U, M_e, λ_LT, M_mb, M_int, M_ny, M_c_y.
 */
public final class LateralBucklingStrength {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source LATERAL = Source.fromMemory(WORK, "F.4");
  private static final Source BOTH = Source.fromMemory(WORK, "F.4.3");
  private static final Source DESIGN = Source.fromMemory(WORK, "F.1");
  private static final Source SIDE = Source.derived("The sign of the moment");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LateralBucklingStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-lateral-buckling", "Lateral buckling, Aluminum Design Manual");
    Reference moment = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference factor = MomentDiagram.write(p, Source.fromMemory(WORK, "F.4.1"));
    Reference elastic = ElasticLateralMoment.write(p, new Side(moment), factor, LATERAL);
    Reference modulus = Symbols.modulus(p);
    Reference end = Symbols.ratio(p, "C_c", "slenderness where the elastic range begins");
    Side side = new Side(moment);
    Reference compressed =
        side.chosen(p, "W_c", "elastic modulus, compressed side", Dimension.SECTION_MODULUS, SIDE);
    Reference yielding =
        side.chosen(p, "M_np", "nominal strength, yielding", Dimension.MOMENT, SIDE);
    Reference stocky =
        side.chosen(p, "M_n", "nominal strength without lateral buckling", Dimension.MOMENT, SIDE);
    Reference torn = side.chosen(p, "M_u", "design strength, rupture", Dimension.MOMENT, SIDE);
    Reference flange =
        side.chosen(
            p,
            "F_e_fl",
            "elastic buckling stress of the compressed elements",
            Dimension.STRESS,
            SIDE);
    Reference momentY = Symbols.secondMoment(p, "I_y", "second moment of area about y");
    Reference momentZ = Symbols.secondMoment(p, "I_z", "second moment of area about z");
    Factors bending = Factors.inputs(p, "b", "bending");

    Expression stiffness = pi().pow(2).times(modulus).times(compressed);
    Reference slenderness =
        p.step(
            "λ_LT",
            "slenderness for lateral-torsional buckling",
            Dimension.NONE,
            sqrt(stiffness.over(factor.times(elastic))),
            LATERAL);
    Reference member =
        p.step(
            "M_mb",
            "nominal strength, lateral-torsional buckling; none where y is not the stiffer axis",
            Dimension.MOMENT,
            choose(
                atMost(momentY, momentZ.times(1.001)),
                yielding,
                choose(
                    less(slenderness, end),
                    yielding
                        .times(number(1).minus(slenderness.over(end)))
                        .plus(stiffness.times(slenderness).over(end.pow(3))),
                    stiffness.over(slenderness.pow(2)))),
            LATERAL);
    Expression wave = pi().pow(2).times(modulus).over(slenderness.pow(2));
    Reference both =
        p.step(
            "M_int",
            "nominal strength, lateral buckling and buckling of elements together",
            Dimension.MOMENT,
            choose(
                less(flange, member.over(compressed)),
                min(
                    member,
                    flange.times(wave.over(flange).pow(0.333333333333333)).times(compressed)),
                member),
            BOTH);
    Reference least =
        p.step(
            "M_ny",
            "nominal strength without rupture",
            Dimension.MOMENT,
            min(stocky, member, both),
            DESIGN);
    p.step(
        "M_c_y",
        "design strength in bending about y",
        Dimension.MOMENT,
        min(bending.applied(least), torn),
        DESIGN);
    return p.build();
  }
}
