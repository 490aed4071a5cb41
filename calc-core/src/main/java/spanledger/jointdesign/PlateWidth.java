package spanledger.jointdesign;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.sqrt;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The part of a base plate that presses: as far beyond what stands on it as the plate may bend
 * elastically under the greatest pressure that the ground may bear.
 *
 * <p>Inputs t, f_od, p_d, and for each side i of the plate L_i (its length), s_i (of the stem), m_i
 * (the middle of the stem from that of the plate); steps c, for each side B_i (what presses) and
 * e_i (its middle), A (a piece of it, a sixteenth).
 */
public final class PlateWidth {

  private static final Source CLAUSE = Source.fromMemory("EN 1993-1-8:2005", "6.2.5(4), (6.5)");

  private static final Source GEOMETRY = Source.derived("Geometry of the plate and its stem");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PlateWidth() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("base-plate-width", "Base plate: the part of it that presses");
    Reference thickness = p.input("t", "thickness", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("f_od", "design yield strength", Dimension.STRESS, Domain.POSITIVE);
    Reference allowed =
        p.input("p_d", "what the ground may bear", Dimension.STRESS, Domain.POSITIVE);
    Reference beyond =
        p.step(
            "c",
            "how far beyond the stem it presses",
            Dimension.LENGTH,
            thickness.times(sqrt(strength.over(allowed.times(3)))),
            CLAUSE);
    List<Reference> sides = new ArrayList<>();
    for (int i = 1; i <= 2; i++) {
      String side = i == 1 ? "first" : "second";
      Reference length =
          p.input("L_" + i, side + " side of the plate", Dimension.LENGTH, Domain.POSITIVE);
      Reference stem =
          p.input("s_" + i, "stem along the " + side + " side", Dimension.LENGTH, Domain.POSITIVE);
      Reference middle =
          p.input("m_" + i, "middle of the stem along the " + side + " side", Dimension.LENGTH);
      Reference lower =
          p.step(
              "l_" + i,
              "where it begins, from the middle of the plate",
              Dimension.LENGTH,
              max(length.over(-2), middle.minus(stem.over(2)).minus(beyond)),
              GEOMETRY);
      Reference upper =
          p.step(
              "u_" + i,
              "where it ends",
              Dimension.LENGTH,
              min(length.over(2), middle.plus(stem.over(2)).plus(beyond)),
              GEOMETRY);
      Reference width =
          p.step(
              "B_" + i,
              "what presses along the " + side + " side",
              Dimension.LENGTH,
              upper.minus(lower),
              GEOMETRY);
      p.step("e_" + i, "its middle", Dimension.LENGTH, upper.plus(lower).over(2), GEOMETRY);
      sides.add(width);
    }
    p.step(
        "A",
        "a piece of it, a sixteenth",
        Dimension.AREA,
        sides.get(0).times(sides.get(1)).over(16),
        GEOMETRY);
    return p.build();
  }
}
