package spanledger.jointdesign;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Whether a base plate stays elastic where its anchors bend it, so that they are pulled as a stiff
 * plate pulls them and no prying comes on top. Inputs M, b, t, f_od; steps σ, η_b.
 */
public final class PlateStress {

  /** Where the requirement comes from. */
  static final String CLAUSE = "EN 1992-4:2018, 6.2.1";

  private static final Source STAYS = Source.fromMemory("EN 1992-4:2018", "6.2.1");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private PlateStress() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("base-plate-stress", "Base plate at a line beside its stem");
    Reference moment = p.input("M", "bending about the line", Dimension.MOMENT);
    Reference width =
        p.input("b", "width along the line that bends", Dimension.LENGTH, Domain.POSITIVE);
    Reference thickness = p.input("t", "thickness", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("f_od", "design yield strength", Dimension.STRESS, Domain.POSITIVE);
    Reference stress =
        p.step(
            "σ",
            "bending stress",
            Dimension.STRESS,
            moment.times(6).over(width.times(thickness.pow(2))),
            Source.derived("Elastic bending of a rectangle"));
    p.step("η_b", "stress per strength", Dimension.NONE, stress.over(strength), STAYS);
    return p.build();
  }
}
