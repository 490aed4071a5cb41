package spanledger.jointdesign;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Adds up what bolts and keys hold in a face, part by part.
 *
 * <p>Inputs K_y0, K_z0, S_z0, S_y0, J_0 (what was added before), k_y, k_z (of this part along the
 * first and the second axis), y, z (its place); steps K_y, K_z, S_z, S_y, J.
 */
public final class FaceSpringsAdded {

  private static final Source RIGID = Source.derived("Rigid body on springs (joint-sharing.md, 3)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private FaceSpringsAdded() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-face-springs", "Springs in the face of a joint, added up");
    Reference alongFirst = stiffness(p, "K_y0", "added before along the first axis");
    Reference alongSecond = stiffness(p, "K_z0", "added before along the second axis");
    Reference ofFirst = p.input("S_z0", "first moment of K_y0", Dimension.FORCE);
    Reference ofSecond = p.input("S_y0", "first moment of K_z0", Dimension.FORCE);
    Reference turning = p.input("J_0", "second moment of both", Dimension.MOMENT);
    Reference first = stiffness(p, "k_y", "stiffness of this part along the first axis");
    Reference second = stiffness(p, "k_z", "stiffness of this part along the second axis");
    Reference y = p.input("y", "place of this part along the first axis", Dimension.LENGTH);
    Reference z = p.input("z", "place of this part along the second axis", Dimension.LENGTH);
    p.step("K_y", "so far along the first", Dimension.LINE_LOAD, alongFirst.plus(first), RIGID);
    p.step("K_z", "so far along the second", Dimension.LINE_LOAD, alongSecond.plus(second), RIGID);
    p.step(
        "S_z", "first moment of K_y so far", Dimension.FORCE, ofFirst.plus(first.times(z)), RIGID);
    p.step(
        "S_y",
        "first moment of K_z so far",
        Dimension.FORCE,
        ofSecond.plus(second.times(y)),
        RIGID);
    p.step(
        "J",
        "second moment of both so far",
        Dimension.MOMENT,
        turning.plus(first.times(z.pow(2))).plus(second.times(y.pow(2))),
        RIGID);
    return p.build();
  }

  private static Reference stiffness(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
  }
}
