package spanledger.jointdesign;

import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The shear of a bolt in the plane that has most, beside the first or the last plies. Inputs F_v,
 * s_1, s_2 (parts that the first and the last plies bear); step F_p.
 */
public final class PlaneShear {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private PlaneShear() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-plane-shear", "Shear of bolts in the plane that has most");
    Reference all = p.input("F_v", "shear that the bolt hands on", Dimension.FORCE);
    Reference first =
        p.input("s_1", "part of the first plies", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference last = p.input("s_2", "part of the last plies", Dimension.NONE, Domain.NOT_NEGATIVE);
    p.step(
        "F_p",
        "shear in one plane",
        Dimension.FORCE,
        all.times(max(first, last)),
        Source.derived("Equilibrium of a bolt between plies (docs/theory/joints.md, plies)"));
    return p.build();
  }
}
