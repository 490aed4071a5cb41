package spanledger.jointdesign;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What one of several brackets carries of the forces of a member end, and what it leaves for those
 * after it.
 *
 * <p>Inputs R_u0, R_v0, R_w0, L_u0, L_v0, L_w0 (forces and moments left by the brackets before),
 * P_u, P_v, P_w, C_u, C_v, C_w (its share); steps R_u, R_v, R_w, L_u, L_v, L_w (what is left).
 */
public final class BracketShare {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");
  private static final String[] AXES = {"u", "v", "w"};

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BracketShare() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-bracket-share", "Share of a bracket");
    Reference[] left = new Reference[6];
    Reference[] own = new Reference[6];
    for (int i = 0; i < 6; i++) {
      left[i] =
          i < 3
              ? p.input("R_" + AXES[i] + "0", "force along " + AXES[i] + " left", Dimension.FORCE)
              : p.input(
                  "L_" + AXES[i - 3] + "0",
                  "moment about " + AXES[i - 3] + " left",
                  Dimension.MOMENT);
    }
    for (int i = 0; i < 6; i++) {
      own[i] =
          i < 3
              ? p.input("P_" + AXES[i], "its force along " + AXES[i], Dimension.FORCE)
              : p.input("C_" + AXES[i - 3], "its moment about " + AXES[i - 3], Dimension.MOMENT);
    }
    for (int i = 0; i < 6; i++) {
      if (i < 3) {
        p.step(
            "R_" + AXES[i],
            "force along " + AXES[i] + " left for the others",
            Dimension.FORCE,
            left[i].minus(own[i]),
            STATICS);
      } else {
        p.step(
            "L_" + AXES[i - 3],
            "moment about " + AXES[i - 3] + " left for the others",
            Dimension.MOMENT,
            left[i].minus(own[i]),
            STATICS);
      }
    }
    return p.build();
  }
}
