package spanledger.analysis;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Deflection from the chord of a segment under axial force. The axial force times the deflection is
 * the moment by which it enlarges the bending moment: (M_0 - M)/N. Where the axial force hardly
 * bends, the deflection at rest is as good and does not divide by it.
 */
public final class BeamColumnDeflection {

  /**
   * Reduced force below which a bar bends as at rest; the deflection then errs by less than a tenth
   * of it, that is 1e-7.
   */
  private static final double UNBENT = 1e-6;

  /**
   * Forces square to the chord with which end moments and loads balance at rest. Inputs L, M_y1,
   * M_y2, M_z1, M_z2, m_0y, m_1y, m_0z, m_1z; steps F_y1, F_z1.
   */
  public static final Procedure AT_REST = atRest();

  /**
   * Inputs x, L, N, κ_y, κ_z, M_y1, M_y2, M_z1, M_z2, g_1y, g_1z, m_0y, m_1y, m_0z, m_1z, the
   * moments M_y and M_z at the cut ({@link BeamColumnCut}) and the deflections at rest d_y0 and
   * d_z0 ({@link ChordDeflection} with the forces of {@link #AT_REST}). Steps M_y0, M_z0, d_y, d_z.
   */
  public static final Procedure PROCEDURE = bent();

  private BeamColumnDeflection() {}

  private static Procedure atRest() {
    Procedure.Builder p =
        Procedure.named("resting-end-forces", "Forces at end 1 that balance moments at rest");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference[] my = moments(p, "y");
    Reference[] mz = moments(p, "z");
    Reference[] y = loads(p, "y");
    Reference[] z = loads(p, "z");
    p.step(
        "F_y1",
        "force along y at end 1",
        Dimension.FORCE,
        mz[0].plus(mz[1]).plus(y[1]).over(length).minus(y[0]),
        MechanicsSources.STATICS);
    p.step(
        "F_z1",
        "force along z at end 1",
        Dimension.FORCE,
        z[1].minus(my[0]).minus(my[1]).over(length).minus(z[0]),
        MechanicsSources.STATICS);
    return p.build();
  }

  private static Procedure bent() {
    Procedure.Builder p =
        Procedure.named("beam-column-deflection", "Deflection from the chord under axial force");
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference force = p.input("N", "mean axial force, tension positive", Dimension.FORCE);
    Reference ky = p.input("κ_y", "reduced axial force, about y", Dimension.NONE);
    Reference kz = p.input("κ_z", "reduced axial force, about z", Dimension.NONE);
    Reference[] my = moments(p, "y");
    Reference[] mz = moments(p, "z");
    Reference gy = p.input("g_1y", "moment of the loads along y before the cut", Dimension.MOMENT);
    Reference gz = p.input("g_1z", "moment of the loads along z before the cut", Dimension.MOMENT);
    Reference[] y = loads(p, "y");
    Reference[] z = loads(p, "z");
    Reference momentY = p.input("M_y", "bending moment about y at the cut", Dimension.MOMENT);
    Reference momentZ = p.input("M_z", "bending moment about z at the cut", Dimension.MOMENT);
    Reference dy = p.input("d_y0", "deflection at rest along y", Dimension.LENGTH);
    Reference dz = p.input("d_z0", "deflection at rest along z", Dimension.LENGTH);
    Expression share = cut.over(length);
    Reference restY =
        resting(
            p,
            "M_y0",
            "y",
            between(my, share).plus(z[0].minus(z[1].over(length)).times(cut)).minus(gz));
    Reference restZ =
        resting(
            p,
            "M_z0",
            "z",
            between(mz, share).minus(y[0].minus(y[1].over(length)).times(cut)).plus(gy));
    deflection(p, "d_y", "y", kz, momentZ.minus(restZ).over(force), dy);
    deflection(p, "d_z", "z", ky, restY.minus(momentY).over(force), dz);
    return p.build();
  }

  private static Reference[] moments(Procedure.Builder p, String axis) {
    Reference[] moments = new Reference[2];
    for (int end = 1; end <= 2; end++) {
      moments[end - 1] =
          p.input("M_" + axis + end, "moment about " + axis + " at end " + end, Dimension.MOMENT);
    }
    return moments;
  }

  private static Reference[] loads(Procedure.Builder p, String axis) {
    return new Reference[] {
      p.input("m_0" + axis, "load along " + axis, Dimension.FORCE),
      p.input("m_1" + axis, "its moment about end 1", Dimension.MOMENT)
    };
  }

  private static Expression between(Reference[] moments, Expression share) {
    return moments[1].times(share).minus(moments[0].times(number(1).minus(share)));
  }

  private static Reference resting(
      Procedure.Builder p, String symbol, String axis, Expression formula) {
    return p.step(
        symbol,
        "bending moment about " + axis + " without the axial force",
        Dimension.MOMENT,
        formula,
        MechanicsSources.STATICS);
  }

  private static void deflection(
      Procedure.Builder p,
      String symbol,
      String axis,
      Reference reduced,
      Expression bent,
      Reference atRest) {
    p.step(
        symbol,
        "deflection from the chord along " + axis,
        Dimension.LENGTH,
        choose(greater(abs(reduced), number(UNBENT)), bent, atRest),
        MechanicsSources.STABILITY_FUNCTIONS);
  }
}
