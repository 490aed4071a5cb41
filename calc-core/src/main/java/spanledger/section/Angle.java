package spanledger.section;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.sin;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;

/**
 * An angle with legs of one thickness: its heel at the lower left, one leg along +z (the depth),
 * one along +y (the width).
 *
 * <p>All properties are about the principal axes u (major, in place of y) and v (minor, in place of
 * z). On the safe side, the plastic moduli are taken as the elastic ones, and shear is carried by
 * the shorter leg alone.
 *
 * @param depth of the leg along z, outside, mm
 * @param width of the leg along y, outside, mm
 * @param thickness of both legs, mm
 */
public record Angle(double depth, double width, double thickness) implements Shape {

  private static final String KIND = "angle";

  /** Inputs h, b, t. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException naming the size that is not positive, or a thickness that
   *     leaves no leg
   */
  public Angle {
    Sizes.requirePositive(KIND, "depth", depth);
    Sizes.requirePositive(KIND, "width", width);
    Sizes.requirePositive(KIND, "thickness", thickness);
    Sizes.requireBelow(KIND, "thickness", thickness, "the depth", depth);
    Sizes.requireBelow(KIND, "thickness", thickness, "the width", width);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public CompiledProcedure compiled() {
    return COMPILED;
  }

  @Override
  public double[] inputs() {
    return new double[] {depth, width, thickness};
  }

  @Override
  public double thinnestWall() {
    return thickness;
  }

  @Override
  public double thickestWall() {
    return thickness;
  }

  private static Procedure define() {
    SectionSteps p = new SectionSteps("angle", "Properties of an angle about its principal axes");
    Reference h = p.size("h", "depth, leg along z");
    Reference b = p.size("b", "width, leg along y");
    Reference t = p.size("t", "thickness of the legs");
    Reference area =
        p.property(SectionSymbol.AREA, t.times(h.plus(b).minus(t)), SectionSources.GEOMETRY);
    Reference yc = centroid(p, "y_c", "centroid from the heel along y", b, h, t, area);
    Reference zc = centroid(p, "z_c", "centroid from the heel along z", h, b, t, area);
    Reference iyg =
        ownInertia(p, "I_yg", "second moment about the y axis of the outline", h, b, t, area, zc);
    Reference izg =
        ownInertia(p, "I_zg", "second moment about the z axis of the outline", b, h, t, area, yc);
    Reference iyz =
        p.step(
            "I_yz",
            "product of area about the axes of the outline",
            t.pow(2)
                .times(h.pow(2).plus(b.pow(2)).minus(t.pow(2)))
                .over(4)
                .minus(area.times(yc).times(zc)),
            SectionSources.GEOMETRY);

    Source circle = Source.derived("Principal axes from Mohr's circle of second moments");
    Reference mean = p.step("I_mean", "centre of the circle", iyg.plus(izg).over(2), circle);
    Reference half = p.step("I_half", "half the difference", iyg.minus(izg).over(2), circle);
    Reference radius =
        p.step("I_rad", "radius of the circle", sqrt(half.pow(2).plus(iyz.pow(2))), circle);
    Reference alpha =
        p.property(SectionSymbol.PRINCIPAL_ROTATION, angleOf(half, iyz.negated()).over(2), circle);
    Reference iu = p.property(SectionSymbol.SECOND_MOMENT_Y, mean.plus(radius), circle);
    Reference iv = p.property(SectionSymbol.SECOND_MOMENT_Z, mean.minus(radius), circle);

    Reference left =
        p.step("y_1", "heel from the centroid along y", yc.negated(), SectionSources.GEOMETRY);
    Reference low =
        p.step("z_1", "heel from the centroid along z", zc.negated(), SectionSources.GEOMETRY);
    Reference farU =
        p.step(
            "u_max",
            "greatest distance of a corner from axis v",
            farthest(left, low, h, b, t, cos(alpha), sin(alpha)),
            SectionSources.GEOMETRY);
    Reference farV =
        p.step(
            "v_max",
            "greatest distance of a corner from axis u",
            farthest(left, low, h, b, t, sin(alpha).negated(), cos(alpha)),
            SectionSources.GEOMETRY);
    Reference wu =
        p.property(SectionSymbol.ELASTIC_MODULUS_Y, iu.over(farV), SectionSources.ELASTIC);
    Reference wv =
        p.property(SectionSymbol.ELASTIC_MODULUS_Z, iv.over(farU), SectionSources.ELASTIC);
    Source elasticOnly = Source.derived("Taken as the elastic modulus, which is on the safe side");
    p.property(SectionSymbol.PLASTIC_MODULUS_Y, wu, elasticOnly);
    p.property(SectionSymbol.PLASTIC_MODULUS_Z, wv, elasticOnly);

    shear(p, h, b, t);
    Reference it =
        p.property(
            SectionSymbol.TORSION_CONSTANT,
            h.plus(b).minus(t).times(t.pow(3)).over(3),
            SectionSources.OPEN_TORSION);
    p.property(SectionSymbol.TORSION_MODULUS, it.over(t), SectionSources.OPEN_TORSION);

    p.noWall(SectionSymbol.WEB_SLENDERNESS);
    p.noWall(SectionSymbol.INNER_FLANGE_SLENDERNESS);
    p.property(
        SectionSymbol.OUTSTAND_SLENDERNESS, max(h, b).minus(t).over(t), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.ROUND_SLENDERNESS);
    return p.build();
  }

  private static Reference centroid(
      SectionSteps p,
      String symbol,
      String words,
      Reference along,
      Reference across,
      Reference t,
      Reference area) {
    return p.step(
        symbol,
        words,
        t.times(along.pow(2)).plus(across.minus(t).times(t.pow(2))).over(area.times(2)),
        SectionSources.GEOMETRY);
  }

  private static Reference ownInertia(
      SectionSteps p,
      String symbol,
      String words,
      Reference along,
      Reference across,
      Reference t,
      Reference area,
      Reference centroid) {
    return p.step(
        symbol,
        words,
        t.times(along.pow(3))
            .plus(across.minus(t).times(t.pow(3)))
            .over(3)
            .minus(area.times(centroid.pow(2))),
        SectionSources.GEOMETRY);
  }

  /** Greatest |y·fy + z·fz| over the five outer corners, from the place of the heel. */
  private static Expression farthest(
      Reference left,
      Reference low,
      Reference h,
      Reference b,
      Reference t,
      Expression fy,
      Expression fz) {
    Expression right = left.plus(b);
    Expression high = low.plus(h);
    return max(
        distance(left, low, fy, fz),
        distance(right, low, fy, fz),
        distance(right, low.plus(t), fy, fz),
        distance(left.plus(t), high, fy, fz),
        distance(left, high, fy, fz));
  }

  private static Expression distance(Expression y, Expression z, Expression fy, Expression fz) {
    return abs(y.times(fy).plus(z.times(fz)));
  }

  private static void shear(SectionSteps p, Reference h, Reference b, Reference t) {
    Reference leg =
        p.step("A_leg", "area of the shorter leg", min(h, b).times(t), SectionSources.GEOMETRY);
    Reference legs =
        p.step("n", "shorter over longer leg", min(h, b).over(max(h, b)), SectionSources.GEOMETRY);
    Source deformation =
        Source.derived(
            "Shorter leg as a rectangle, reduced by the ratio of the legs; exact for thin equal legs,"
                + " else on the safe side");
    Source peak = Source.derived("Shorter leg alone as a rectangle, which is on the safe side");
    p.property(SectionSymbol.SHEAR_AREA_Y, leg.times(legs).times(5).over(6), deformation);
    p.property(SectionSymbol.SHEAR_AREA_Z, leg.times(legs).times(5).over(6), deformation);
    p.property(SectionSymbol.PEAK_SHEAR_AREA_Y, leg.times(2).over(3), peak);
    p.property(SectionSymbol.PEAK_SHEAR_AREA_Z, leg.times(2).over(3), peak);
  }
}
