package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a bracket leg hands on across the line where it bends away from its face: all six forces of
 * the face, about that line.
 *
 * <p>Inputs N, V_l (shear along the line), V_c (across it), T, M (moment of the face about the axis
 * along the line), c (place of the line), k (1 if the line crosses the first axis of the face, -1
 * if the second); steps M_o, M_i, V, N_c, none negative.
 */
public final class LegDemand {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LegDemand() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-leg-demand", "What a bracket leg hands on where it bends away");
    Reference axial = p.input("N", "force off the face", Dimension.FORCE);
    Reference along = p.input("V_l", "shear along the line", Dimension.FORCE);
    Reference across = p.input("V_c", "shear across the line", Dimension.FORCE);
    Reference torsion = p.input("T", "torsion about the square to the face", Dimension.MOMENT);
    Reference moment = p.input("M", "moment of the face along the line", Dimension.MOMENT);
    Reference place = p.input("c", "place of the line", Dimension.LENGTH);
    Reference sense =
        p.input("k", "1 if it crosses the first axis, -1 if the second", Dimension.NONE);
    p.step(
        "M_o",
        "bending of the leg about the line",
        Dimension.MOMENT,
        abs(moment.plus(sense.times(place).times(axial))),
        STATICS);
    p.step(
        "M_i",
        "bending in the plane of the leg",
        Dimension.MOMENT,
        abs(torsion.minus(sense.times(place).times(along))),
        STATICS);
    p.step(
        "V", "shear of the leg", Dimension.FORCE, sqrt(axial.pow(2).plus(along.pow(2))), STATICS);
    p.step("N_c", "force in the plane across the line", Dimension.FORCE, abs(across), STATICS);
    return p.build();
  }
}
