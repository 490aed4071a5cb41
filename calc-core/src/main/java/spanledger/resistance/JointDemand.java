package spanledger.resistance;

import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a member hands to the joint it stands on: resultants of its internal forces at the joint's
 * face.
 *
 * <p>Inputs V_y, V_z, M_y, M_z; steps V_res, M_res.
 */
public final class JointDemand {

  private static final Source STATICS = Source.derived("Resultant of forces at right angles");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private JointDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-demand", "Demand on a joint");
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference my = p.input("M_y", "bending moment about y", Dimension.MOMENT);
    Reference mz = p.input("M_z", "bending moment about z", Dimension.MOMENT);
    p.step("V_res", "resultant shear", Dimension.FORCE, sqrt(vy.pow(2).plus(vz.pow(2))), STATICS);
    p.step(
        "M_res",
        "resultant bending moment",
        Dimension.MOMENT,
        sqrt(my.pow(2).plus(mz.pow(2))),
        STATICS);
    return p.build();
  }
}
