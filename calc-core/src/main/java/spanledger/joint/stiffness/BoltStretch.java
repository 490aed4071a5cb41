package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of one bolt in tension, with the prying of a plate that bends (coefficient k10, half of
 * that for a row of two).
 *
 * <p>Inputs E, A_s, L_b (grip and half of head and nut); step k_b.
 */
public final class BoltStretch {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltStretch() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bolt-stretch", "Stiffness of a bolt in tension");
    Reference modulus =
        p.input("E", "modulus of elasticity of the bolt", Dimension.STRESS, Domain.POSITIVE);
    Reference area = p.input("A_s", "stress area", Dimension.AREA, Domain.POSITIVE);
    Reference length =
        p.input(
            "L_b",
            "length that stretches: grip with washers, half the head and half the nut",
            Dimension.LENGTH,
            Domain.POSITIVE);
    p.step(
        "k_b",
        "stiffness of the bolt in tension",
        Dimension.LINE_LOAD,
        modulus.times(area.times(0.8)).over(length),
        StiffnessSources.COEFFICIENTS);
    return p.build();
  }
}
