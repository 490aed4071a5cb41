package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Whether the faces at one preloaded bolt slip.
 *
 * <p>Inputs F_v, F_t, F_p (preload, lower bound), μ, n_s (friction faces), γ; steps F_c, F_s, R
 * (what is left before slip; below zero it slips).
 */
public final class FrictionGrip {

  private static final Source SLIP =
      Source.fromMemory("EN 1993-1-8:2005 and EN 1999-1-1:2007 (8.5.9)", "3.9.1, 3.9.2");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FrictionGrip() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("friction-grip", "Slip at a preloaded bolt");
    Reference shear = p.input("F_v", "shear of the bolt", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference tension = p.input("F_t", "tension of the bolt", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference preload =
        p.input("F_p", "preload, lower bound", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference friction = p.input("μ", "friction, lower bound", Dimension.NONE, Domain.NOT_NEGATIVE);
    Reference faces = p.input("n_s", "friction faces", Dimension.NONE, Domain.POSITIVE);
    Reference factor = p.input("γ", "partial factor of slip", Dimension.NONE, Domain.POSITIVE);
    Reference grip =
        p.step(
            "F_c",
            "what still presses the faces together",
            Dimension.FORCE,
            max(preload.minus(tension.times(0.8)), constant(0, Dimension.FORCE)),
            SLIP);
    Reference resistance =
        p.step(
            "F_s",
            "resistance to slip",
            Dimension.FORCE,
            faces.times(friction).times(grip).over(factor),
            SLIP);
    p.step(
        "R",
        "what is left before slip; below zero it slips",
        Dimension.FORCE,
        resistance.minus(shear),
        SLIP);
    return p.build();
  }
}
