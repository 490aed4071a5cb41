package spanledger.resistance.joint;

import java.util.List;
import spanledger.procedure.Procedure;

/** The procedures of these checks, in the order in which they feed one another. */
public final class JointProcedures {

  private static final List<Procedure> ALL =
      List.of(
          En1999BoltShear.PROCEDURE,
          En1999BoltTension.TENSION,
          En1999BoltTension.COMBINED,
          En1999Bearing.PROCEDURE);

  private JointProcedures() {}

  /** All of them. */
  public static List<Procedure> all() {
    return ALL;
  }
}
