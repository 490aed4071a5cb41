package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of a key across its slot: a short cantilever of the bearing depth, bent and sheared by
 * a pressure spread evenly over that depth. The flank is taken as rigid, so this is an upper bound.
 *
 * <p>Inputs E, G, l (along the slot), b (across it), h (bearing depth); steps f_m, f_v, k_k, k_h.
 */
public final class KeyTooth {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private KeyTooth() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("key-tooth", "Stiffness of a key across its slot");
    Reference modulus =
        p.input("E", "modulus of elasticity of the key", Dimension.STRESS, Domain.POSITIVE);
    Reference shearModulus =
        p.input("G", "shear modulus of the key", Dimension.STRESS, Domain.POSITIVE);
    Reference length =
        p.input("l", "length of the key along the slot", Dimension.LENGTH, Domain.POSITIVE);
    Reference width =
        p.input("b", "thickness of the key across the slot", Dimension.LENGTH, Domain.POSITIVE);
    Reference depth = p.input("h", "bearing depth", Dimension.LENGTH, Domain.POSITIVE);
    Dimension flexibility = Dimension.LINE_LOAD.power(-1);
    Reference bending =
        p.step(
            "f_m",
            "mean deflection per force by bending, h³/(20EI) of an evenly spread load",
            flexibility,
            depth.pow(3).times(0.6).over(modulus.times(length).times(width.pow(3))),
            StiffnessSources.MECHANICS);
    Reference shearing =
        p.step(
            "f_v",
            "the same by shear, a third of 6/5 of h/(GA)",
            flexibility,
            depth.times(0.4).over(shearModulus.times(length).times(width)),
            StiffnessSources.MECHANICS);
    Reference whole =
        p.step(
            "k_k",
            "stiffness of the key",
            Dimension.LINE_LOAD,
            number(1).over(bending.plus(shearing)),
            StiffnessSources.MECHANICS);
    p.step(
        "k_h",
        "stiffness at each of its two bearing points",
        Dimension.LINE_LOAD,
        whole.over(2),
        StiffnessSources.MECHANICS);
    return p.build();
  }
}
