package spanledger.analysis;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Bending stiffness of a segment under axial force: {@link SegmentStiffness} with the turns of its
 * ends on simple bearings enlarged by compression and reduced by tension. Exact for a force that is
 * constant along the segment; shear acts square to the bent axis (Engesser).
 *
 * <p>Inputs: L, E, G, A_v_y, A_v_z, I_y, I_z, N (tension positive), and the holds r, k of both ends
 * about y and z. Its last steps are s_y11, s_y12, s_y22, s_z11, s_z12, s_z22. Between them stand β
 * (what shear leaves of the rigidity), κ (reduced force, positive in compression; π² is the Euler
 * load on simple bearings) and the flexibilities f.
 */
public final class BeamColumnStiffness {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BeamColumnStiffness() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("beam-column-stiffness", "Bending stiffness under axial force");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference e = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference g = p.input("G", "shear modulus", Dimension.STRESS, Domain.POSITIVE);
    Reference avy = p.input("A_v_y", "shear area along y", Dimension.AREA, Domain.POSITIVE);
    Reference avz = p.input("A_v_z", "shear area along z", Dimension.AREA, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference force = p.input("N", "mean axial force, tension positive", Dimension.FORCE);
    Reference[] hold = new Reference[8];
    String[] marks = {"y1", "z1", "y2", "z2"};
    for (int i = 0; i < marks.length; i++) {
      hold[2 * i] =
          p.input(
              "r_" + marks[i],
              "1 if the end is rigid about " + marks[i].charAt(0),
              Dimension.NONE,
              Domain.FRACTION);
      hold[2 * i + 1] =
          p.input("k_" + marks[i], "stiffness of the joint", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    }
    bending(p, "y", length, e.times(iy), g.times(avz), force, hold, 0);
    bending(p, "z", length, e.times(iz), g.times(avy), force, hold, 2);
    return p.build();
  }

  private static void bending(
      Procedure.Builder p,
      String axis,
      Reference length,
      Expression flexural,
      Expression shear,
      Reference force,
      Reference[] hold,
      int at) {
    Reference left =
        p.step(
            "β_" + axis,
            "share of the rigidity that shear leaves",
            Dimension.NONE,
            number(1).plus(force.over(shear)),
            MechanicsSources.SHEAR_FLEXIBLE_COLUMN);
    Reference reduced =
        p.step(
            "κ_" + axis,
            "reduced axial force for bending about " + axis + ", compression positive",
            Dimension.NONE,
            force.negated().times(length.pow(2)).over(flexural.times(left)),
            MechanicsSources.STABILITY_FUNCTIONS);
    Reference near =
        p.step(
            "n_" + axis,
            "enlargement of the turn at a unit moment",
            Dimension.NONE,
            BeamFunctions.near(reduced),
            MechanicsSources.STABILITY_FUNCTIONS);
    Reference far =
        p.step(
            "o_" + axis,
            "enlargement of the turn at the other end",
            Dimension.NONE,
            BeamFunctions.far(reduced),
            MechanicsSources.STABILITY_FUNCTIONS);
    Reference nearTurn =
        p.step(
            "f_" + axis + "11",
            "turn of an end about " + axis + " by a unit moment at it, ends on simple bearings",
            Dimension.ROTATIONAL_FLEXIBILITY,
            near.times(length).over(flexural.times(3)).plus(shear.times(length).pow(-1)),
            MechanicsSources.STABILITY_FUNCTIONS);
    Reference farTurn =
        p.step(
            "f_" + axis + "12",
            "turn of an end about " + axis + " by a unit moment at the other",
            Dimension.ROTATIONAL_FLEXIBILITY,
            shear.times(length).pow(-1).minus(far.times(length).over(flexural.times(6))),
            MechanicsSources.STABILITY_FUNCTIONS);
    SegmentStiffness.joined(
        p, axis, nearTurn, farTurn, hold[at], hold[at + 1], hold[at + 4], hold[at + 5]);
  }
}
