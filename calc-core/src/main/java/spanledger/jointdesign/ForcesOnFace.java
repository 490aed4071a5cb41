package spanledger.jointdesign;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The forces of a joint about the origin of one of its faces, in the face's axes: x square to it
 * towards the member, y its first axis, z its second.
 *
 * <p>Inputs s_n (1 if the face looks along the joint's axis, -1 if against it), P_n, P_a, P_b, C_n,
 * C_a, C_b (forces and moments along the joint's axis square to the face, and along the first and
 * second axis of the face), o_n, o_a, o_b (the origin, likewise); steps N, V_y, V_z, T, M_y, M_z.
 */
public final class ForcesOnFace {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private ForcesOnFace() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("joint-face-forces", "Forces on a face of a joint");
    Reference side = p.input("s_n", "1 along the axis square to it, -1 against", Dimension.NONE);
    Reference pn = p.input("P_n", "force along that axis", Dimension.FORCE);
    Reference pa = p.input("P_a", "force along the first axis", Dimension.FORCE);
    Reference pb = p.input("P_b", "force along the second axis", Dimension.FORCE);
    Reference cn = p.input("C_n", "moment about that axis", Dimension.MOMENT);
    Reference ca = p.input("C_a", "moment about the first axis", Dimension.MOMENT);
    Reference cb = p.input("C_b", "moment about the second axis", Dimension.MOMENT);
    Reference on = p.input("o_n", "origin along that axis", Dimension.LENGTH);
    Reference oa = p.input("o_a", "origin along the first axis", Dimension.LENGTH);
    Reference ob = p.input("o_b", "origin along the second axis", Dimension.LENGTH);
    p.step("N", "force off the face", Dimension.FORCE, side.times(pn), STATICS);
    p.step("V_y", "shear along the first axis", Dimension.FORCE, pa, STATICS);
    p.step("V_z", "shear along the second axis", Dimension.FORCE, pb, STATICS);
    p.step(
        "T",
        "torsion about the square to the face",
        Dimension.MOMENT,
        side.times(cn).minus(oa.times(pb)).plus(ob.times(pa)),
        STATICS);
    p.step(
        "M_y",
        "moment about the first axis",
        Dimension.MOMENT,
        ca.minus(side.times(ob.times(pn).minus(on.times(pb)))),
        STATICS);
    p.step(
        "M_z",
        "moment about the second axis",
        Dimension.MOMENT,
        cb.minus(side.times(on.times(pa).minus(oa.times(pn)))),
        STATICS);
    return p.build();
  }
}
