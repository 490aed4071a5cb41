package spanledger.section;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.outline.SectionAxes;

/** The calculation behind {@link OutlineShape}. */
final class OutlineProcedure {

  /**
   * An eighth of a turn and a little, so that the major axis of an equal angle is not turned away
   * by rounding.
   */
  static final double EIGHTH_TURN = 0.7853982;

  private static final Dimension PER_AREA = Dimension.whole(-2, 0, 0, 0);
  private static final Source NEAREST =
      Source.derived("The principal axes nearest to the axes of the outline");
  private static final Source TURNED = Source.derived("Rotated axes of a symmetric tensor");

  private OutlineProcedure() {}

  static Procedure define() {
    Procedure.Builder p = Procedure.named("outline", "Properties of an outline");
    SectionAxes.Axes axes = SectionAxes.write(p, "g");
    Reference ey = length(p, "e_y", "farthest fibre from the principal y axis");
    Reference ez = length(p, "e_z", "farthest fibre from the principal z axis");
    given(p, SectionSymbol.PLASTIC_MODULUS_Y);
    given(p, SectionSymbol.PLASTIC_MODULUS_Z);
    Reference sy =
        p.input("A_s_yg", "shear area along y of the outline", Dimension.AREA, Domain.POSITIVE);
    Reference sz =
        p.input("A_s_zg", "shear area along z of the outline", Dimension.AREA, Domain.POSITIVE);
    Reference coupling =
        p.input("c_yz", "shear energy of unit forces along y and z on each other", PER_AREA);
    given(p, SectionSymbol.PEAK_SHEAR_AREA_Y);
    given(p, SectionSymbol.PEAK_SHEAR_AREA_Z);
    given(p, SectionSymbol.TORSION_CONSTANT);
    given(p, SectionSymbol.TORSION_MODULUS);
    p.input("I_w", "warping constant", Dimension.WARPING_CONSTANT, Domain.NOT_NEGATIVE);
    p.input("y_s", "shear centre from the centroid, along y of the outline", Dimension.LENGTH);
    p.input("z_s", "shear centre from the centroid, along z of the outline", Dimension.LENGTH);
    slenderness(p, SectionSymbol.WEB_SLENDERNESS);
    slenderness(p, SectionSymbol.INNER_FLANGE_SLENDERNESS);
    slenderness(p, SectionSymbol.OUTSTAND_SLENDERNESS);
    slenderness(p, SectionSymbol.ROUND_SLENDERNESS);

    Expression quarter = pi().over(2);
    Reference angle = axes.majorAngle();
    Reference turn =
        property(
            p,
            SectionSymbol.PRINCIPAL_ROTATION,
            choose(
                greater(angle, number(EIGHTH_TURN)),
                angle.minus(quarter),
                choose(less(angle, number(-EIGHTH_TURN)), angle.plus(quarter), angle)),
            NEAREST);
    Expression fromMajor = turn.minus(angle).pow(2);
    Reference iy =
        property(
            p,
            SectionSymbol.SECOND_MOMENT_Y,
            choose(less(fromMajor, number(1)), axes.major(), axes.minor()),
            NEAREST);
    Reference iz =
        property(
            p,
            SectionSymbol.SECOND_MOMENT_Z,
            choose(less(fromMajor, number(1)), axes.minor(), axes.major()),
            NEAREST);
    property(p, SectionSymbol.ELASTIC_MODULUS_Y, iy.over(ey), SectionSources.ELASTIC);
    property(p, SectionSymbol.ELASTIC_MODULUS_Z, iz.over(ez), SectionSources.ELASTIC);

    Expression ay = number(1).over(sy);
    Expression az = number(1).over(sz);
    Expression both = sin(turn).times(cos(turn)).times(coupling).times(2);
    property(
        p,
        SectionSymbol.SHEAR_AREA_Y,
        number(1).over(cos(turn).pow(2).times(ay).plus(sin(turn).pow(2).times(az)).plus(both)),
        TURNED);
    property(
        p,
        SectionSymbol.SHEAR_AREA_Z,
        number(1).over(sin(turn).pow(2).times(ay).plus(cos(turn).pow(2).times(az)).minus(both)),
        TURNED);
    return p.build();
  }

  private static Reference length(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  private static void given(Procedure.Builder p, SectionSymbol symbol) {
    p.input(symbol.symbol(), symbol.words(), symbol.dimension(), Domain.POSITIVE);
  }

  private static void slenderness(Procedure.Builder p, SectionSymbol symbol) {
    p.input(symbol.symbol(), symbol.words(), symbol.dimension(), Domain.NOT_NEGATIVE);
  }

  private static Reference property(
      Procedure.Builder p, SectionSymbol symbol, Expression formula, Source source) {
    return p.step(symbol.symbol(), symbol.words(), symbol.dimension(), formula, source);
  }
}
