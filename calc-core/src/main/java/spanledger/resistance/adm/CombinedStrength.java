package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.abs;
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

/**
 * Forces together by the Aluminum Design Manual 2020, chapter H, after amplifying moments of a
 * first-order analysis for the bow of the member.
 *
 * <p>Inputs N (tension positive), V_y, V_z, T, M_y, M_z; P_t, P_c, V_c_y, V_c_z, T_c, M_c_y,
 * M_c_z_pos, M_c_z_neg (design strengths); A, F_e_y, F_e_z (elastic buckling stresses in the plane
 * of bending), α (1 with factored loads, 1.6 with allowable strengths), C_m_y, C_m_z, bow (whether
 * the moments hold the bow of the member already); steps η_N, η_My, η_Mz, η_Vy, η_Vz, η_T, η_NM,
 * η_VT, η_NMVT.
 */
public final class CombinedStrength {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source AXIAL = Source.fromMemory(WORK, "H.1");
  private static final Source SHEAR = Source.fromMemory(WORK, "H.3");
  private static final Source BOW =
      Source.fromMemory(WORK, "C.2, amplified first-order moments after AISC 360-16, Appendix 8");
  private static final Source SINGLE = Source.fromMemory(WORK, "B.3.2");

  private static final Source SIDE = Source.derived("The sign of the moment");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private CombinedStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-combined", "Forces together, Aluminum Design Manual");
    Reference n = p.input("N", "axial force, tension positive", Dimension.FORCE);
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference t = p.input("T", "torque", Dimension.MOMENT);
    Reference my = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference mz = p.input("M_z", "bending moment about z", Dimension.MOMENT);
    Reference area = Symbols.area(p, "A", "area");
    Reference tension = force(p, "P_t", "design strength in tension");
    Reference compression = force(p, "P_c", "design strength in compression");
    Reference shearY = force(p, "V_c_y", "design strength in shear along y");
    Reference shearZ = force(p, "V_c_z", "design strength in shear along z");
    Reference torsion = moment(p, "T_c", "design strength in torsion");
    Reference bendingY = moment(p, "M_c_y", "design strength in bending about y");
    Reference bendingZ =
        new Side(mz)
            .chosen(p, "M_c_z", "design strength in bending about z", Dimension.MOMENT, SIDE);
    Reference load =
        p.input(
            "α",
            "factor from the loads used to loads at failure: 1 factored, 1.6 allowable strengths",
            Dimension.NONE,
            new Domain(1, true, 1.6));
    Reference done = Symbols.flag(p, "bow", "moments hold the bow of the member already");
    Bow bow = new Bow(p, n, load, done, area);
    Reference growthY = bow.write("y");
    Reference growthZ = bow.write("z");

    Reference axial =
        use(
            p,
            "η_N",
            "axial force",
            choose(greater(n, n.times(0)), n.over(tension), n.negated().over(compression)),
            SINGLE);
    Reference aboutY =
        use(p, "η_My", "bending about y", abs(my).times(growthY).over(bendingY), SINGLE);
    Reference aboutZ =
        use(p, "η_Mz", "bending about z", abs(mz).times(growthZ).over(bendingZ), SINGLE);
    Reference alongY = use(p, "η_Vy", "shear along y", abs(vy).over(shearY), SINGLE);
    Reference alongZ = use(p, "η_Vz", "shear along z", abs(vz).over(shearZ), SINGLE);
    Reference twist = use(p, "η_T", "torsion", abs(t).over(torsion), SINGLE);
    Reference normal =
        use(p, "η_NM", "axial force and bending", axial.plus(aboutY).plus(aboutZ), AXIAL);
    Reference shear = use(p, "η_VT", "shear and torsion", max(alongY, alongZ).plus(twist), SHEAR);
    use(p, "η_NMVT", "axial force, bending, shear and torsion", normal.plus(shear.pow(2)), SHEAR);
    return p.build();
  }

  private record Bow(
      Procedure.Builder p, Reference axial, Reference load, Reference done, Reference area) {

    Reference write(String axis) {
      Reference elastic =
          Symbols.stress(p, "F_e_" + axis, "elastic buckling stress, bending about " + axis);
      Reference shape =
          p.input(
              "C_m_" + axis,
              "factor for the distribution of moment about " + axis + ", 1 to be safe",
              Dimension.NONE,
              new Domain(0.2, true, 1));
      Expression pressed =
          max(axial.negated(), axial.times(0)).times(load).over(elastic.times(area));
      Reference part =
          p.step(
              "ν_" + axis,
              "compression as part of the elastic buckling force, bending about " + axis,
              Dimension.NONE,
              pressed,
              BOW);
      // From the elastic buckling force on the axial check fails by itself; the growth stays
      // finite.
      return p.step(
          "B_" + axis,
          "growth of moments about " + axis + " by the bow of the member",
          Dimension.NONE,
          choose(
              Symbols.is(done),
              number(1),
              choose(
                  greater(part, number(0.999)),
                  max(number(1), shape.times(1000)),
                  max(number(1), shape.over(number(1).minus(part))))),
          BOW);
    }
  }

  private static Reference force(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.FORCE, Domain.POSITIVE);
  }

  private static Reference moment(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.MOMENT, Domain.POSITIVE);
  }

  private static Reference use(
      Procedure.Builder p, String symbol, String of, Expression formula, Source source) {
    return p.step(symbol, "utilisation, " + of, Dimension.NONE, formula, source);
  }
}
