package spanledger.section.outline;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a straight edge adds to the area integrals of the outline it bounds: the integrals over the
 * triangle between the edge and the origin, positive when the edge passes the origin to the left.
 *
 * <p>One row of a table per edge; the sums over all edges are the integrals of the section. Exact.
 */
public final class EdgeIntegrals {

  private static final Source GREEN =
      Source.derived("Green's theorem for a triangle with the origin as corner");

  /** Inputs y_1, z_1, y_2, z_2; steps ΔL, a, ΔA, ΔS_z, ΔS_y, ΔI_z, ΔI_y, ΔI_yz. */
  public static final Procedure PROCEDURE = procedure();

  private EdgeIntegrals() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("edge-integrals", "Share of a straight edge");
    Reference y1 = p.input("y_1", "y of the start", Dimension.LENGTH);
    Reference z1 = p.input("z_1", "z of the start", Dimension.LENGTH);
    Reference y2 = p.input("y_2", "y of the end", Dimension.LENGTH);
    Reference z2 = p.input("z_2", "z of the end", Dimension.LENGTH);
    p.step(
        "ΔL",
        "length of the edge",
        Dimension.LENGTH,
        y2.minus(y1).pow(2).plus(z2.minus(z1).pow(2)).pow(0.5),
        GREEN);
    Reference a =
        p.step(
            "a",
            "twice the area of the triangle with the origin",
            Dimension.AREA,
            y1.times(z2).minus(y2.times(z1)),
            GREEN);
    p.step("ΔA", "share of the area", Dimension.AREA, a.over(2), GREEN);
    p.step(
        "ΔS_z",
        "share of the first moment ∫y dA",
        Dimension.SECTION_MODULUS,
        a.times(y1.plus(y2)).over(6),
        GREEN);
    p.step(
        "ΔS_y",
        "share of the first moment ∫z dA",
        Dimension.SECTION_MODULUS,
        a.times(z1.plus(z2)).over(6),
        GREEN);
    p.step("ΔI_z", "share of ∫y² dA", Dimension.SECOND_MOMENT, a.times(squares(y1, y2)), GREEN);
    p.step("ΔI_y", "share of ∫z² dA", Dimension.SECOND_MOMENT, a.times(squares(z1, z2)), GREEN);
    p.step(
        "ΔI_yz",
        "share of ∫yz dA",
        Dimension.SECOND_MOMENT,
        a.times(
            y1.times(z2)
                .plus(y1.times(z1).times(2))
                .plus(y2.times(z2).times(2))
                .plus(y2.times(z1))
                .over(24)),
        GREEN);
    return p.build();
  }

  private static Expression squares(Expression first, Expression second) {
    return first.pow(2).plus(first.times(second)).plus(second.pow(2)).over(12);
  }
}
