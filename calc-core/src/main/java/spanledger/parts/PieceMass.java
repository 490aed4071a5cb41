package spanledger.parts;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The mass of pieces that are cut alike. */
public final class PieceMass {

  /** Inputs A, ρ, L, n (number of pieces); steps m (one piece) and m_all (all of them). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private PieceMass() {}

  private static Procedure procedure() {
    Source mass = Source.derived("Mass = density · volume");
    Procedure.Builder p = Procedure.named("piece-mass", "Mass of pieces");
    Reference area = p.input("A", "area of the section", Dimension.AREA, Domain.POSITIVE);
    Reference density = p.input("ρ", "density", Dimension.DENSITY, Domain.POSITIVE);
    Reference length = p.input("L", "length of a piece", Dimension.LENGTH, Domain.POSITIVE);
    Reference count = p.input("n", "number of pieces", Dimension.NONE, Domain.POSITIVE);
    Reference one =
        p.step("m", "mass of one piece", Dimension.MASS, area.times(density).times(length), mass);
    p.step("m_all", "mass of all", Dimension.MASS, one.times(count), mass);
    return p.build();
  }

  /** The mass of one piece, kg: area in mm², density in kg/mm³, length in mm. */
  static double one(double area, double density, double length) {
    return COMPILED.run(area, density, length, 1)[COMPILED.slot("m")];
  }
}
