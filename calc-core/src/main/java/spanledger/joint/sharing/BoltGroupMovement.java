package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Movement in the face of a group of bolts alone, in closed form: shears shift it, torsion about
 * its stiffness centre turns it. {@link BoltShearShare} gives each bolt's shear from it.
 *
 * <p>Inputs K_y, K_z, S_z, S_y, J (sums of {@link BoltGroupTerms}), V_y, V_z, T; steps y_c, z_c,
 * J_c, T_c, φ_x, u_y, u_z.
 */
public final class BoltGroupMovement {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();
  private static final CompiledProcedure TERMS = BoltGroupTerms.PROCEDURE.compile();

  /** Less of the second moment than this is rounding: all bolts stand in one place. */
  private static final double ONE_PLACE = 1e-9;

  private BoltGroupMovement() {}

  /**
   * The movement of a group whose bolts hold along y and along z.
   *
   * @throws spanledger.procedure.OutOfDomainException if no bolt holds along y or along z
   */
  public static FaceMovement of(List<BoltPlace> bolts, FaceForces forces) {
    double[] sum = new double[5];
    for (BoltPlace bolt : bolts) {
      double[] terms =
          TERMS.run(bolt.y(), bolt.z(), bolt.shearStiffnessY(), bolt.shearStiffnessZ());
      sum[0] += bolt.shearStiffnessY();
      sum[1] += bolt.shearStiffnessZ();
      sum[2] += terms[TERMS.slot("s_z")];
      sum[3] += terms[TERMS.slot("s_y")];
      sum[4] += terms[TERMS.slot("j")];
    }
    double[] values =
        COMPILED.run(
            sum[0],
            sum[1],
            sum[2],
            sum[3],
            sum[4],
            forces.shearY(),
            forces.shearZ(),
            forces.torsion());
    return FaceMovement.inFace(
        new double[] {
          values[COMPILED.slot("u_y")], values[COMPILED.slot("u_z")], values[COMPILED.slot("φ_x")]
        });
  }

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("bolt-group-movement", "Movement of a bolt group in its face");
    Reference ky =
        p.input("K_y", "sum of k_y over the bolts", Dimension.LINE_LOAD, Domain.POSITIVE);
    Reference kz =
        p.input("K_z", "sum of k_z over the bolts", Dimension.LINE_LOAD, Domain.POSITIVE);
    Reference sz = p.input("S_z", "sum of s_z over the bolts", Dimension.FORCE);
    Reference sy = p.input("S_y", "sum of s_y over the bolts", Dimension.FORCE);
    Reference j = p.input("J", "sum of j over the bolts", Dimension.MOMENT, Domain.NOT_NEGATIVE);
    Reference vy = p.input("V_y", "shear along y", Dimension.FORCE);
    Reference vz = p.input("V_z", "shear along z", Dimension.FORCE);
    Reference torsion = p.input("T", "torsion about the reference point", Dimension.MOMENT);
    Reference yc = centre(p, "y_c", sy, kz);
    Reference zc = centre(p, "z_c", sz, ky);
    Reference jc =
        p.step(
            "J_c",
            "second moment about the stiffness centre",
            Dimension.MOMENT,
            j.minus(kz.times(yc.pow(2))).minus(ky.times(zc.pow(2))),
            SharingSources.RIGID_FACE);
    Reference tc =
        p.step(
            "T_c",
            "torsion about the stiffness centre",
            Dimension.MOMENT,
            torsion.minus(yc.times(vz).minus(zc.times(vy))),
            SharingSources.STATICS);
    Reference turn =
        p.step(
            "φ_x",
            "turn; none where all bolts stand in one place",
            Dimension.NONE,
            choose(greater(jc, j.times(number(ONE_PLACE))), tc.over(jc), number(0)),
            SharingSources.RIGID_FACE);
    p.step(
        "u_y",
        "shift along y at the reference point",
        Dimension.LENGTH,
        vy.over(ky).plus(turn.times(zc)),
        SharingSources.RIGID_FACE);
    p.step(
        "u_z",
        "shift along z at the reference point",
        Dimension.LENGTH,
        vz.over(kz).minus(turn.times(yc)),
        SharingSources.RIGID_FACE);
    return p.build();
  }

  private static Reference centre(
      Procedure.Builder p, String symbol, Reference first, Reference stiffness) {
    return p.step(
        symbol,
        "stiffness centre",
        Dimension.LENGTH,
        first.over(stiffness),
        SharingSources.RIGID_FACE);
  }
}
