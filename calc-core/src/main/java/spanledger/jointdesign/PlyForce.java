package spanledger.jointdesign;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What one of several plies bears of the force of a bolt, or of the shear of a face. Inputs F_1,
 * F_2 (sizes along the first and second axis of the face), s_i (its part); steps P_1, P_2.
 */
public final class PlyForce {

  private static final Source STATICS =
      Source.derived("Equilibrium of plies (docs/theory/joints.md, plies)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private PlyForce() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-ply-force", "What each ply bears");
    Reference first = p.input("F_1", "all along the first axis", Dimension.FORCE);
    Reference second = p.input("F_2", "all along the second axis", Dimension.FORCE);
    Reference part = p.input("s_i", "part of the ply", Dimension.NONE, Domain.NOT_NEGATIVE);
    p.step("P_1", "on the ply, first axis", Dimension.FORCE, first.times(part), STATICS);
    p.step("P_2", "on the ply, second axis", Dimension.FORCE, second.times(part), STATICS);
    return p.build();
  }
}
