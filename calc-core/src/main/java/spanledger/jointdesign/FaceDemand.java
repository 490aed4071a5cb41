package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The sizes of the shears of a face. Inputs V_y, V_z; steps H_y, H_z. */
public final class FaceDemand {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FaceDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-face-demand", "Shears of the faces, their sizes");
    Reference first = p.input("V_y", "shear along the first axis", Dimension.FORCE);
    Reference second = p.input("V_z", "shear along the second axis", Dimension.FORCE);
    p.step("H_y", "its size along the first axis", Dimension.FORCE, abs(first), STATICS);
    p.step("H_z", "its size along the second axis", Dimension.FORCE, abs(second), STATICS);
    return p.build();
  }
}
