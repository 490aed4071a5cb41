package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What resists lateral-torsional buckling elastically: bending sideways and twist. Both
 * publications go on from it.
 *
 * <p>Inputs E, G, I_z, I_t, I_w, L_b; steps P_e_z, K_T.
 */
public final class ElasticLateralBuckling {

  private static final Source THEORY =
      Source.derived("Elastic lateral-torsional buckling (Timoshenko and Gere)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ElasticLateralBuckling() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("elastic-lateral-buckling", "Elastic stiffness against lateral buckling");
    Reference modulus = Symbols.modulus(p);
    Reference shearModulus = Symbols.shearModulus(p);
    Reference moment = Symbols.secondMoment(p, "I_z", "second moment of area about z");
    Reference torsion = Symbols.secondMoment(p, "I_t", "torsion constant");
    Reference warping =
        p.input("I_w", "warping constant", Dimension.WARPING_CONSTANT, Domain.NOT_NEGATIVE);
    Reference length = Symbols.length(p, "L_b", "length between lateral restraints");
    p.step(
        "P_e_z",
        "elastic buckling force about z over that length",
        Dimension.FORCE,
        pi().pow(2).times(modulus).times(moment).over(length.pow(2)),
        THEORY);
    p.step(
        "K_T",
        "elastic resistance to twist",
        Dimension.FLEXURAL_RIGIDITY,
        shearModulus
            .times(torsion)
            .plus(pi().pow(2).times(modulus).times(warping).over(length.pow(2))),
        THEORY);
    return p.build();
  }
}
