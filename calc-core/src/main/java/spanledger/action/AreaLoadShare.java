package spanledger.action;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The line load on a member that carries a width of floor. */
public final class AreaLoadShare {

  /** Inputs p, b_t; step q (N/mm). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private AreaLoadShare() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("area-load-share", "Line load from an area load");
    var pressure = p.input("p", "area load", Dimension.STRESS);
    var width = p.input("b_t", "width of floor carried", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    p.step(
        "q",
        "line load on the member",
        Dimension.LINE_LOAD,
        pressure.times(width),
        Source.derived("Deck spanning simply from member to member"));
    return p.build();
  }

  /**
   * The line load, N/mm.
   *
   * @param pressure MPa
   * @param width mm
   */
  public static double lineLoad(double pressure, double width) {
    return COMPILED.run(pressure, width)[COMPILED.slot("q")];
  }
}
