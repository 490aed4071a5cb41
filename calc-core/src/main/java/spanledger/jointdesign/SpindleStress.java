package spanledger.jointdesign;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A spindle that stands out of its post: axial force and bending, on its bent shape, at the root of
 * its thread. Inputs N, M_y, M_z (about where it is guided), d, L, e, E, f_od; steps to σ, η_sp.
 */
public final class SpindleStress {

  /** Where the formulas come from. */
  static final String CLAUSE = "elastic, on the bent shape";

  private static final Source ROOT = Source.derived("Circle of the root diameter");
  private static final Source EULER = Source.derived("L. Euler: a bar fixed above, free below");

  private static final Source BENT =
      Source.derived(
          "S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability, 2nd ed. (1961), 1.11:"
              + " moments grow by 1/(1 - N/N_cr)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private SpindleStress() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("foot-spindle", "Spindle of a foot");
    Reference axial = p.input("N", "force off the ground", Dimension.FORCE);
    Reference first = p.input("M_y", "moment where it is guided, first", Dimension.MOMENT);
    Reference second = p.input("M_z", "moment where it is guided, second", Dimension.MOMENT);
    Reference root = p.input("d", "root diameter", Dimension.LENGTH, Domain.POSITIVE);
    Reference length =
        p.input("L", "from the ground to where it is guided", Dimension.LENGTH, Domain.POSITIVE);
    Reference eccentricity = p.input("e", "eccentricity of the force", Dimension.LENGTH);
    Reference modulus = p.input("E", "modulus of elasticity", Dimension.STRESS, Domain.POSITIVE);
    Reference strength =
        p.input("f_od", "design yield strength", Dimension.STRESS, Domain.POSITIVE);
    Reference area = p.step("A", "area", Dimension.AREA, pi().times(root.pow(2)).over(4), ROOT);
    Reference section =
        p.step(
            "W",
            "section modulus",
            Dimension.SECTION_MODULUS,
            pi().times(root.pow(3)).over(32),
            ROOT);
    Reference critical =
        p.step(
            "N_cr",
            "critical force, buckling length 2 L",
            Dimension.FORCE,
            pi().pow(3).times(modulus).times(root.pow(4)).over(length.pow(2).times(256)),
            EULER);
    Reference pressed = GroundSteps.pressing(p, axial);
    Reference pulled = GroundSteps.pull(p, axial);
    Reference moment =
        p.step(
            "M",
            "moment with that of the eccentricity",
            Dimension.MOMENT,
            sqrt(first.pow(2).plus(second.pow(2))).plus(pressed.plus(pulled).times(eccentricity)),
            GroundSteps.STATICS);
    Reference grown =
        p.step(
            "k",
            "growth of moments by the axial force, at most a thousandfold",
            Dimension.NONE,
            number(1).over(max(number(1).minus(pressed.over(critical)), number(0.001))),
            BENT);
    Reference stress =
        p.step(
            "σ",
            "greatest stress",
            Dimension.STRESS,
            pressed.plus(pulled).over(area).plus(grown.times(moment).over(section)),
            BENT);
    p.step("η_sp", "stress per strength", Dimension.NONE, stress.over(strength), BENT);
    return p.build();
  }
}
