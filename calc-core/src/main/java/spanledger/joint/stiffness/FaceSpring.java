package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of a face or joint along or about one axis, from how it moves under a unit force or
 * moment.
 *
 * <p>Inputs d_p (movement under a unit forwards), d_n (under one backwards, negative), η
 * (modification of the initial stiffness for the lower bound); steps k_p, k_n, k_low, k_high.
 */
public final class FaceSpring {

  /** Along an axis, N/mm. */
  public static final Procedure ALONG = procedure("along", Dimension.LINE_LOAD);

  /** About an axis, N·mm/rad. */
  public static final Procedure ABOUT = procedure("about", Dimension.MOMENT);

  private FaceSpring() {}

  private static Procedure procedure(String which, Dimension dimension) {
    Procedure.Builder p =
        Procedure.named("face-spring-" + which, "Stiffness of a joint " + which + " an axis");
    Dimension flexibility = dimension.power(-1);
    Reference forwards =
        p.input("d_p", "movement under a unit forwards", flexibility, Domain.POSITIVE);
    Reference backwards = p.input("d_n", "movement under a unit backwards", flexibility);
    Reference modification =
        p.input("η", "modification for the lower bound", Dimension.NONE, Domain.POSITIVE);
    Reference positive =
        p.step(
            "k_p",
            "initial stiffness forwards",
            dimension,
            forwards.pow(-1),
            StiffnessSources.MECHANICS);
    Reference negative =
        p.step(
            "k_n",
            "initial stiffness backwards",
            dimension,
            backwards.negated().pow(-1),
            StiffnessSources.MECHANICS);
    p.step(
        "k_low",
        "lower bound",
        dimension,
        min(positive, negative).over(modification),
        JointStiffness.MODIFICATION);
    p.step(
        "k_high",
        "upper bound: the stiffer sense, initial",
        dimension,
        max(positive, negative),
        StiffnessSources.MECHANICS);
    return p.build();
  }
}
