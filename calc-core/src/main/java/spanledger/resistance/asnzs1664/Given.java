package spanledger.resistance.asnzs1664;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Sources and inputs that the procedures of AS/NZS 1664.1 have in common. */
final class Given {

  private static final String WORK = "AS/NZS 1664.1:1997";

  private Given() {}

  static Source clause(String place) {
    return Source.fromMemory(WORK, place);
  }

  /** A capacity factor, for example {@code φ_y}. */
  static Reference factor(Procedure.Builder p, String mark, String of) {
    return p.input("φ_" + mark, "capacity factor, " + of, Dimension.NONE, Domain.FRACTION);
  }

  /** The coefficient by which the yield strength of compressed members is divided. */
  static Reference knee(Procedure.Builder p) {
    return p.input(
        "k_c",
        "coefficient for the knee of the stress-strain curve",
        Dimension.NONE,
        new Domain(1, true, 2));
  }
}
