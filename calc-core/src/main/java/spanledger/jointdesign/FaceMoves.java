package spanledger.jointdesign;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * How a face of a bracket moves, what its springs then carry in the face, and how far it has moved
 * the member end.
 *
 * <p>Inputs u_x, u_y, u_z, φ_x, φ_y, φ_z (movement of the face in its own axes), K_y, K_z, S_z,
 * S_y, J (see {@link FaceSpringsAdded}), η_i, η_o (by which the springs in the face and off it are
 * divided), s_n, o_n, o_a, o_b (see {@link ForcesOnFace}), v_n0, v_a0, v_b0, ψ_n0, ψ_a0, ψ_b0
 * (shift and turn of the member end by the faces before, along the joint's axes square to the face
 * and along its first and second); steps H_y, H_z, H_x (shears and torsion by the springs), w_x,
 * ω_y, ω_z (movement off the face of springs as they are worked out), v_n, v_a, v_b, ψ_n, ψ_a, ψ_b.
 */
public final class FaceMoves {

  private static final Source RIGID = Source.derived("Rigid bodies on springs (joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FaceMoves() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-face-movement", "Movement of a bracket's face and the member end");
    Reference ux = p.input("u_x", "shift off the face", Dimension.LENGTH);
    Reference uy = p.input("u_y", "shift along the first axis", Dimension.LENGTH);
    Reference uz = p.input("u_z", "shift along the second axis", Dimension.LENGTH);
    Reference aboutX = p.input("φ_x", "turn about the square to the face", Dimension.NONE);
    Reference aboutY = p.input("φ_y", "turn about the first axis", Dimension.NONE);
    Reference aboutZ = p.input("φ_z", "turn about the second axis", Dimension.NONE);
    Reference alongFirst = p.input("K_y", "springs along the first axis", Dimension.LINE_LOAD);
    Reference alongSecond = p.input("K_z", "springs along the second axis", Dimension.LINE_LOAD);
    Reference ofFirst = p.input("S_z", "first moment of K_y", Dimension.FORCE);
    Reference ofSecond = p.input("S_y", "first moment of K_z", Dimension.FORCE);
    Reference turning = p.input("J", "second moment of both", Dimension.MOMENT);
    Reference inFace =
        p.input("η_i", "springs in the face divided by", Dimension.NONE, Domain.POSITIVE);
    Reference offFace =
        p.input("η_o", "springs off the face divided by", Dimension.NONE, Domain.POSITIVE);
    Reference side = p.input("s_n", "1 along the axis square to it, -1 against", Dimension.NONE);
    Reference on = p.input("o_n", "origin along the axis square to it", Dimension.LENGTH);
    Reference oa = p.input("o_a", "origin along the first axis", Dimension.LENGTH);
    Reference ob = p.input("o_b", "origin along the second axis", Dimension.LENGTH);
    Reference vn = p.input("v_n0", "shift of the end before, square to it", Dimension.LENGTH);
    Reference va = p.input("v_a0", "shift of the end before, first axis", Dimension.LENGTH);
    Reference vb = p.input("v_b0", "shift of the end before, second axis", Dimension.LENGTH);
    Reference turnN = p.input("ψ_n0", "turn of the end before, square to it", Dimension.NONE);
    Reference turnA = p.input("ψ_a0", "turn of the end before, first axis", Dimension.NONE);
    Reference turnB = p.input("ψ_b0", "turn of the end before, second axis", Dimension.NONE);
    p.step(
        "H_y",
        "shear along the first axis by the springs",
        Dimension.FORCE,
        alongFirst.times(uy).minus(ofFirst.times(aboutX)).over(inFace),
        RIGID);
    p.step(
        "H_z",
        "shear along the second axis by the springs",
        Dimension.FORCE,
        alongSecond.times(uz).plus(ofSecond.times(aboutX)).over(inFace),
        RIGID);
    p.step(
        "H_x",
        "torsion by the springs",
        Dimension.MOMENT,
        turning.times(aboutX).plus(ofSecond.times(uz)).minus(ofFirst.times(uy)).over(inFace),
        RIGID);
    length(p, "w_x", "shift off the face per 1/η_o", ux.over(offFace));
    turn(p, "ω_y", "turn about the first axis per 1/η_o", aboutY.over(offFace));
    turn(p, "ω_z", "turn about the second axis per 1/η_o", aboutZ.over(offFace));
    length(
        p,
        "v_n",
        "shift of the end so far, square to it",
        vn.plus(side.times(ux)).plus(side.times(oa.times(aboutZ).minus(ob.times(aboutY)))));
    length(
        p,
        "v_a",
        "shift of the end so far, first axis",
        va.plus(uy).plus(ob.times(aboutX)).minus(side.times(on).times(aboutZ)));
    length(
        p,
        "v_b",
        "shift of the end so far, second axis",
        vb.plus(uz).plus(side.times(on).times(aboutY)).minus(oa.times(aboutX)));
    turn(p, "ψ_n", "turn of the end so far, square to it", turnN.plus(side.times(aboutX)));
    turn(p, "ψ_a", "turn of the end so far, first axis", turnA.plus(aboutY));
    turn(p, "ψ_b", "turn of the end so far, second axis", turnB.plus(aboutZ));
    return p.build();
  }

  private static void length(Procedure.Builder p, String symbol, String words, Expression value) {
    p.step(symbol, words, Dimension.LENGTH, value, RIGID);
  }

  private static void turn(Procedure.Builder p, String symbol, String words, Expression value) {
    p.step(symbol, words, Dimension.NONE, value, RIGID);
  }
}
