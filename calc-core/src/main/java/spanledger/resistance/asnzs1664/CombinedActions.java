package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.Side;
import spanledger.resistance.adm.Symbols;

/**
 * Forces together by AS/NZS 1664.1, section 4. Moments grow with the compression inside the
 * formula; at 0.15 of the design strength in compression the code begins to ask for it, so the
 * utilisation jumps there.
 *
 * <p>Inputs N (tension positive), V_y, V_z, T, M_y, M_z; P_t, P_c, P_s (the same without buckling
 * of the member), V_c_y, V_c_z, T_c, M_c_y, M_c_z_pos, M_c_z_neg (design strengths); A, F_e_y,
 * F_e_z (elastic buckling stresses in the plane of bending), C_m_y, C_m_z, round (whether a round
 * tube); steps η_N, η_My, η_Mz, η_Vy, η_Vz, η_T, η_NM, η_NMVT.
 */
public final class CombinedActions {

  private static final Source AXIAL = Given.clause("4.1.1 and 4.1.2");
  private static final Source SHEAR = Given.clause("4.4");
  private static final Source SINGLE = Given.clause("3.4.1");
  private static final Source SIDE = Source.derived("The sign of the moment");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private CombinedActions() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("as-nzs-1664-combined", "Forces together, AS/NZS 1664.1");
    Reference n = p.input("N", "axial force, tension positive", Dimension.FORCE);
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference t = p.input("T", "torque", Dimension.MOMENT);
    Reference my = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference mz = p.input("M_z", "bending moment about z", Dimension.MOMENT);
    Reference area = Symbols.area(p, "A", "area");
    Reference tension = force(p, "P_t", "design strength in tension");
    Reference compression = force(p, "P_c", "design strength in compression");
    Reference squash = force(p, "P_s", "design strength in compression, member not buckling");
    Reference shearY = force(p, "V_c_y", "design strength in shear along y");
    Reference shearZ = force(p, "V_c_z", "design strength in shear along z");
    Reference torsion =
        p.input("T_c", "design strength in torsion", Dimension.MOMENT, Domain.POSITIVE);
    Reference bendingY =
        p.input("M_c_y", "design strength in bending about y", Dimension.MOMENT, Domain.POSITIVE);
    Reference bendingZ =
        new Side(mz)
            .chosen(p, "M_c_z", "design strength in bending about z", Dimension.MOMENT, SIDE);
    Reference round = Symbols.flag(p, "round", "a round tube");

    Reference axial =
        use(
            p,
            "η_N",
            "axial force",
            choose(greater(n, n.times(0)), n.over(tension), n.negated().over(compression)),
            SINGLE);
    Reference aboutY = use(p, "η_My", "bending about y", abs(my).over(bendingY), SINGLE);
    Reference aboutZ = use(p, "η_Mz", "bending about z", abs(mz).over(bendingZ), SINGLE);
    Reference alongY = use(p, "η_Vy", "shear along y", abs(vy).over(shearY), SINGLE);
    Reference alongZ = use(p, "η_Vz", "shear along z", abs(vz).over(shearZ), SINGLE);
    Reference twist = use(p, "η_T", "torsion", abs(t).over(torsion), SINGLE);
    Expression pressed = max(n.negated(), n.times(0));
    Reference growthY = growth(p, "y", pressed, area);
    Reference growthZ = growth(p, "z", pressed, area);
    Expression plain = axial.plus(aboutY).plus(aboutZ);
    Expression grown = axial.plus(aboutY.times(growthY)).plus(aboutZ.times(growthZ));
    Expression atEnds = pressed.over(squash).plus(aboutY).plus(aboutZ);
    Reference normal =
        use(
            p,
            "η_NM",
            "axial force and bending",
            choose(atMost(pressed.over(compression), number(0.15)), plain, max(grown, atEnds)),
            AXIAL);
    Reference shear = use(p, "η_VT", "shear and torsion", max(alongY, alongZ).plus(twist), SHEAR);
    Reference bending =
        p.step("η_M", "bending about both axes", Dimension.NONE, aboutY.plus(aboutZ), SHEAR);
    use(
        p,
        "η_NMVT",
        "axial force, bending, shear and torsion",
        max(
            normal,
            axial.plus(choose(Symbols.is(round), bending, bending.pow(2))).plus(shear.pow(2))),
        SHEAR);
    return p.build();
  }

  private static Reference growth(
      Procedure.Builder p, String axis, Expression pressed, Reference area) {
    Reference elastic =
        Symbols.stress(p, "F_e_" + axis, "elastic buckling stress, bending about " + axis);
    Reference shape =
        p.input(
            "C_m_" + axis,
            "factor for the distribution of moment about " + axis + ", 1 to be safe",
            Dimension.NONE,
            new Domain(0.2, true, 1));
    Reference part =
        p.step(
            "ν_" + axis,
            "compression as part of the elastic buckling force, bending about " + axis,
            Dimension.NONE,
            pressed.over(elastic.times(area)),
            AXIAL);
    // From the elastic buckling force on the axial check fails by itself; the growth stays finite.
    return p.step(
        "B_" + axis,
        "growth of moments about " + axis + " by the bow of the member",
        Dimension.NONE,
        choose(greater(part, number(0.999)), shape.times(1000), shape.over(number(1).minus(part))),
        AXIAL);
  }

  private static Reference force(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.FORCE, Domain.POSITIVE);
  }

  private static Reference use(
      Procedure.Builder p, String symbol, String of, Expression formula, Source source) {
    return p.step(symbol, "utilisation, " + of, Dimension.NONE, formula, source);
  }
}
