package spanledger.section;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Expression;
import spanledger.procedure.Reference;

/** Effective areas for shear deformation of walls that carry shear together. */
final class ShearAreas {

  private ShearAreas() {}

  /**
   * The effective area, along its length, of one web that has flanges of the same area at both
   * ends: with r = flange area / web area and c the length over which shear flows along a flange
   * into the web,
   *
   * <pre>web area · (1 + 6r)² / (1.2 + 12r + 36r² + 24r(c/web length)²).</pre>
   *
   * <p>This is I²/∫(S²/t)ds of the midlines written out; docs/theory derives it. Without flanges it
   * is 5/6 of the web.
   *
   * @param flangeRatio r
   * @param reach c
   * @param length length of the web between flange midlines
   * @param thickness thickness of the web
   */
  static Expression ofWeb(
      Expression flangeRatio, Expression reach, Expression length, Expression thickness) {
    Expression shape = number(1).plus(flangeRatio.times(6)).pow(2);
    Expression energy =
        number(1.2)
            .plus(flangeRatio.times(12))
            .plus(flangeRatio.pow(2).times(36))
            .plus(flangeRatio.times(24).times(reach.over(length).pow(2)));
    return thickness.times(length).times(shape).over(energy);
  }

  /**
   * The effective area of a channel along its flanges: I²/∫(S²/t)ds of the midlines.
   *
   * @param steps where the steps on the way are added
   * @param height between flange midlines
   * @param width from the web's midline to the flange tips
   * @param web thickness of the web
   * @param flange thickness of the flanges
   */
  static Expression ofChannelFlanges(
      SectionSteps steps, Reference height, Reference width, Reference web, Reference flange) {
    Reference flangeArea =
        steps.step("A_f", "area of one flange", flange.times(width), SectionSources.GEOMETRY);
    Reference webArea =
        steps.step("A_w", "area of the web", web.times(height), SectionSources.GEOMETRY);
    Reference centre =
        steps.step(
            "e_m",
            "centroid of the midlines from the web's midline",
            flangeArea.times(width).over(flangeArea.times(2).plus(webArea)),
            SectionSources.GEOMETRY);
    Reference tip =
        steps.step(
            "a_m", "flange tips from that centroid", width.minus(centre), SectionSources.GEOMETRY);
    Reference inertia =
        steps.step(
            "I_m_z",
            "second moment of the midlines about z",
            flangeArea
                .times(width.pow(2).over(6))
                .plus(flangeArea.times(2).times(width.over(2).minus(centre).pow(2)))
                .plus(webArea.times(centre.pow(2))),
            SectionSources.GEOMETRY);
    Expression alongFlanges =
        flangeArea
            .times(2)
            .times(width.pow(2))
            .times(tip.pow(2).over(3).minus(tip.times(width).over(4)).plus(width.pow(2).over(20)));
    Expression alongWeb = webArea.times(centre.pow(2)).times(height.pow(2)).over(12);
    return inertia.pow(2).over(alongFlanges.plus(alongWeb));
  }
}
