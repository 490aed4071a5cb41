package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Deflection of a segment from the straight line between its member ends, with bending and shear.
 *
 * <p>Inputs: x, L, E, G, I_y, I_z, A_v_y, A_v_z, end forces F_y1, F_z1, M_y1, M_z1, loads before
 * the cut g_1y, g_3y, g_1z, g_3z, and load moments m_0y .. m_3z. Steps end in d_y and d_z, mm along
 * +y and +z.
 */
public final class ChordDeflection {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ChordDeflection() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("chord-deflection", "Deflection of a segment from its chord");
    Reference x = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference e = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference g = p.input("G", "shear modulus", Dimension.STRESS, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference avy = p.input("A_v_y", "shear area along y", Dimension.AREA, Domain.POSITIVE);
    Reference avz = p.input("A_v_z", "shear area along z", Dimension.AREA, Domain.POSITIVE);
    // Positive end moments raise the beam towards -z about y and towards +y about z.
    plane(p, "y", x, length, e.times(iz), g.times(avy), "z", -1);
    plane(p, "z", x, length, e.times(iy), g.times(avz), "y", 1);
    return p.build();
  }

  private static void plane(
      Procedure.Builder p,
      String axis,
      Reference x,
      Reference length,
      Expression flexural,
      Expression shear,
      String momentAxis,
      int momentSign) {
    Reference force =
        p.input("F_" + axis + "1", "force along " + axis + " at end 1", Dimension.FORCE);
    Reference moment =
        p.input(
            "M_" + momentAxis + "1", "moment about " + momentAxis + " at end 1", Dimension.MOMENT);
    Reference g1 = p.input("g_1" + axis, "moment of the load before the cut", Dimension.MOMENT);
    Reference g3 =
        p.input(
            "g_3" + axis, "third moment of the load before the cut", Dimension.whole(3, 1, 0, 0));
    Reference[] m = new Reference[4];
    for (int k = 0; k < 4; k++) {
      m[k] =
          p.input(
              "m_" + k + axis,
              "load moment of order " + k + " along " + axis,
              Dimension.whole(k, 1, 0, 0));
    }
    Expression g1End = length.times(m[0]).minus(m[1]);
    Expression g3End =
        length
            .pow(3)
            .times(m[0])
            .minus(length.pow(2).times(m[1]).times(3))
            .plus(length.times(m[2]).times(3))
            .minus(m[3]);
    Reference atCut =
        bend(p, "p_" + axis, "at the cut", x, force, moment, momentSign, g1, g3, flexural, shear);
    Reference atEnd =
        bend(
            p,
            "p_" + axis + "L",
            "at the far end",
            length,
            force,
            moment,
            momentSign,
            g1End,
            g3End,
            flexural,
            shear);
    p.step(
        "d_" + axis,
        "deflection from the chord along " + axis,
        Dimension.LENGTH,
        atCut.minus(x.over(length).times(atEnd)),
        MechanicsSources.SHEAR_FLEXIBLE_BEAM);
  }

  private static Reference bend(
      Procedure.Builder p,
      String symbol,
      String where,
      Expression x,
      Reference force,
      Reference moment,
      int momentSign,
      Expression g1,
      Expression g3,
      Expression flexural,
      Expression shear) {
    Expression signedMoment = momentSign > 0 ? moment : moment.negated();
    Expression bending =
        signedMoment
            .times(x.pow(2))
            .over(2)
            .plus(force.times(x.pow(3)).over(6))
            .plus(g3.over(6))
            .over(flexural);
    Expression shearing = force.times(x).plus(g1).over(shear);
    return p.step(
        symbol,
        "deflection from the starting tangent " + where,
        Dimension.LENGTH,
        bending.minus(shearing),
        MechanicsSources.SHEAR_FLEXIBLE_BEAM);
  }
}
