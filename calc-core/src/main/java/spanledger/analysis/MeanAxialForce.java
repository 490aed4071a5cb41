package spanledger.analysis;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The mean axial force of a segment from its stretch; what bends or softens it in second order.
 *
 * <p>The moment of all axial forces about the chord is the mean force times the chord's shift, also
 * where load along the bar changes the force between its ends.
 *
 * <p>Inputs: s_a, e, and j_a, the part of the stretch that is taken up by play before anything
 * resists. Step N, tension positive.
 */
public final class MeanAxialForce {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private MeanAxialForce() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("mean-axial-force", "Mean axial force of a segment");
    Reference stiffness =
        p.input("s_a", "stretching stiffness", Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
    Reference stretch = p.input("e", "stretch", Dimension.LENGTH);
    Reference play = p.input("j_a", "stretch taken up by play", Dimension.LENGTH);
    p.step(
        "N",
        "mean axial force, tension positive",
        Dimension.FORCE,
        stiffness.times(stretch.minus(play)),
        MechanicsSources.STATICS);
    return p.build();
  }
}
