package spanledger.overturning;

import static spanledger.procedure.Formulas.sqrt;

import spanledger.action.SelfWeight;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The weight of a straight member between its ends. */
public final class MemberWeight {

  /** Inputs A, ρ, g, X_1, Y_1, Z_1, X_2, Y_2, Z_2; steps L (length), W (weight). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private MemberWeight() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("member-weight", "Weight of a member");
    Reference area = p.input("A", "area of the section", Dimension.AREA, Domain.POSITIVE);
    Reference density = p.input("ρ", "density", Dimension.DENSITY, Domain.POSITIVE);
    Reference gravity =
        p.input("g", "acceleration of free fall", Dimension.FORCE_PER_MASS, Domain.POSITIVE);
    Reference x1 = p.input("X_1", "start along X", Dimension.LENGTH);
    Reference y1 = p.input("Y_1", "start along Y", Dimension.LENGTH);
    Reference z1 = p.input("Z_1", "start along Z", Dimension.LENGTH);
    Reference x2 = p.input("X_2", "end along X", Dimension.LENGTH);
    Reference y2 = p.input("Y_2", "end along Y", Dimension.LENGTH);
    Reference z2 = p.input("Z_2", "end along Z", Dimension.LENGTH);
    Reference length =
        p.step(
            "L",
            "length",
            Dimension.LENGTH,
            sqrt(x2.minus(x1).pow(2).plus(y2.minus(y1).pow(2)).plus(z2.minus(z1).pow(2))),
            Source.derived("Distance of the ends"));
    p.step(
        "W",
        "weight",
        Dimension.FORCE,
        area.times(density).times(gravity).times(length),
        Source.derived("Weight = mass · g"));
    return p.build();
  }

  /**
   * The weight, N.
   *
   * @param area mm²
   * @param density kg/mm³
   */
  static double of(double area, double density, Vector from, Vector to) {
    return COMPILED
        .run(
            area,
            density,
            SelfWeight.GRAVITY,
            from.x(),
            from.y(),
            from.z(),
            to.x(),
            to.y(),
            to.z())[COMPILED.slot("W")];
  }
}
