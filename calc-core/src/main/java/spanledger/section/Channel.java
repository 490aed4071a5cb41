package spanledger.section;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;

/**
 * A channel with equal flanges; its web lies along z, its flanges point along +y.
 *
 * @param depth along z, outside, mm
 * @param width of the flanges, along y, from the back of the web, mm
 * @param flangeThickness mm
 * @param webThickness mm
 */
public record Channel(double depth, double width, double flangeThickness, double webThickness)
    implements Shape {

  private static final String KIND = "channel";

  /** Inputs h, b, t_f, t_w. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException naming the size that is not positive, or that leaves no web or
   *     no outstands
   */
  public Channel {
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
    SectionSteps p = new SectionSteps("channel", "Properties of a channel");
    Reference h = p.size("h", "depth");
    Reference b = p.size("b", "width of the flanges");
    Reference tf = p.size("t_f", "thickness of the flanges");
    Reference tw = p.size("t_w", "thickness of the web");
    Reference hi =
        p.step("h_i", "clear depth of the web", h.minus(tf.times(2)), SectionSources.GEOMETRY);
    Reference bo = p.step("b_o", "outstand of a flange", b.minus(tw), SectionSources.GEOMETRY);
    Reference hm =
        p.step("h_m", "depth between flange midlines", h.minus(tf), SectionSources.GEOMETRY);
    Reference bm =
        p.step(
            "b_m", "flange from the web's midline", b.minus(tw.over(2)), SectionSources.GEOMETRY);

    Reference area =
        p.property(
            SectionSymbol.AREA, h.times(tw).plus(bo.times(tf).times(2)), SectionSources.GEOMETRY);
    Reference yc =
        p.step(
            "y_c",
            "centroid from the back of the web",
            hi.times(tw.pow(2)).plus(tf.times(b.pow(2)).times(2)).over(area.times(2)),
            SectionSources.GEOMETRY);
    Reference iy =
        p.property(
            SectionSymbol.SECOND_MOMENT_Y,
            b.times(h.pow(3)).minus(bo.times(hi.pow(3))).over(12),
            SectionSources.GEOMETRY);
    Reference iz =
        p.property(
            SectionSymbol.SECOND_MOMENT_Z,
            hi.times(tw.pow(3))
                .plus(tf.times(b.pow(3)).times(2))
                .over(3)
                .minus(area.times(yc.pow(2))),
            SectionSources.GEOMETRY);
    p.property(SectionSymbol.ELASTIC_MODULUS_Y, iy.times(2).over(h), SectionSources.ELASTIC);
    p.property(
        SectionSymbol.ELASTIC_MODULUS_Z, iz.over(max(yc, b.minus(yc))), SectionSources.ELASTIC);
    Reference wy =
        p.property(
            SectionSymbol.PLASTIC_MODULUS_Y,
            b.times(h.pow(2)).minus(bo.times(hi.pow(2))).over(4),
            SectionSources.PLASTIC);
    minorPlasticModulus(p, h, b, tf, tw, bo, area);
    p.notTurned();

    Reference r =
        p.step(
            "r_z",
            "a flange over the web",
            bm.times(tf).over(hm.times(tw)),
            SectionSources.GEOMETRY);
    p.property(
        SectionSymbol.SHEAR_AREA_Z, ShearAreas.ofWeb(r, bm, hm, tw), SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.SHEAR_AREA_Y,
        ShearAreas.ofChannelFlanges(p, hm, bm, tw, tf),
        SectionSources.SHEAR_ENERGY);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Y,
        iz.over(max(b.minus(yc).pow(2), yc.minus(tw.over(2)).times(hm)).over(2)),
        SectionSources.SHEAR_FLOW);
    p.property(
        SectionSymbol.PEAK_SHEAR_AREA_Z,
        iy.over(max(wy.over(tw), bm.times(hm)).over(2)),
        SectionSources.SHEAR_FLOW);

    Reference it =
        p.property(
            SectionSymbol.TORSION_CONSTANT,
            b.times(tf.pow(3)).times(2).plus(hi.times(tw.pow(3))).over(3),
            SectionSources.OPEN_TORSION);
    p.property(SectionSymbol.TORSION_MODULUS, it.over(max(tf, tw)), SectionSources.OPEN_TORSION);

    p.property(SectionSymbol.WEB_SLENDERNESS, hi.over(tw), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.INNER_FLANGE_SLENDERNESS);
    p.property(SectionSymbol.OUTSTAND_SLENDERNESS, bo.over(tf), SectionSources.FLAT_WIDTH);
    p.noWall(SectionSymbol.ROUND_SLENDERNESS);
    return p.build();
  }

  /**
   * The axis of equal areas lies in the web if the web has half of the area or more, else in the
   * flanges.
   */
  private static void minorPlasticModulus(
      SectionSteps p,
      Reference h,
      Reference b,
      Reference tf,
      Reference tw,
      Reference bo,
      Reference area) {
    var webIsHalf = atMost(area.over(2), h.times(tw));
    Reference yp =
        p.step(
            "y_p",
            "axis of equal areas from the back of the web",
            choose(webIsHalf, area.over(h.times(2)), b.minus(area.over(tf.times(4)))),
            SectionSources.PLASTIC);
    Expression inWeb =
        h.times(yp.pow(2).plus(tw.minus(yp).pow(2)))
            .over(2)
            .plus(tf.times(bo).times(b.plus(tw).minus(yp.times(2))));
    Expression inFlanges =
        h.times(tw)
            .times(yp.minus(tw.over(2)))
            .plus(tf.times(yp.minus(tw).pow(2).plus(b.minus(yp).pow(2))));
    p.property(
        SectionSymbol.PLASTIC_MODULUS_Z,
        choose(webIsHalf, inWeb, inFlanges),
        SectionSources.PLASTIC);
  }
}
