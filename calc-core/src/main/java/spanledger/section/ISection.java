package spanledger.section;

import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;

/**
 * An I-section with equal flanges, its web along z.
 *
 * @param depth along z, outside, mm
 * @param width of the flanges, along y, mm
 * @param flangeThickness mm
 * @param webThickness mm
 */
public record ISection(double depth, double width, double flangeThickness, double webThickness)
    implements Shape {

  private static final String KIND = "I-section";

  /** Inputs h, b, t_f, t_w. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException naming the size that is not positive, or that leaves no web or
   *     no outstands
   */
  public ISection {
    Sizes.requirePositive(KIND, "depth", depth);
    Sizes.requirePositive(KIND, "width", width);
    Sizes.requirePositive(KIND, "flange thickness", flangeThickness);
    Sizes.requirePositive(KIND, "web thickness", webThickness);
    Sizes.requireBelow(KIND, "flange thickness", flangeThickness, "half the depth", depth / 2);
    Sizes.requireBelow(KIND, "web thickness", webThickness, "the width", width);
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
    return new double[] {depth, width, flangeThickness, webThickness};
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
    SectionSteps p = new SectionSteps("i-section", "Properties of an I-section");
    Reference h = p.size("h", "depth");
    Reference b = p.size("b", "width of the flanges");
    Reference tf = p.size("t_f", "thickness of the flanges");
    Reference tw = p.size("t_w", "thickness of the web");
    Reference hi =
        p.step("h_i", "clear depth of the web", h.minus(tf.times(2)), SectionSources.GEOMETRY);
    Reference hm =
        p.step("h_m", "depth between flange midlines", h.minus(tf), SectionSources.GEOMETRY);
    Reference bo =
        p.step("b_o", "both outstands of a flange", b.minus(tw), SectionSources.GEOMETRY);

    p.property(
        SectionSymbol.AREA, b.times(tf).times(2).plus(hi.times(tw)), SectionSources.GEOMETRY);
    Reference iy =
        p.property(
            SectionSymbol.SECOND_MOMENT_Y,
            b.times(h.pow(3)).minus(bo.times(hi.pow(3))).over(12),
            SectionSources.GEOMETRY);
    Reference iz =
        p.property(
            SectionSymbol.SECOND_MOMENT_Z,
            tf.times(b.pow(3)).times(2).plus(hi.times(tw.pow(3))).over(12),
            SectionSources.GEOMETRY);
    p.property(SectionSymbol.ELASTIC_MODULUS_Y, iy.times(2).over(h), SectionSources.ELASTIC);
    p.property(SectionSymbol.ELASTIC_MODULUS_Z, iz.times(2).over(b), SectionSources.ELASTIC);
    Reference wy =
        p.property(
            SectionSymbol.PLASTIC_MODULUS_Y,
            b.times(h.pow(2)).minus(bo.times(hi.pow(2))).over(4),
            SectionSources.PLASTIC);
    p.property(
        SectionSymbol.PLASTIC_MODULUS_Z,
        tf.times(b.pow(2)).times(2).plus(hi.times(tw.pow(2))).over(4),
        SectionSources.PLASTIC);
    p.notTurned();

    Reference r =
        p.step(
            "r_z",
            "a flange over the web",
            b.times(tf).over(hm.times(tw)),
            SectionSources.GEOMETRY);
    p.property(
        SectionSymbol.SHEAR_AREA_Y, b.times(tf).times(5).over(3), SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.SHEAR_AREA_Z,
        ShearAreas.ofWeb(r, b.over(2), hm, tw),
        SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Y, b.times(tf).times(4).over(3), SectionSources.SHEAR_FLOW);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Z,
        iy.over(max(wy.over(tw.times(2)), bo.times(hm).over(4))),
        SectionSources.SHEAR_FLOW);

    Reference it =
        p.property(
            SectionSymbol.TORSION_CONSTANT,
            b.times(tf.pow(3)).times(2).plus(hi.times(tw.pow(3))).over(3),
            SectionSources.OPEN_TORSION);
    p.property(SectionSymbol.TORSION_MODULUS, it.over(max(tf, tw)), SectionSources.OPEN_TORSION);

    p.property(SectionSymbol.WEB_SLENDERNESS, hi.over(tw), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.INNER_FLANGE_SLENDERNESS);
    p.property(SectionSymbol.OUTSTAND_SLENDERNESS, bo.over(tf.times(2)), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.ROUND_SLENDERNESS);
    return p.build();
  }
}
