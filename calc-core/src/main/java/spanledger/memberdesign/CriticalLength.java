package spanledger.memberdesign;

import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The buckling length of a member from the factor at which the frame buckles. Inputs E, I, N_c,
 * α_cr, L_m; steps N_cr, L_cr, k.
 */
public final class CriticalLength {

  /** Where buckling lengths of this kind come from. */
  public static final Source SOURCE =
      Source.derived("Elastic buckling of the frame by exact stability functions");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private CriticalLength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("critical-length", "Buckling length from the buckling of the frame");
    Reference modulus = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference moment =
        p.input("I", "second moment of area", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference force =
        p.input("N_c", "greatest compression in the member", Dimension.FORCE, Domain.POSITIVE);
    Reference factor =
        p.input("α_cr", "factor at which the frame buckles", Dimension.NONE, Domain.POSITIVE);
    Reference member = p.input("L_m", "length of the member", Dimension.LENGTH, Domain.POSITIVE);
    Reference critical =
        p.step("N_cr", "elastic buckling force", Dimension.FORCE, factor.times(force), SOURCE);
    Reference length =
        p.step(
            "L_cr",
            "length of a bar on simple bearings with that buckling force",
            Dimension.LENGTH,
            pi().times(sqrt(modulus.times(moment).over(critical))),
            SOURCE);
    p.step("k", "buckling length per length", Dimension.NONE, length.over(member), SOURCE);
    return p.build();
  }
}
