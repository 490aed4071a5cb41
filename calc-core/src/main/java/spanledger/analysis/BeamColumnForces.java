package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The forces that nodes exert on the ends of a segment under axial force, along the axes of the
 * segment at rest: {@link EndForces} with the moment of the axial force about the turned chord, and
 * with turns that joints make in their play before anything resists.
 *
 * <p>Inputs: L, E, I_y, I_z, β_y, β_z, N, N_m (the force for which β and s were worked out: N in
 * second order, 0 in first), s_t, s_y11 .. s_z22 of {@link BeamColumnStiffness}, the basic
 * deformations φ, θ_y1 .. θ_z2 and slopes ψ_z, ψ_y of the chord, play j_y1 .. j_z2, load turns
 * t_1y, t_2y, t_1z, t_2z of {@link BeamColumnLoad}, load moments m_0x, m_1x, m_0y, m_1y, m_0z,
 * m_1z. Steps end in F_x1 .. M_z2.
 */
public final class BeamColumnForces {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BeamColumnForces() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("beam-column-forces", "End forces of a segment under axial force");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference e = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference by = p.input("β_y", "share of rigidity left, about y", Dimension.NONE);
    Reference bz = p.input("β_z", "share of rigidity left, about z", Dimension.NONE);
    Reference axial = p.input("N", "mean axial force, tension positive", Dimension.FORCE);
    Reference moved =
        p.input(
            "N_m",
            "axial force counted on the moved bar: N in second order, 0 in first",
            Dimension.FORCE);
    Reference st = p.input("s_t", "twisting stiffness", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference[] sy = EndForces.stiffnessInputs(p, "y");
    Reference[] sz = EndForces.stiffnessInputs(p, "z");
    Reference twist = p.input("φ", "twist", Dimension.NONE);
    Reference[] ty = EndForces.turnInputs(p, "y");
    Reference[] tz = EndForces.turnInputs(p, "z");
    Reference chordZ = p.input("ψ_z", "slope of the chord in the x-z plane", Dimension.NONE);
    Reference chordY = p.input("ψ_y", "slope of the chord in the x-y plane", Dimension.NONE);
    Reference[] jy = playInputs(p, "y");
    Reference[] jz = playInputs(p, "z");
    Reference[] loadY = loadInputs(p, "y");
    Reference[] loadZ = loadInputs(p, "z");
    Reference[] mx = EndForces.momentInputs(p, "x", 2);
    Reference[] my = EndForces.momentInputs(p, "y", 2);
    Reference[] mz = EndForces.momentInputs(p, "z", 2);

    Reference far = EndForces.force(p, "F_x2", axial.minus(mx[1].over(length)));
    Reference torque =
        p.step(
            "M_x2", "torque at end 2", Dimension.MOMENT, st.times(twist), MechanicsSources.STATICS);
    // A load along +z lifts the bar: the slope at the start is positive, and a turn about y is its
    // negative.
    Reference[] endY = endMoments(p, "y", length, e.times(iy).times(by), sy, ty, jy, loadZ, -1);
    Reference[] endZ = endMoments(p, "z", length, e.times(iz).times(bz), sz, tz, jz, loadY, 1);
    EndForces.force(p, "F_x1", far.negated().minus(mx[0]));
    Reference fz2 =
        EndForces.force(
            p, "F_z2", endY[0].plus(endY[1]).minus(mz[1]).over(length).plus(moved.times(chordZ)));
    EndForces.force(p, "F_z1", mz[0].plus(fz2).negated());
    Reference fy2 =
        EndForces.force(
            p, "F_y2", moved.times(chordY).minus(endZ[0].plus(endZ[1]).plus(my[1]).over(length)));
    EndForces.force(p, "F_y1", my[0].plus(fy2).negated());
    p.step("M_x1", "torque at end 1", Dimension.MOMENT, torque.negated(), MechanicsSources.STATICS);
    return p.build();
  }

  private static Reference[] endMoments(
      Procedure.Builder p,
      String axis,
      Reference length,
      Expression rigidity,
      Reference[] s,
      Reference[] turn,
      Reference[] play,
      Reference[] load,
      int sign) {
    Expression first = length.pow(2).times(load[0]).over(rigidity);
    Expression second = length.pow(2).times(load[1]).over(rigidity);
    Reference freeFirst = free(p, axis, 1, sign > 0 ? first : first.negated());
    Reference freeSecond = free(p, axis, 2, sign > 0 ? second.negated() : second);
    return EndForces.moments(
        p,
        axis,
        s,
        turn[0].minus(freeFirst).minus(play[0]),
        turn[1].minus(freeSecond).minus(play[1]));
  }

  private static Reference free(Procedure.Builder p, String axis, int end, Expression formula) {
    return p.step(
        "θ0_" + axis + end,
        "turn of end " + end + " about " + axis + " by the load on simple bearings",
        Dimension.NONE,
        formula,
        MechanicsSources.STABILITY_FUNCTIONS);
  }

  private static Reference[] playInputs(Procedure.Builder p, String axis) {
    return new Reference[] {
      p.input("j_" + axis + "1", "turn of joint 1 about " + axis + " in its play", Dimension.NONE),
      p.input("j_" + axis + "2", "turn of joint 2 about " + axis + " in its play", Dimension.NONE)
    };
  }

  private static Reference[] loadInputs(Procedure.Builder p, String axis) {
    return new Reference[] {
      p.input("t_1" + axis, "what loads along " + axis + " turn the start by", Dimension.FORCE),
      p.input("t_2" + axis, "what loads along " + axis + " turn the end by", Dimension.FORCE)
    };
  }
}
