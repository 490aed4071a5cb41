package spanledger.joint.sharing;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** Inputs that several procedures of a face share. */
final class FaceInputs {

  private FaceInputs() {}

  static Reference stiffness(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
  }

  /** The lift off the face at a place, from the three movements that cause it. */
  static Reference lift(Procedure.Builder p, Reference y, Reference z) {
    Reference ux = p.input("u_x", "shift of the member off the face", Dimension.LENGTH);
    Reference aboutY = p.input("φ_y", "turn of the member about y", Dimension.NONE);
    Reference aboutZ = p.input("φ_z", "turn of the member about z", Dimension.NONE);
    return p.step(
        "d_x",
        "lift off the face there",
        Dimension.LENGTH,
        ux.plus(aboutY.times(z)).minus(aboutZ.times(y)),
        SharingSources.RIGID_FACE);
  }

  /** The parts of the two moments that a force along x at a place carries. */
  static void moments(Procedure.Builder p, Reference y, Reference z, Reference alongX) {
    p.step(
        "M_yb",
        "its part of the moment about y",
        Dimension.MOMENT,
        z.times(alongX),
        SharingSources.STATICS);
    p.step(
        "M_zb",
        "its part of the moment about z",
        Dimension.MOMENT,
        y.times(alongX).negated(),
        SharingSources.STATICS);
  }
}
