package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Two faces that hand on the same force one behind the other: their flexibilities add, bound by
 * bound. Inputs k_p1, k_n1, k_low1, k_p2, k_n2, k_low2; steps k_p, k_n, k_low, k_high.
 */
public final class FacesInSeries {

  /** Along an axis, N/mm. */
  public static final Procedure ALONG = procedure("along", Dimension.LINE_LOAD);

  /** About an axis, N·mm/rad. */
  public static final Procedure ABOUT = procedure("about", Dimension.MOMENT);

  private FacesInSeries() {}

  private static Procedure procedure(String which, Dimension dimension) {
    Procedure.Builder p =
        Procedure.named(
            "faces-in-series-" + which, "Faces one behind the other, " + which + " an axis");
    Reference[] inputs = new Reference[6];
    for (int face = 1; face <= 2; face++) {
      int at = 3 * face - 3;
      inputs[at] = input(p, "k_p" + face, "stiffness forwards of face " + face, dimension);
      inputs[at + 1] = input(p, "k_n" + face, "stiffness backwards of face " + face, dimension);
      inputs[at + 2] = input(p, "k_low" + face, "lower bound of face " + face, dimension);
    }
    Reference positive =
        p.step(
            "k_p", "stiffness forwards", dimension, series(inputs, 0), StiffnessSources.MECHANICS);
    Reference negative =
        p.step(
            "k_n", "stiffness backwards", dimension, series(inputs, 1), StiffnessSources.MECHANICS);
    p.step("k_low", "lower bound", dimension, series(inputs, 2), StiffnessSources.MECHANICS);
    p.step(
        "k_high",
        "upper bound: the stiffer sense",
        dimension,
        max(positive, negative),
        StiffnessSources.MECHANICS);
    return p.build();
  }

  private static Reference input(
      Procedure.Builder p, String symbol, String words, Dimension dimension) {
    return p.input(symbol, words, dimension, Domain.POSITIVE);
  }

  private static Expression series(Reference[] inputs, int which) {
    return inputs[which].pow(-1).plus(inputs[which + 3].pow(-1)).pow(-1);
  }
}
