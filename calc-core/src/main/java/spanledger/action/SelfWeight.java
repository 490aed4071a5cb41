package spanledger.action;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The weight of a member per length. */
public final class SelfWeight {

  /** Standard acceleration of free fall, N/kg (exact by definition; ISO 80000-3). */
  public static final double GRAVITY = 9.80665;

  /** Inputs A, ρ, g; step q_G (N/mm, downward). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private SelfWeight() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("self-weight", "Self-weight of a member");
    var area = p.input("A", "area of the section", Dimension.AREA, Domain.POSITIVE);
    var density = p.input("ρ", "density", Dimension.DENSITY, Domain.POSITIVE);
    var gravity =
        p.input("g", "acceleration of free fall", Dimension.FORCE_PER_MASS, Domain.POSITIVE);
    p.step(
        "q_G",
        "weight per length",
        Dimension.LINE_LOAD,
        area.times(density).times(gravity),
        Source.derived("Weight = mass · g"));
    return p.build();
  }

  /**
   * The weight per length, N/mm.
   *
   * @param area mm²
   * @param density kg/mm³
   */
  public static double perLength(double area, double density) {
    return COMPILED.run(area, density, GRAVITY)[COMPILED.slot("q_G")];
  }
}
