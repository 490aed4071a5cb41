package spanledger.jointdesign;

import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A bought-in foot beside its declared capacities: the parts used by force and by shear are added,
 * on the safe side. Inputs N, V_y, V_z, N_c, N_t, and i_v, V_r (whether its shear capacity counts,
 * and that capacity); steps C, T, H, η_d. A foot that holds nothing down has 1 N for N_t, so that
 * the use is a number.
 */
public final class DeclaredDemand {

  /** Where the capacities come from. */
  static final String CLAUSE = "capacities as declared";

  private static final Source ADDED = Source.derived("Parts used, added on the safe side");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private DeclaredDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("foot-declared", "Foot beside its declared capacities");
    Reference axial = p.input("N", "force off the ground", Dimension.FORCE);
    Reference first = p.input("V_y", "shear along the first axis", Dimension.FORCE);
    Reference second = p.input("V_z", "shear along the second axis", Dimension.FORCE);
    Reference bears = p.input("N_c", "compression it bears", Dimension.FORCE, Domain.POSITIVE);
    Reference holds =
        p.input("N_t", "tension it bears, at least 1 N", Dimension.FORCE, Domain.POSITIVE);
    Reference counts = p.input("i_v", "1 if its shear capacity counts", Dimension.NONE);
    Reference shears =
        p.input("V_r", "shear it bears, 1 N if none", Dimension.FORCE, Domain.POSITIVE);
    Reference pressed = GroundSteps.pressing(p, axial);
    Reference pulled = GroundSteps.pull(p, axial);
    Reference shear = GroundSteps.shear(p, first, second);
    Reference sum =
        p.step(
            "sum",
            "parts used, together",
            Dimension.NONE,
            pressed.over(bears).plus(pulled.over(holds)).plus(counts.times(shear).over(shears)),
            ADDED);
    Reference most = p.step("sum_Rd", "most that they may be", Dimension.NONE, number(1), ADDED);
    p.step("η_d", "foot beside its capacities, use", Dimension.NONE, sum.over(most), ADDED);
    return p.build();
  }
}
