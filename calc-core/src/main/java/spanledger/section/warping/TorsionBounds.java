package spanledger.section.warping;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The torsion constant between its bounds, and how far it can be off. */
public final class TorsionBounds {

  private static final Source BOUNDS =
      Source.published("Quart. Appl. Math. 5", "W. Prager and J. L. Synge, 1947");

  /** Inputs I_low, I_up; steps I_t, ε_t. */
  public static final Procedure PROCEDURE = procedure();

  private TorsionBounds() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("torsion-bounds", "Torsion constant between its bounds");
    Reference low =
        p.input(
            "I_low",
            "bound from the stress function",
            Dimension.SECOND_MOMENT,
            // Zero on a mesh without nodes inside.
            Domain.NOT_NEGATIVE);
    Reference up =
        p.input(
            "I_up", "bound from the warping function", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference mean =
        p.step("I_t", "torsion constant", Dimension.SECOND_MOMENT, low.plus(up).over(2), BOUNDS);
    p.step(
        "ε_t",
        "largest relative error for the meshed shape",
        Dimension.NONE,
        up.minus(low).over(2).over(mean),
        BOUNDS);
    return p.build();
  }
}
