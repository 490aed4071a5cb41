package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The sizes of the forces of one bolt. Inputs F_y, F_z, F_x; steps B_y, B_z, F_v, F_t.
 *
 * <p>Forces along both axes of the face bear on the plies apart, as EN 1993-1-8, Table 3.4 allows.
 */
public final class BoltDemand {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-bolt-demand", "What each bolt carries");
    Reference alongY = p.input("F_y", "shear along the first axis", Dimension.FORCE);
    Reference alongZ = p.input("F_z", "shear along the second axis", Dimension.FORCE);
    Reference tension = p.input("F_x", "tension", Dimension.FORCE);
    p.step("B_y", "bearing along the first axis", Dimension.FORCE, abs(alongY), STATICS);
    p.step("B_z", "bearing along the second axis", Dimension.FORCE, abs(alongZ), STATICS);
    p.step(
        "F_v",
        "shear of the bolt",
        Dimension.FORCE,
        sqrt(alongY.pow(2).plus(alongZ.pow(2))),
        STATICS);
    p.step("F_t", "tension of the bolt", Dimension.FORCE, tension, STATICS);
    return p.build();
  }
}
