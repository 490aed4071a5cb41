package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The forces that nodes exert on the ends of a segment, in the segment's axes.
 *
 * <p>Inputs: L, E, I_y, I_z, the stiffness s_a .. s_z22, the basic deformations e .. θ_z2, and the
 * load moments by local axis: m_0x, m_1x, and m_0y .. m_3y, m_0z .. m_3z (positive along +y, +z).
 * Steps end in F_x1, F_y1, F_z1, M_x1, M_y1, M_z1 and the same at end 2.
 */
public final class EndForces {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private EndForces() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("end-forces", "End forces of a segment");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference e = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference sa = p.input("s_a", "stretching stiffness", Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
    Reference st = p.input("s_t", "twisting stiffness", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference[] sy = stiffnessInputs(p, "y");
    Reference[] sz = stiffnessInputs(p, "z");
    Reference stretch = p.input("e", "stretch", Dimension.LENGTH);
    Reference twist = p.input("φ", "twist", Dimension.NONE);
    Reference[] ty = turnInputs(p, "y");
    Reference[] tz = turnInputs(p, "z");
    Reference[] mx = momentInputs(p, "x", 2);
    Reference[] my = momentInputs(p, "y", 4);
    Reference[] mz = momentInputs(p, "z", 4);

    Reference axial =
        p.step(
            "F_x2",
            "force along x at end 2",
            Dimension.FORCE,
            sa.times(stretch).minus(mx[1].over(length)),
            MechanicsSources.STATICS);
    Reference torque =
        p.step(
            "M_x2", "torque at end 2", Dimension.MOMENT, st.times(twist), MechanicsSources.STATICS);
    // A load along +z turns the simply borne beam's ends: slope w' at the start is positive, and a
    // turn about y is -w'.
    Reference[] endY = endMoments(p, "y", length, e.times(iy), sy, ty, mz, -1);
    Reference[] endZ = endMoments(p, "z", length, e.times(iz), sz, tz, my, 1);
    force(p, "F_x1", axial.negated().minus(mx[0]));
    Reference fz2 = force(p, "F_z2", endY[0].plus(endY[1]).minus(mz[1]).over(length));
    force(p, "F_z1", mz[0].plus(fz2).negated());
    Reference fy2 = force(p, "F_y2", endZ[0].plus(endZ[1]).plus(my[1]).over(length).negated());
    force(p, "F_y1", my[0].plus(fy2).negated());
    p.step("M_x1", "torque at end 1", Dimension.MOMENT, torque.negated(), MechanicsSources.STATICS);
    return p.build();
  }

  /**
   * Moments at both ends: stiffness times the turns beyond those that the load causes on simple
   * bearings.
   */
  private static Reference[] endMoments(
      Procedure.Builder p,
      String axis,
      Reference length,
      Expression rigidity,
      Reference[] s,
      Reference[] turn,
      Reference[] m,
      int sign) {
    Source source = MechanicsSources.STATICS;
    Expression first =
        length
            .pow(2)
            .times(m[1])
            .times(2)
            .minus(length.times(m[2]).times(3))
            .plus(m[3])
            .over(rigidity.times(length).times(6));
    Expression second = length.pow(2).times(m[1]).minus(m[3]).over(rigidity.times(length).times(6));
    Reference freeFirst =
        p.step(
            "θ0_" + axis + "1",
            "turn of end 1 about " + axis + " by the load on simple bearings",
            Dimension.NONE,
            sign > 0 ? first : first.negated(),
            source);
    Reference freeSecond =
        p.step(
            "θ0_" + axis + "2",
            "turn of end 2 about " + axis + " by the load on simple bearings",
            Dimension.NONE,
            sign > 0 ? second.negated() : second,
            source);
    return moments(p, axis, s, turn[0].minus(freeFirst), turn[1].minus(freeSecond));
  }

  /** Moments at both ends from the turns that the joints feel. */
  static Reference[] moments(
      Procedure.Builder p,
      String axis,
      Reference[] s,
      Expression beyondFirst,
      Expression beyondSecond) {
    Reference atFirst =
        p.step(
            "M_" + axis + "1",
            "moment about " + axis + " at end 1",
            Dimension.MOMENT,
            s[0].times(beyondFirst).plus(s[1].times(beyondSecond)),
            MechanicsSources.STATICS);
    Reference atSecond =
        p.step(
            "M_" + axis + "2",
            "moment about " + axis + " at end 2",
            Dimension.MOMENT,
            s[1].times(beyondFirst).plus(s[2].times(beyondSecond)),
            MechanicsSources.STATICS);
    return new Reference[] {atFirst, atSecond};
  }

  static Reference force(Procedure.Builder p, String symbol, Expression formula) {
    return p.step(
        symbol,
        "force along " + symbol.charAt(2) + " at end " + symbol.charAt(3),
        Dimension.FORCE,
        formula,
        MechanicsSources.STATICS);
  }

  static Reference[] stiffnessInputs(Procedure.Builder p, String axis) {
    Reference[] s = new Reference[3];
    String[] marks = {"11", "12", "22"};
    for (int i = 0; i < 3; i++) {
      s[i] = p.input("s_" + axis + marks[i], "bending stiffness", Dimension.MOMENT);
    }
    return s;
  }

  static Reference[] turnInputs(Procedure.Builder p, String axis) {
    return new Reference[] {
      p.input("θ_" + axis + "1", "turn of end 1 about " + axis, Dimension.NONE),
      p.input("θ_" + axis + "2", "turn of end 2 about " + axis, Dimension.NONE)
    };
  }

  static Reference[] momentInputs(Procedure.Builder p, String axis, int count) {
    Reference[] m = new Reference[count];
    for (int k = 0; k < count; k++) {
      m[k] =
          p.input(
              "m_" + k + axis,
              "load moment of order " + k + " along " + axis,
              Dimension.whole(k, 1, 0, 0));
    }
    return m;
  }
}
