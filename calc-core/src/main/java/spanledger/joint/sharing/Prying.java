package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The force that a plate adds to a bolt because its edge presses on the other part.
 *
 * <p>The plate is a T-stub leg: it yields at its root under the tension times the arm m, if it is
 * not strong enough to carry that alone; what its root cannot carry, the couple of the bolt and the
 * pressing edge does. This is the least prying with which the plate is in equilibrium within its
 * strength. If the plate would yield at the bolts, too, it is too weak by itself (u_b above 1).
 *
 * <p>Inputs F, m, n, M_p, δ; steps n_e, Q, F_t, M_b, u_b.
 */
public final class Prying {

  private static final Source T_STUB =
      Source.fromMemory(
          "EN 1993-1-8:2005 (T-stub) and AISC Steel Construction Manual, Part 9 (prying)",
          "6.2.4, Table 6.2");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private Prying() {}

  /**
   * The prying of one bolt.
   *
   * @param tension of the bolt from the joint's forces, N
   * @param arm from the bolt to the root of the plate, mm
   * @param edge from the bolt to the plate's edge, mm
   * @param plateMoment that the plate's length belonging to the bolt carries, N·mm
   * @param netPart of the plate's width left by the holes
   */
  public static PriedBolt of(
      double tension, double arm, double edge, double plateMoment, double netPart) {
    double[] values = COMPILED.run(tension, arm, edge, plateMoment, netPart);
    return new PriedBolt(
        values[COMPILED.slot("Q")], values[COMPILED.slot("F_t")], values[COMPILED.slot("u_b")]);
  }

  /**
   * A bolt with prying.
   *
   * @param prying force, N
   * @param tension with prying, N
   * @param plateUtilisation moment of the plate at the bolts per what it carries there; above 1 the
   *     plate fails whatever the bolt
   */
  public record PriedBolt(double prying, double tension, double plateUtilisation) {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("prying", "Prying of a bolt by its plate");
    Reference force =
        p.input("F", "tension from the joint's forces", Dimension.FORCE, Domain.NOT_NEGATIVE);
    Reference arm =
        p.input("m", "from the bolt to the plate's root", Dimension.LENGTH, Domain.POSITIVE);
    Reference edge =
        p.input("n", "from the bolt to the plate's edge", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("M_p", "moment that the plate carries per bolt", Dimension.MOMENT, Domain.POSITIVE);
    Reference net =
        p.input("δ", "part of the width left by the holes", Dimension.NONE, Domain.FRACTION);
    Reference effective =
        p.step(
            "n_e", "arm of the prying force", Dimension.LENGTH, min(edge, arm.times(1.25)), T_STUB);
    Reference prying =
        p.step(
            "Q",
            "prying force",
            Dimension.FORCE,
            max(force.times(arm).minus(strength).over(effective), constant(0, Dimension.FORCE)),
            T_STUB);
    p.step("F_t", "tension of the bolt with prying", Dimension.FORCE, force.plus(prying), T_STUB);
    Reference atBolts =
        p.step(
            "M_b",
            "moment of the plate at the bolts",
            Dimension.MOMENT,
            prying.times(effective),
            T_STUB);
    p.step(
        "u_b",
        "use of the plate at the bolts; above 1 it fails by itself",
        Dimension.NONE,
        atBolts.over(net.times(strength)),
        T_STUB);
    return p.build();
  }
}
