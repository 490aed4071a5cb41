package spanledger.jointdesign;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Steps that procedures of feet have in common. */
final class GroundSteps {

  static final Source STATICS = Source.derived("Equilibrium (docs/theory/joints.md)");

  private GroundSteps() {}

  /**
   * Step C: how much a foot presses, N; 0 where it is pulled.
   *
   * @param axial off the ground positive
   */
  static Reference pressing(Procedure.Builder p, Reference axial) {
    return p.step(
        "C",
        "pressing",
        Dimension.FORCE,
        max(axial.negated(), constant(0, Dimension.FORCE)),
        STATICS);
  }

  /**
   * Step T: how much a foot is pulled, N; 0 where it presses.
   *
   * @param axial off the ground positive
   */
  static Reference pull(Procedure.Builder p, Reference axial) {
    return p.step("T", "pull", Dimension.FORCE, max(axial, constant(0, Dimension.FORCE)), STATICS);
  }

  /** Step H: shear on the ground, N, of two shears square to each other. */
  static Reference shear(Procedure.Builder p, Reference first, Reference second) {
    return p.step(
        "H",
        "shear on the ground",
        Dimension.FORCE,
        sqrt(first.pow(2).plus(second.pow(2))),
        STATICS);
  }
}
