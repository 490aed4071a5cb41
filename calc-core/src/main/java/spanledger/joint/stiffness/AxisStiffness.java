package spanledger.joint.stiffness;

import spanledger.frame.StiffnessBounds;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;

/**
 * Stiffness of a joint along or about one axis.
 *
 * @param positive against a force or moment along or about the positive axis, N/mm or N·mm/rad
 * @param negative the other way; a face that presses one way only is stiffer so
 * @param lower the least to reckon with
 */
public record AxisStiffness(double positive, double negative, double lower) {

  /** The numbers are the same along and about an axis. */
  private static final CompiledProcedure FACE = FaceSpring.ABOUT.compile();

  private static final CompiledProcedure SERIES = FacesInSeries.ABOUT.compile();

  public AxisStiffness {
    if (!(positive > 0) || !(negative > 0) || !(lower > 0)) {
      throw new IllegalArgumentException(
          "A joint's stiffness must be above zero, found "
              + positive
              + ", "
              + negative
              + " and "
              + lower
              + ".");
    }
  }

  /**
   * Of one face.
   *
   * @param forwards movement per unit force or moment, mm/N or rad/(N·mm)
   * @param backwards the same for one the other way, positive
   * @param modification by which the initial stiffness is divided for the lower bound; 1 or more
   */
  static AxisStiffness of(double forwards, double backwards, double modification) {
    if (!(modification >= 1)) {
      throw new IllegalArgumentException(
          "A modification of stiffness must be 1 or more, found " + modification + ".");
    }
    return of(FACE, FACE.run(forwards, -backwards, modification));
  }

  private static AxisStiffness of(CompiledProcedure procedure, double[] values) {
    return new AxisStiffness(
        values[procedure.slot("k_p")],
        values[procedure.slot("k_n")],
        values[procedure.slot("k_low")]);
  }

  /** The greatest stiffness to reckon with. */
  public double upper() {
    return Math.max(positive, negative);
  }

  /** Both bounds, as a member end takes them. */
  public StiffnessBounds bounds(Source source) {
    return new StiffnessBounds(lower, upper(), source);
  }

  /** Seen along the opposite axis. */
  AxisStiffness turned() {
    return new AxisStiffness(/* positive= */ negative, /* negative= */ positive, lower);
  }

  /** One behind the other; their flexibilities add, bound by bound. */
  AxisStiffness inSeries(AxisStiffness other) {
    return of(
        SERIES, SERIES.run(positive, negative, lower, other.positive, other.negative, other.lower));
  }
}
