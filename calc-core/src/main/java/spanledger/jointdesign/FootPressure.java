package spanledger.jointdesign;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * How hard a piece of a base plate presses on the ground. Inputs C, A, p_d; steps p, η_p.
 *
 * <p>The plate is stiff beside the ground, and the ground bears what the job allows.
 */
public final class FootPressure {

  /** Where the formulas come from. */
  static final String CLAUSE = "force per area";

  private static final Source MECHANICS = Source.derived("Force per area (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FootPressure() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("foot-pressure", "Base plate on the ground");
    Reference force = p.input("C", "pressing of a piece of the plate", Dimension.FORCE);
    Reference area = p.input("A", "area of the piece", Dimension.AREA, Domain.POSITIVE);
    Reference allowed =
        p.input("p_d", "what the ground may bear", Dimension.STRESS, Domain.POSITIVE);
    Reference pressure =
        p.step("p", "pressure on the ground", Dimension.STRESS, force.over(area), MECHANICS);
    p.step(
        "η_p",
        "pressure per what the ground may bear",
        Dimension.NONE,
        pressure.over(allowed),
        MECHANICS);
    return p.build();
  }
}
