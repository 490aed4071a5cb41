package spanledger.section.outline;

import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * From the summed integrals of an outline to its centroid, second moments about it and principal
 * axes.
 *
 * <p>The major axis 1 lies at the angle α_1 to the left of the y axis, in −π/2 to π/2; bending
 * about it is stiffest. Where both principal moments agree to 12 digits every axis is principal,
 * and α_1 is zero.
 */
public final class SectionAxes {

  private static final Source CENTROID = Source.derived("Definition of the centroid");
  private static final Source STEINER = Source.derived("Parallel axes");
  private static final Source MOHR = Source.derived("Rotated axes (Mohr's circle)");
  private static final Source RADIUS = Source.derived("Definition of the radius of gyration");

  /** Steps y_c, z_c, I_y, I_z, I_yz, I_d, I_m, I_1, I_2, α_1, I_p, i_y, i_z, i_1, i_2. */
  public static final Procedure PROCEDURE = procedure();

  private SectionAxes() {}

  /**
   * The references that later steps need.
   *
   * @param area A
   * @param momentY second moment about y
   * @param momentZ second moment about z
   * @param major I_1
   * @param minor I_2
   * @param majorAngle α_1
   */
  public record Axes(
      Reference area,
      Reference momentY,
      Reference momentZ,
      Reference major,
      Reference minor,
      Reference majorAngle) {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("section-axes", "Centroid and principal axes");
    Axes axes = write(p, "");
    radius(p, "i_y", "y", axes.momentY(), axes.area());
    radius(p, "i_z", "z", axes.momentZ(), axes.area());
    radius(p, "i_1", "the major axis", axes.major(), axes.area());
    radius(p, "i_2", "the minor axis", axes.minor(), axes.area());
    return p.build();
  }

  /**
   * Writes inputs and steps into another procedure.
   *
   * @param mark appended to I_y, I_z and I_yz, for procedures that use these symbols otherwise
   */
  public static Axes write(Procedure.Builder p, String mark) {
    Reference area = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    Reference sz = p.input("S_z0", "first moment ∫y dA", Dimension.SECTION_MODULUS);
    Reference sy = p.input("S_y0", "first moment ∫z dA", Dimension.SECTION_MODULUS);
    Reference iz0 = p.input("I_z0", "second moment ∫y² dA", Dimension.SECOND_MOMENT);
    Reference iy0 = p.input("I_y0", "second moment ∫z² dA", Dimension.SECOND_MOMENT);
    Reference iyz0 = p.input("I_yz0", "product moment ∫yz dA", Dimension.SECOND_MOMENT);

    Reference yc = p.step("y_c", "y of the centroid", Dimension.LENGTH, sz.over(area), CENTROID);
    Reference zc = p.step("z_c", "z of the centroid", Dimension.LENGTH, sy.over(area), CENTROID);
    Reference iy =
        p.step(
            "I_y" + mark,
            "second moment of area about the y axis of the outline",
            Dimension.SECOND_MOMENT,
            iy0.minus(area.times(zc.pow(2))),
            STEINER);
    Reference iz =
        p.step(
            "I_z" + mark,
            "second moment of area about the z axis of the outline",
            Dimension.SECOND_MOMENT,
            iz0.minus(area.times(yc.pow(2))),
            STEINER);
    Reference iyz =
        p.step(
            "I_yz" + mark,
            "product moment of area",
            Dimension.SECOND_MOMENT,
            iyz0.minus(area.times(yc).times(zc)),
            STEINER);
    Reference middle =
        p.step("I_m", "mean second moment", Dimension.SECOND_MOMENT, iy.plus(iz).over(2), MOHR);
    Reference spread =
        p.step(
            "I_d",
            "half the difference of the principal moments",
            Dimension.SECOND_MOMENT,
            sqrt(iy.minus(iz).over(2).pow(2).plus(iyz.pow(2))),
            MOHR);
    Reference major =
        p.step("I_1", "major principal moment", Dimension.SECOND_MOMENT, middle.plus(spread), MOHR);
    Reference minor =
        p.step(
            "I_2", "minor principal moment", Dimension.SECOND_MOMENT, middle.minus(spread), MOHR);
    Expression turned =
        angleOf(iy.minus(iz).over(2).over(middle), iyz.negated().over(middle)).over(2);
    Reference angle =
        p.step(
            "α_1",
            "angle of the major axis, to the left of y",
            Dimension.NONE,
            choose(greater(spread, middle.times(1e-12)), turned, number(0)),
            MOHR);
    p.step("I_p", "polar second moment", Dimension.SECOND_MOMENT, iy.plus(iz), STEINER);
    return new Axes(area, iy, iz, major, minor, angle);
  }

  private static void radius(
      Procedure.Builder p, String symbol, String axis, Reference moment, Reference area) {
    p.step(
        symbol,
        "radius of gyration about " + axis,
        Dimension.LENGTH,
        sqrt(moment.over(area)),
        RADIUS);
  }
}
