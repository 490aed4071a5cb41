package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of a segment between its nodes, in six basic deformations: stretch, twist, and the turn
 * of each end from the chord in the two bending planes.
 *
 * <p>A joint's hold against turning is given by two inputs: {@code r} is 1 where the joint is
 * rigid, else 0; {@code k} is its rotational stiffness where it is not (0 for a pin). Bending about
 * y is in the x-z plane.
 */
public final class SegmentStiffness {

  /** The definition; its last steps are s_a, s_t, s_y11, s_y12, s_y22, s_z11, s_z12, s_z22. */
  public static final Procedure PROCEDURE = procedure();

  private SegmentStiffness() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("segment-stiffness", "Stiffness of a segment with its joints");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference e = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference g = p.input("G", "shear modulus", Dimension.STRESS, Domain.POSITIVE);
    Reference area = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    Reference avy = p.input("A_v_y", "shear area along y", Dimension.AREA, Domain.POSITIVE);
    Reference avz = p.input("A_v_z", "shear area along z", Dimension.AREA, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference it = p.input("I_t", "torsion constant", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference[] hold = new Reference[12];
    String[] axes = {"x", "y", "z"};
    for (int end = 1; end <= 2; end++) {
      for (int axis = 0; axis < 3; axis++) {
        String mark = axes[axis] + end;
        int at = (end - 1) * 6 + axis * 2;
        hold[at] =
            p.input(
                "r_" + mark,
                "1 if end " + end + " is rigid about " + axes[axis],
                Dimension.NONE,
                Domain.FRACTION);
        hold[at + 1] =
            p.input(
                "k_" + mark,
                "stiffness of the joint at end " + end + " about " + axes[axis],
                Dimension.MOMENT,
                Domain.NOT_NEGATIVE);
      }
    }
    Reference[] axial = new Reference[4];
    for (int end = 1; end <= 2; end++) {
      axial[2 * end - 2] =
          p.input(
              "r_a" + end,
              "1 if end " + end + " is rigid along x",
              Dimension.NONE,
              Domain.FRACTION);
      axial[2 * end - 1] =
          p.input(
              "k_a" + end,
              "stiffness of the joint at end " + end + " along x",
              Dimension.LINE_LOAD,
              Domain.NOT_NEGATIVE);
    }
    stretching(p, e.times(area).over(length), axial);
    torsion(p, g.times(it).over(length), hold);
    bending(p, "y", length, e.times(iy), g.times(avz), hold, 2);
    bending(p, "z", length, e.times(iz), g.times(avy), hold, 4);
    return p.build();
  }

  private static void stretching(Procedure.Builder p, Expression rigidity, Reference[] hold) {
    Reference bare =
        p.step(
            "s_a0",
            "stretching stiffness between rigid joints",
            Dimension.LINE_LOAD,
            rigidity,
            MechanicsSources.STATICS);
    Reference first = fixity(p, "a1", bare.pow(-1), hold[0], hold[1]);
    Reference second = fixity(p, "a2", bare.pow(-1), hold[2], hold[3]);
    p.step(
        "s_a",
        "stretching stiffness",
        Dimension.LINE_LOAD,
        inSeries(bare, first, second),
        MechanicsSources.FIXITY_FACTOR);
  }

  /** Springs in series: 1/s = f (1/γ1 + 1/γ2 - 1), written so that a free end gives zero. */
  private static Expression inSeries(Reference bare, Reference first, Reference second) {
    Expression product = first.times(second);
    return choose(
        greater(product, number(0)),
        bare.times(product).over(first.plus(second).minus(product)),
        bare.times(number(0)));
  }

  private static void torsion(Procedure.Builder p, Expression rigidity, Reference[] hold) {
    Reference bare =
        p.step(
            "s_t0",
            "twisting stiffness between rigid joints",
            Dimension.MOMENT,
            rigidity,
            MechanicsSources.STATICS);
    Reference first = fixity(p, "x1", bare.pow(-1), hold[0], hold[1]);
    Reference second = fixity(p, "x2", bare.pow(-1), hold[6], hold[7]);
    p.step(
        "s_t",
        "twisting stiffness",
        Dimension.MOMENT,
        inSeries(bare, first, second),
        MechanicsSources.FIXITY_FACTOR);
  }

  private static void bending(
      Procedure.Builder p,
      String axis,
      Reference length,
      Expression flexuralRigidity,
      Expression shearRigidity,
      Reference[] hold,
      int at) {
    Reference near =
        p.step(
            "f_" + axis + "11",
            "turn of an end about " + axis + " by a unit moment at it, ends on simple bearings",
            Dimension.ROTATIONAL_FLEXIBILITY,
            length.over(flexuralRigidity.times(3)).plus(shearRigidity.times(length).pow(-1)),
            MechanicsSources.SHEAR_FLEXIBLE_BEAM);
    Reference far =
        p.step(
            "f_" + axis + "12",
            "turn of an end about " + axis + " by a unit moment at the other",
            Dimension.ROTATIONAL_FLEXIBILITY,
            shearRigidity.times(length).pow(-1).minus(length.over(flexuralRigidity.times(6))),
            MechanicsSources.SHEAR_FLEXIBLE_BEAM);
    joined(p, axis, near, far, hold[at], hold[at + 1], hold[at + 6], hold[at + 7]);
  }

  /**
   * Adds the bending stiffness of a bar with its joints, from the turns of its ends on simple
   * bearings by unit moments.
   */
  static void joined(
      Procedure.Builder p,
      String axis,
      Reference near,
      Reference far,
      Reference rigid1,
      Reference spring1,
      Reference rigid2,
      Reference spring2) {
    Reference first = fixity(p, axis + "1", near, rigid1, spring1);
    Reference second = fixity(p, axis + "2", near, rigid2, spring2);
    Reference determinant =
        p.step(
            "d_" + axis,
            "determinant of the flexibility with joints",
            Dimension.ROTATIONAL_FLEXIBILITY.power(2),
            near.pow(2).minus(first.times(second).times(far.pow(2))),
            MechanicsSources.FIXITY_FACTOR);
    coefficient(p, axis + "11", near.times(first).over(determinant));
    coefficient(p, axis + "12", far.times(first).times(second).over(determinant).negated());
    coefficient(p, axis + "22", near.times(second).over(determinant));
  }

  private static Reference fixity(
      Procedure.Builder p, String mark, Expression flexibility, Reference rigid, Reference spring) {
    Expression ratio = spring.times(flexibility);
    return p.step(
        "γ_" + mark,
        "fixity of the joint " + mark + ": 1 rigid, 0 free",
        Dimension.NONE,
        choose(greater(rigid, number(0.5)), number(1), ratio.over(number(1).plus(ratio))),
        MechanicsSources.FIXITY_FACTOR);
  }

  private static void coefficient(Procedure.Builder p, String mark, Expression formula) {
    p.step(
        "s_" + mark,
        "bending stiffness " + mark,
        Dimension.MOMENT,
        formula,
        MechanicsSources.FIXITY_FACTOR);
  }
}
