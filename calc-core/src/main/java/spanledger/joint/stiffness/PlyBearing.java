package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of one ply under one bolt (coefficient k12, half of that for a row of two; the modulus
 * cancels), added to that of the plies of its part before it, which move alike.
 *
 * <p>Inputs d, d_M16, e_b, p_b, t, f_u, K_0 (the plies before it, 0 if none); steps k_b, k_t, k_br,
 * K.
 */
public final class PlyBearing {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PlyBearing() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("ply-bearing", "Stiffness of plies of one part at a bolt, in bearing");
    Reference diameter = size(p, "d", "diameter of the bolt");
    Reference m16 = size(p, "d_M16", "diameter of an M16 bolt");
    Reference[] ply = {
      size(p, "e_b", "from the bolt to the end of the ply"),
      size(p, "p_b", "spacing of bolts in the ply"),
      size(p, "t", "thickness of the ply"),
      p.input("f_u", "tensile strength of the ply", Dimension.STRESS, Domain.POSITIVE)
    };
    Reference before =
        p.input(
            "K_0",
            "plies of its part before it, 0 if none",
            Dimension.LINE_LOAD,
            Domain.NOT_NEGATIVE);
    Reference own = BoltShearing.bearing(p, "", diameter, m16, ply, 0);
    p.step(
        "K",
        "stiffness of the plies of its part up to this one",
        Dimension.LINE_LOAD,
        before.plus(own),
        StiffnessSources.MECHANICS);
    return p.build();
  }

  private static Reference size(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }
}
