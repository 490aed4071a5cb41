package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Stiffness of a piece of the bed on which plies press on each other: as soft as a plate pressed
 * through its thickness. Inputs E, t, a, b; step k_c.
 */
public final class BedPiece {

  private static final Source PRACTICE =
      Source.derived("Bar in compression; that the bed is as soft is common practice, no source");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BedPiece() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bed-piece", "Stiffness of a piece of the bed");
    Reference modulus =
        p.input("E", "modulus of elasticity of the plate", Dimension.STRESS, Domain.POSITIVE);
    Reference thickness = p.input("t", "its thickness", Dimension.LENGTH, Domain.POSITIVE);
    Reference first =
        p.input("a", "side of the piece, first axis", Dimension.LENGTH, Domain.POSITIVE);
    Reference second =
        p.input("b", "side of the piece, second axis", Dimension.LENGTH, Domain.POSITIVE);
    p.step(
        "k_c",
        "stiffness of the piece",
        Dimension.LINE_LOAD,
        modulus.times(first).times(second).over(thickness),
        PRACTICE);
    return p.build();
  }
}
