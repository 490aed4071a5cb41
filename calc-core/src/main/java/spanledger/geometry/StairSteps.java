package spanledger.geometry;

import static spanledger.procedure.Formulas.atan;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The geometry of a straight flight of equal rises and goings. */
public final class StairSteps {

  private static final Source GEOMETRY = Source.derived("Geometry of a straight flight");

  private static final Source STEP =
      new Source("length of a step: two rises and a going", "", Confidence.COMMON_PRACTICE);

  /**
   * Inputs H (from foot to floor), n (number of rises), g (going); steps R (rise), S (two rises and
   * a going), θ (pitch, rad), θ_deg (the same in degrees), L_n (level distance from the first
   * nosing to that of the floor).
   */
  public static final Procedure PROCEDURE = procedure();

  private StairSteps() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("stair-steps", "Rises and goings of a flight");
    Reference height =
        p.input("H", "height from the foot to the floor", Dimension.LENGTH, Domain.POSITIVE);
    Reference rises = p.input("n", "number of rises", Dimension.NONE, Domain.POSITIVE);
    Reference going =
        p.input("g", "level distance from nosing to nosing", Dimension.LENGTH, Domain.POSITIVE);
    Reference rise = p.step("R", "one rise", Dimension.LENGTH, height.over(rises), GEOMETRY);
    p.step("S", "two rises and a going", Dimension.LENGTH, rise.times(2).plus(going), STEP);
    Reference pitch =
        p.step(
            "θ",
            "pitch of the line through the nosings",
            Dimension.NONE,
            atan(rise.over(going)),
            GEOMETRY);
    p.step(
        "θ_deg", "pitch in degrees", Dimension.NONE, pitch.times(number(180).over(pi())), GEOMETRY);
    p.step(
        "L_n",
        "level distance from the first nosing to the floor's",
        Dimension.LENGTH,
        rises.minus(number(1)).times(going),
        GEOMETRY);
    return p.build();
  }
}
