package spanledger.section.outline;

import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The plastic modulus from the half of the area on the left of the neutral axis, whose integrals
 * are taken about a point of that axis.
 */
public final class PlasticModulus {

  private static final Source HALVES =
      Source.derived("Full plastic bending without axial force: equal areas on both sides");

  /** Inputs A, A_h, S_zh, S_yh, α, v_0; steps ε, S_n, S_m, W_pl. */
  public static final Procedure PROCEDURE = procedure();

  private PlasticModulus() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("plastic-modulus", "Plastic section modulus");
    Reference area = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    Reference half =
        p.input("A_h", "area on the positive side of the neutral axis", Dimension.AREA);
    Reference sz =
        p.input(
            "S_zh",
            "∫y dA of that area, y from a point of the neutral axis",
            Dimension.SECTION_MODULUS);
    Reference sy =
        p.input(
            "S_yh",
            "∫z dA of that area, z from a point of the neutral axis",
            Dimension.SECTION_MODULUS);
    Reference angle = p.input("α", "angle of the axis, to the left of y", Dimension.NONE);
    Reference offset =
        p.input("v_0", "neutral axis from the centroid, to the left of the axis", Dimension.LENGTH);
    p.step(
        "ε",
        "what both sides differ by, of the area: zero but for rounding",
        Dimension.NONE,
        half.times(2).minus(area).over(area),
        HALVES);
    Reference above =
        p.step(
            "S_n",
            "first moment of the positive side about the neutral axis",
            Dimension.SECTION_MODULUS,
            sy.times(cos(angle)).minus(sz.times(sin(angle))),
            AxisDistance.LINE);
    Reference below =
        p.step(
            "S_m",
            "first moment of the negative side, taken positive",
            Dimension.SECTION_MODULUS,
            above.plus(offset.times(area)),
            Source.derived("First moment of the whole about the neutral axis is −v_0 A"));
    p.step("W_pl", "plastic section modulus", Dimension.SECTION_MODULUS, above.plus(below), HALVES);
    return p.build();
  }
}
