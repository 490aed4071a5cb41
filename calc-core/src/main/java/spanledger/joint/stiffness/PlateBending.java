package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness at one bolt of a plate or leg that bends as a T-stub (coefficients k4, k5 and k6, half
 * of those for a row of two).
 *
 * <p>Inputs E, l_eff (of a row of two bolts), t, m; step k_p.
 */
public final class PlateBending {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PlateBending() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("plate-bending", "Stiffness of a plate at a bolt");
    Reference modulus =
        p.input("E", "modulus of elasticity of the plate", Dimension.STRESS, Domain.POSITIVE);
    Reference length =
        p.input("l_eff", "effective length of the row's T-stub", Dimension.LENGTH, Domain.POSITIVE);
    Reference thickness = p.input("t", "thickness of the plate", Dimension.LENGTH, Domain.POSITIVE);
    Reference arm =
        p.input("m", "from the bolt to the plate's root", Dimension.LENGTH, Domain.POSITIVE);
    p.step(
        "k_p",
        "stiffness of the plate at the bolt",
        Dimension.LINE_LOAD,
        modulus.times(length.times(0.45)).times(thickness.pow(3)).over(arm.pow(3)),
        StiffnessSources.COEFFICIENTS);
    return p.build();
  }
}
