package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of the two lips of a slot under the head of a bolt: each a cantilever plate of an
 * effective length along the slot, bent and sheared by half of the bolt's tension.
 *
 * <p>Inputs E, G, a (from the lip's root to where the head bears), t, b_e; steps f_m, f_v, k_l.
 */
public final class LipBending {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LipBending() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("lip-bending", "Stiffness of the lips of a slot");
    Reference modulus =
        p.input("E", "modulus of elasticity of the lips", Dimension.STRESS, Domain.POSITIVE);
    Reference shearModulus =
        p.input("G", "shear modulus of the lips", Dimension.STRESS, Domain.POSITIVE);
    Reference arm =
        p.input(
            "a",
            "from the root of a lip to the head's pressure",
            Dimension.LENGTH,
            Domain.POSITIVE);
    Reference thickness = p.input("t", "thickness of a lip", Dimension.LENGTH, Domain.POSITIVE);
    Reference width =
        p.input(
            "b_e", "effective length of a lip along the slot", Dimension.LENGTH, Domain.POSITIVE);
    Dimension flexibility = Dimension.LINE_LOAD.power(-1);
    Reference bending =
        p.step(
            "f_m",
            "deflection of one lip per force by bending, a³/(3EI)",
            flexibility,
            arm.pow(3).times(4).over(modulus.times(width).times(thickness.pow(3))),
            StiffnessSources.MECHANICS);
    Reference shearing =
        p.step(
            "f_v",
            "the same by shear, 6/5 of a/(GA)",
            flexibility,
            arm.times(1.2).over(shearModulus.times(width).times(thickness)),
            StiffnessSources.MECHANICS);
    p.step(
        "k_l",
        "stiffness of both lips together",
        Dimension.LINE_LOAD,
        number(2).over(bending.plus(shearing)),
        StiffnessSources.MECHANICS);
    return p.build();
  }
}
