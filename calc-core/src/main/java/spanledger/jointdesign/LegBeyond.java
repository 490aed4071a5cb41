package spanledger.jointdesign;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Adds up what acts on a bracket leg beyond a line along its bend, part by part.
 *
 * <p>Inputs S_0, L_0 (what was added before), F (size of the force of a part on the leg), s (1 if
 * it counts, -1 if it takes off), d (from the line to the part, away from the bend); steps S, L,
 * M_o.
 */
public final class LegBeyond {

  private static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private LegBeyond() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("joint-leg-beyond", "What acts on a leg beyond a line, added up");
    Reference force = p.input("S_0", "force added before", Dimension.FORCE);
    Reference moment = p.input("L_0", "moment added before", Dimension.MOMENT);
    Reference size = p.input("F", "size of the force of this part", Dimension.FORCE);
    Reference sense = p.input("s", "1 if it counts, -1 if it takes off", Dimension.NONE);
    Reference distance = p.input("d", "from the line to the part", Dimension.LENGTH);
    p.step("S", "force so far", Dimension.FORCE, force.plus(sense.times(size)), STATICS);
    Reference sum =
        p.step(
            "L",
            "moment so far",
            Dimension.MOMENT,
            moment.plus(sense.times(size).times(distance)),
            STATICS);
    p.step("M_o", "size of that moment", Dimension.MOMENT, abs(sum), STATICS);
    return p.build();
  }
}
