package spanledger.analysis;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Internal forces at a cut of a segment under axial force, enlarged between its ends as well. Signs
 * are those of {@link SectionForces}; shear acts square to the bent axis, so that dM_y/dx = V_z and
 * dM_z/dx = −V_y.
 *
 * <p>Inputs: x, L, κ and β about y and z, end forces F_x1, M_x1, M_y1, M_y2, M_z1, M_z2, the load
 * along x before the cut g_0x, and h, h' of the loads along y and z ({@link BeamColumnCutLoad}).
 * Steps N, V_y, V_z, T, M_y, M_z.
 */
public final class BeamColumnCut {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BeamColumnCut() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("beam-column-cut", "Internal forces at a cut under axial force");
    Reference cut = p.input("x", "place of the cut", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference ky = p.input("κ_y", "reduced axial force, about y", Dimension.NONE);
    Reference kz = p.input("κ_z", "reduced axial force, about z", Dimension.NONE);
    Reference by = p.input("β_y", "share of rigidity left, about y", Dimension.NONE);
    Reference bz = p.input("β_z", "share of rigidity left, about z", Dimension.NONE);
    Reference fx = p.input("F_x1", "force along x at end 1", Dimension.FORCE);
    Reference mx = p.input("M_x1", "torque at end 1", Dimension.MOMENT);
    Reference[] my = {moment(p, "y", 1), moment(p, "y", 2)};
    Reference[] mz = {moment(p, "z", 1), moment(p, "z", 2)};
    Reference g0x = p.input("g_0x", "load along x before the cut", Dimension.FORCE);
    Reference hy = p.input("h_y", "moment by loads along y", Dimension.MOMENT);
    Reference dhy = p.input("h'_y", "its change along the bar", Dimension.FORCE);
    Reference hz = p.input("h_z", "moment by loads along z", Dimension.MOMENT);
    Reference dhz = p.input("h'_z", "its change along the bar", Dimension.FORCE);
    Reference x =
        p.step("ξ", "place per length", Dimension.NONE, cut.over(length), MechanicsSources.STATICS);
    Source exact = MechanicsSources.STABILITY_FUNCTIONS;
    p.step(
        "N",
        "axial force, tension positive",
        Dimension.FORCE,
        fx.plus(g0x).negated(),
        MechanicsSources.STATICS);
    p.step(
        "V_y",
        "shear along y, square to the bent axis",
        Dimension.FORCE,
        dhy.over(bz).minus(slope(kz, x, mz).over(length)),
        exact);
    p.step(
        "V_z",
        "shear along z, square to the bent axis",
        Dimension.FORCE,
        slope(ky, x, my).over(length).plus(dhz.over(by)),
        exact);
    p.step("T", "torque", Dimension.MOMENT, mx.negated(), MechanicsSources.STATICS);
    p.step(
        "M_y",
        "bending moment about y",
        Dimension.MOMENT,
        ends(ky, x, my).plus(hz.over(by)),
        exact);
    p.step(
        "M_z",
        "bending moment about z",
        Dimension.MOMENT,
        ends(kz, x, mz).minus(hy.over(bz)),
        exact);
    return p.build();
  }

  private static Reference moment(Procedure.Builder p, String axis, int end) {
    return p.input("M_" + axis + end, "moment about " + axis + " at end " + end, Dimension.MOMENT);
  }

  private static Expression ends(Reference k, Reference x, Reference[] moments) {
    return moments[1]
        .times(BeamFunctions.share(k, x))
        .minus(moments[0].times(BeamFunctions.share(k, number(1).minus(x))));
  }

  private static Expression slope(Reference k, Reference x, Reference[] moments) {
    return moments[1]
        .times(BeamFunctions.shareSlope(k, x))
        .plus(moments[0].times(BeamFunctions.shareSlope(k, number(1).minus(x))));
  }
}
