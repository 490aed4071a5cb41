package spanledger.jointdesign;

import static spanledger.procedure.Formulas.max;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The greatest tension of the bolts of a face, bolt by bolt. Inputs F_m (the greatest so far), F_t;
 * step F_g.
 */
public final class MostPulled {

  private static final Source CHOICE = Source.derived("The greater (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private MostPulled() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-most-pulled", "The bolt of a face in most tension");
    Reference before = p.input("F_m", "greatest tension of the bolts before", Dimension.FORCE);
    Reference own = p.input("F_t", "tension of this bolt", Dimension.FORCE);
    p.step("F_g", "the greater", Dimension.FORCE, max(before, own), CHOICE);
    return p.build();
  }

  /**
   * The greatest, whichever bolt it is.
   *
   * @param demands of the bolts, at least one
   */
  static Feed of(List<Working> demands) {
    if (demands.isEmpty()) {
      throw new IllegalArgumentException("A face needs a bolt.");
    }
    Feed greatest = demands.get(0).feed("F_t");
    for (Working demand : demands.subList(1, demands.size())) {
      greatest =
          Working.of(COMPILED, demand.label())
              .with("F_m", greatest)
              .from(demand, "F_t", "F_t")
              .run()
              .feed("F_g");
    }
    return greatest;
  }
}
