package spanledger.jointdesign;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What one anchor adds to the bending of a base plate about a line beside its stem. Inputs M_b (of
 * the anchors before it), F_t, m (how far it lies beyond the line); step M.
 */
public final class PlateLineMoment {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PlateLineMoment() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("base-plate-moment", "Base plate bent by the pull of its anchors");
    Reference before = p.input("M_b", "by the anchors before", Dimension.MOMENT);
    Reference pull = p.input("F_t", "tension of the anchor", Dimension.FORCE);
    Reference arm = p.input("m", "how far it lies beyond the line", Dimension.LENGTH);
    p.step(
        "M",
        "bending about the line",
        Dimension.MOMENT,
        before.plus(max(pull, constant(0, Dimension.FORCE)).times(arm)),
        Source.derived("Equilibrium (docs/theory/joints.md)"));
    return p.build();
  }
}
