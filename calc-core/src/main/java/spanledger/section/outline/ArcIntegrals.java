package spanledger.section.outline;

import static spanledger.procedure.Formulas.atan;
import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What an arc adds to the area integrals of the outline beyond its chord: the integrals over the
 * circular segment between chord and arc, negative where the arc turns to the right.
 *
 * <p>The chord itself adds what {@link EdgeIntegrals} says. Exact.
 */
public final class ArcIntegrals {

  private static final Source CHORD = Source.derived("Geometry of a circle through two points");
  private static final Source SEGMENT =
      Source.derived("Circular sector less the triangle under the chord");
  private static final Source STEINER = Source.derived("Parallel axes and rotated axes");

  /**
   * Inputs y_1, z_1, y_2, z_2, bulge; steps end in ΔL, ΔA, ΔS_z, ΔS_y, ΔI_z, ΔI_y, ΔI_yz. ΔL is the
   * length of the whole arc, the others leave the share of the chord out.
   */
  public static final Procedure PROCEDURE = procedure();

  private ArcIntegrals() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("arc-integrals", "Share of an arc beyond its chord");
    Reference y1 = p.input("y_1", "y of the start", Dimension.LENGTH);
    Reference z1 = p.input("z_1", "z of the start", Dimension.LENGTH);
    Reference y2 = p.input("y_2", "y of the end", Dimension.LENGTH);
    Reference z2 = p.input("z_2", "z of the end", Dimension.LENGTH);
    Reference bulge =
        p.input("bulge", "tangent of a quarter of the turn, left positive", Dimension.NONE);

    Reference turn =
        p.step("φ", "turn of the arc, left positive", Dimension.NONE, atan(bulge).times(4), CHORD);
    Reference chord =
        p.step(
            "c",
            "length of the chord",
            Dimension.LENGTH,
            y2.minus(y1).pow(2).plus(z2.minus(z1).pow(2)).pow(0.5),
            CHORD);
    Reference radius =
        p.step(
            "r",
            "radius, negative when turning right",
            Dimension.LENGTH,
            chord.times(bulge.pow(2).plus(number(1))).over(bulge.times(4)),
            CHORD);
    Reference ny =
        p.step(
            "n_y",
            "y part of the normal right of the chord",
            Dimension.NONE,
            z2.minus(z1).over(chord),
            CHORD);
    Reference nz =
        p.step(
            "n_z",
            "z part of the normal right of the chord",
            Dimension.NONE,
            y1.minus(y2).over(chord),
            CHORD);
    Expression half = turn.over(2);
    Reference reach =
        p.step(
            "d",
            "distance of the chord from the centre",
            Dimension.LENGTH,
            radius.times(cos(half)),
            CHORD);
    Reference yc =
        p.step(
            "y_c",
            "y of the centre",
            Dimension.LENGTH,
            y1.plus(y2).over(2).minus(ny.times(reach)),
            CHORD);
    Reference zc =
        p.step(
            "z_c",
            "z of the centre",
            Dimension.LENGTH,
            z1.plus(z2).over(2).minus(nz.times(reach)),
            CHORD);

    p.step("ΔL", "length of the arc", Dimension.LENGTH, radius.times(turn), CHORD);
    Reference area =
        p.step(
            "ΔA",
            "area of the segment",
            Dimension.AREA,
            radius.pow(2).times(turn.minus(sin(turn))).over(2),
            SEGMENT);
    Reference first =
        p.step(
            "S_n",
            "first moment of the segment about its centre",
            Dimension.SECTION_MODULUS,
            radius.pow(3).times(sin(half).pow(3)).times(2).over(3),
            SEGMENT);
    Reference along =
        p.step(
            "I_n",
            "second moment of the segment along the normal",
            Dimension.SECOND_MOMENT,
            radius
                .pow(4)
                .times(
                    turn.plus(sin(turn)).over(8).minus(sin(half).times(cos(half).pow(3)).over(2))),
            SEGMENT);
    Reference across =
        p.step(
            "I_c",
            "second moment of the segment along the chord",
            Dimension.SECOND_MOMENT,
            radius
                .pow(4)
                .times(
                    turn.minus(sin(turn)).over(8).minus(sin(half).pow(3).times(cos(half)).over(6))),
            SEGMENT);

    p.step(
        "ΔS_z",
        "share of the first moment ∫y dA",
        Dimension.SECTION_MODULUS,
        yc.times(area).plus(ny.times(first)),
        STEINER);
    p.step(
        "ΔS_y",
        "share of the first moment ∫z dA",
        Dimension.SECTION_MODULUS,
        zc.times(area).plus(nz.times(first)),
        STEINER);
    p.step(
        "ΔI_z",
        "share of ∫y² dA",
        Dimension.SECOND_MOMENT,
        yc.pow(2)
            .times(area)
            .plus(yc.times(ny).times(first).times(2))
            .plus(ny.pow(2).times(along))
            .plus(nz.pow(2).times(across)),
        STEINER);
    p.step(
        "ΔI_y",
        "share of ∫z² dA",
        Dimension.SECOND_MOMENT,
        zc.pow(2)
            .times(area)
            .plus(zc.times(nz).times(first).times(2))
            .plus(nz.pow(2).times(along))
            .plus(ny.pow(2).times(across)),
        STEINER);
    p.step(
        "ΔI_yz",
        "share of ∫yz dA",
        Dimension.SECOND_MOMENT,
        yc.times(zc)
            .times(area)
            .plus(yc.times(nz).plus(zc.times(ny)).times(first))
            .plus(ny.times(nz).times(along.minus(across))),
        STEINER);
    return p.build();
  }
}
