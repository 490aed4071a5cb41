package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The moment of a member end beside the one that tests of its joint resist. Inputs M (either sense;
 * the joint is taken to act alike), M_k, γ_M; steps M_Ed, M_Rd, η.
 */
public final class TestedMoment {

  static final String CLAUSE = "EN 1990, D.7.2";

  private static final Source STATICS = Source.derived("Size of the moment, either sense");
  private static final Source TESTS = Source.fromMemory("EN 1990:2002", "Annex D, D.7.2(1)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private TestedMoment() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("tested-moment", "Moment of a joint known by tests");
    Reference moment = p.input("M", "moment at the member end", Dimension.MOMENT);
    Reference characteristic =
        p.input("M_k", "characteristic moment resistance", Dimension.MOMENT, Domain.POSITIVE);
    Reference factor = p.input("γ_M", "partial factor", Dimension.NONE, Domain.POSITIVE);
    Reference demand = p.step("M_Ed", "design moment", Dimension.MOMENT, abs(moment), STATICS);
    Reference capacity =
        p.step("M_Rd", "design resistance", Dimension.MOMENT, characteristic.over(factor), TESTS);
    p.step("η", "utilisation", Dimension.NONE, demand.over(capacity), TESTS);
    return p.build();
  }
}
