package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Internal forces at a cut, on the face that looks along +x.
 *
 * <p>N is positive in tension; V_y and V_z act along +y and +z; T is positive about +x; M_y is
 * positive when it stretches the fibres at +z, M_z when it stretches those at -y. A beam sagging
 * under its load therefore has a negative M_y.
 *
 * <p>Inputs: x, the forces at end 1, and the loads before the cut g_0x, g_0y, g_1y, g_0z, g_1z.
 */
public final class SectionForces {

  /** The definition; steps N, V_y, V_z, T, M_y, M_z. */
  public static final Procedure PROCEDURE = procedure();

  private SectionForces() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("section-forces", "Internal forces at a cut");
    Reference x = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference fx = p.input("F_x1", "force along x at end 1", Dimension.FORCE);
    Reference fy = p.input("F_y1", "force along y at end 1", Dimension.FORCE);
    Reference fz = p.input("F_z1", "force along z at end 1", Dimension.FORCE);
    Reference mx = p.input("M_x1", "torque at end 1", Dimension.MOMENT);
    Reference my = p.input("M_y1", "moment about y at end 1", Dimension.MOMENT);
    Reference mz = p.input("M_z1", "moment about z at end 1", Dimension.MOMENT);
    Reference g0x = p.input("g_0x", "load along x before the cut", Dimension.FORCE);
    Reference g0y = p.input("g_0y", "load along y before the cut", Dimension.FORCE);
    Reference g1y = p.input("g_1y", "its moment about the cut", Dimension.MOMENT);
    Reference g0z = p.input("g_0z", "load along z before the cut", Dimension.FORCE);
    Reference g1z = p.input("g_1z", "its moment about the cut", Dimension.MOMENT);
    step(p, "N", "axial force, tension positive", Dimension.FORCE, fx.plus(g0x).negated());
    step(p, "V_y", "shear along y", Dimension.FORCE, fy.plus(g0y).negated());
    step(p, "V_z", "shear along z", Dimension.FORCE, fz.plus(g0z).negated());
    step(p, "T", "torque", Dimension.MOMENT, mx.negated());
    step(
        p,
        "M_y",
        "bending moment about y",
        Dimension.MOMENT,
        my.plus(fz.times(x)).plus(g1z).negated());
    step(p, "M_z", "bending moment about z", Dimension.MOMENT, fy.times(x).plus(g1y).minus(mz));
    return p.build();
  }

  private static void step(
      Procedure.Builder p, String symbol, String words, Dimension dimension, Expression formula) {
    p.step(symbol, words, dimension, formula, MechanicsSources.STATICS);
  }
}
