package spanledger.action;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The line load of a force that stands on a length of a member. */
public final class PatchLoad {

  /** Inputs P, a; step q (N/mm). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private PatchLoad() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("patch-load", "Line load of a force on a patch");
    var force = p.input("P", "force", Dimension.FORCE);
    var side =
        p.input("a", "length of the patch along the member", Dimension.LENGTH, Domain.POSITIVE);
    p.step(
        "q",
        "line load on the member",
        Dimension.LINE_LOAD,
        force.over(side),
        Source.derived("Force spread evenly over the patch"));
    return p.build();
  }

  /**
   * The line load, N/mm.
   *
   * @param force N
   * @param length mm
   */
  public static double intensity(double force, double length) {
    return COMPILED.run(force, length)[COMPILED.slot("q")];
  }
}
