package spanledger.jointdesign;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Sliding of a foot on the ground. Inputs N (off the ground positive), V_y, V_z, μ; steps H, N_c,
 * F_μ, η_s. A foot that does not press holds nothing; 1 N stands for none, so that the use is a
 * number.
 */
public final class FootSliding {

  /** Where the formulas come from. */
  static final String CLAUSE = "friction as declared";

  private static final Source MECHANICS =
      Source.derived("Dry friction, coefficient as declared (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FootSliding() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("foot-sliding", "Foot on the ground, sliding");
    Reference axial = p.input("N", "force off the ground", Dimension.FORCE);
    Reference first = p.input("V_y", "shear along the first axis", Dimension.FORCE);
    Reference second = p.input("V_z", "shear along the second axis", Dimension.FORCE);
    Reference friction = p.input("μ", "friction", Dimension.NONE, Domain.POSITIVE);
    Reference shear = GroundSteps.shear(p, first, second);
    Reference pressing =
        p.step(
            "N_c",
            "pressing on the ground, at least 1 N",
            Dimension.FORCE,
            max(axial.negated(), constant(1, Dimension.FORCE)),
            MECHANICS);
    Reference held =
        p.step("F_μ", "held by friction", Dimension.FORCE, friction.times(pressing), MECHANICS);
    p.step("η_s", "shear per friction", Dimension.NONE, shear.over(held), MECHANICS);
    return p.build();
  }
}
