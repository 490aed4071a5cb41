package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Springs at one bolt, one behind the other: their flexibilities add. Inputs k_1, k_2 (k_3, k_4);
 * step k_x.
 */
public final class SpringsInSeries {

  /** Two springs. */
  public static final Procedure TWO = procedure("springs-in-series-2", 2);

  /** Three springs. */
  public static final Procedure THREE = procedure("springs-in-series-3", 3);

  /** Four springs. */
  public static final Procedure FOUR = procedure("springs-in-series-4", 4);

  private SpringsInSeries() {}

  private static Procedure procedure(String name, int count) {
    Procedure.Builder p = Procedure.named(name, count + " springs one behind the other");
    Reference first = spring(p, 1);
    var flexibility = first.pow(-1).plus(spring(p, 2).pow(-1));
    for (int number = 3; number <= count; number++) {
      flexibility = flexibility.plus(spring(p, number).pow(-1));
    }
    p.step(
        "k_x",
        "stiffness of all together",
        Dimension.LINE_LOAD,
        flexibility.pow(-1),
        StiffnessSources.MECHANICS);
    return p.build();
  }

  private static Reference spring(Procedure.Builder p, int number) {
    return p.input("k_" + number, "spring " + number, Dimension.LINE_LOAD, Domain.POSITIVE);
  }
}
