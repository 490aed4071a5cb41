package spanledger.section;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;

/**
 * A rectangular tube.
 *
 * <p>Torsion is that of a thin-walled closed section. It leaves out the torsion of each wall in
 * itself, so the torsion constant is on the low side, the more so the thicker the walls; the
 * torsion modulus is the mean over the wall.
 *
 * @param depth along z, outside, mm
 * @param width along y, outside, mm
 * @param webThickness of both walls along z, mm
 * @param flangeThickness of both walls along y, mm
 */
public record RectangularHollow(
    double depth, double width, double webThickness, double flangeThickness) implements Shape {

  private static final String KIND = "rectangular hollow section";

  /** Inputs h, b, t_w, t_f. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException naming the size that is not positive, or the wall that leaves
   *     no hollow
   */
  public RectangularHollow {
    Sizes.requirePositive(KIND, "depth", depth);
    Sizes.requirePositive(KIND, "width", width);
    Sizes.requirePositive(KIND, "web thickness", webThickness);
    Sizes.requirePositive(KIND, "flange thickness", flangeThickness);
    Sizes.requireBelow(KIND, "web thickness", webThickness, "half the width", width / 2);
    Sizes.requireBelow(KIND, "flange thickness", flangeThickness, "half the depth", depth / 2);
  }

  /** A tube with the same thickness all round. */
  public static RectangularHollow uniform(double depth, double width, double thickness) {
    return new RectangularHollow(depth, width, thickness, thickness);
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
    return new double[] {depth, width, webThickness, flangeThickness};
  }

  @Override
  public double thinnestWall() {
    return Math.min(webThickness, flangeThickness);
  }

  @Override
  public double thickestWall() {
    return Math.max(webThickness, flangeThickness);
  }

  private static Procedure define() {
    SectionSteps p =
        new SectionSteps("rectangular-hollow", "Properties of a rectangular hollow section");
    Reference h = p.size("h", "depth");
    Reference b = p.size("b", "width");
    Reference tw = p.size("t_w", "thickness of the webs");
    Reference tf = p.size("t_f", "thickness of the flanges");
    Reference hi = p.step("h_i", "inner depth", h.minus(tf.times(2)), SectionSources.GEOMETRY);
    Reference bi = p.step("b_i", "inner width", b.minus(tw.times(2)), SectionSources.GEOMETRY);
    Reference hm =
        p.step("h_m", "depth between flange midlines", h.minus(tf), SectionSources.GEOMETRY);
    Reference bm =
        p.step("b_m", "width between web midlines", b.minus(tw), SectionSources.GEOMETRY);

    p.property(SectionSymbol.AREA, b.times(h).minus(bi.times(hi)), SectionSources.GEOMETRY);
    Reference iy =
        p.property(SectionSymbol.SECOND_MOMENT_Y, inertia(b, h, bi, hi), SectionSources.GEOMETRY);
    Reference iz =
        p.property(SectionSymbol.SECOND_MOMENT_Z, inertia(h, b, hi, bi), SectionSources.GEOMETRY);
    p.property(SectionSymbol.ELASTIC_MODULUS_Y, iy.times(2).over(h), SectionSources.ELASTIC);
    p.property(SectionSymbol.ELASTIC_MODULUS_Z, iz.times(2).over(b), SectionSources.ELASTIC);
    Reference wy =
        p.property(SectionSymbol.PLASTIC_MODULUS_Y, plastic(b, h, bi, hi), SectionSources.PLASTIC);
    Reference wz =
        p.property(SectionSymbol.PLASTIC_MODULUS_Z, plastic(h, b, hi, bi), SectionSources.PLASTIC);
    p.notTurned();

    p.property(
        SectionSymbol.SHEAR_AREA_Y, shearArea(p, "y", bm, tf, hm, tw), SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.SHEAR_AREA_Z, shearArea(p, "z", hm, tw, bm, tf), SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Y,
        peakShearArea(iz, wz, tf, h, bm),
        SectionSources.SHEAR_FLOW);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Z,
        peakShearArea(iy, wy, tw, b, hm),
        SectionSources.SHEAR_FLOW);

    Reference cell =
        p.step("A_m", "area inside the wall midlines", hm.times(bm), SectionSources.GEOMETRY);
    p.property(
        SectionSymbol.TORSION_CONSTANT,
        cell.pow(2).times(4).over(hm.times(2).over(tw).plus(bm.times(2).over(tf))),
        SectionSources.CLOSED_TORSION);
    p.property(
        SectionSymbol.TORSION_MODULUS,
        cell.times(2).times(min(tw, tf)),
        SectionSources.CLOSED_TORSION);

    p.property(SectionSymbol.WEB_SLENDERNESS, hi.over(tw), SectionSources.FLAT_WIDTH);
    p.property(SectionSymbol.INNER_FLANGE_SLENDERNESS, bi.over(tf), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.OUTSTAND_SLENDERNESS);
    p.noWall(SectionSymbol.ROUND_SLENDERNESS);
    return p.build();
  }

  private static Expression inertia(Expression b, Expression h, Expression bi, Expression hi) {
    return b.times(h.pow(3)).minus(bi.times(hi.pow(3))).over(12);
  }

  private static Expression plastic(Expression b, Expression h, Expression bi, Expression hi) {
    return b.times(h.pow(2)).minus(bi.times(hi.pow(2))).over(4);
  }

  /** Two webs, each with half of both flanges. */
  private static Expression shearArea(
      SectionSteps p,
      String axis,
      Reference web,
      Reference thickness,
      Reference across,
      Reference flange) {
    Reference ratio =
        p.step(
            "r_" + axis,
            "half a flange over a web, for shear along " + axis,
            across.times(flange).over(web.times(thickness).times(2)),
            SectionSources.GEOMETRY);
    return ShearAreas.ofWeb(ratio, across.over(2), web, thickness).times(2);
  }

  /** The greatest S/t is at the middle of the webs or, with thin flanges, at the corners. */
  private static Expression peakShearArea(
      Reference inertia, Reference plastic, Reference web, Reference across, Reference length) {
    return inertia.over(max(plastic.over(web.times(4)), across.times(length).over(4)));
  }
}
