package spanledger.joint.stiffness;

import spanledger.frame.StiffnessBounds;
import spanledger.provenance.Source;

/**
 * Stiffness of a joint along or about one axis.
 *
 * @param positive against a force or moment along or about the positive axis, N/mm or N·mm/rad
 * @param negative the other way; a face that presses one way only is stiffer so
 * @param modification by which the initial stiffness is divided for the lower bound; 1 or more
 */
public record AxisStiffness(double positive, double negative, double modification) {

  public AxisStiffness {
    if (!(positive > 0) || !(negative > 0) || !(modification >= 1)) {
      throw new IllegalArgumentException(
          "A joint's stiffness must be above zero and its modification 1 or more, found "
              + positive
              + ", "
              + negative
              + " and "
              + modification
              + ".");
    }
  }

  /** The least stiffness to reckon with. */
  public double lower() {
    return Math.min(positive, negative) / modification;
  }

  /** The greatest. */
  public double upper() {
    return Math.max(positive, negative);
  }

  /** Both bounds, as a member end takes them. */
  public StiffnessBounds bounds(Source source) {
    return new StiffnessBounds(lower(), upper(), source);
  }

  /** Seen along the opposite axis. */
  AxisStiffness turned() {
    return new AxisStiffness(
        /* positive= */ negative, /* negative= */ positive, /* modification= */ modification);
  }

  /** One behind the other; their flexibilities add, bound by bound. */
  AxisStiffness inSeries(AxisStiffness other) {
    double low = 1 / (1 / lower() + 1 / other.lower());
    double forwards = 1 / (1 / positive + 1 / other.positive);
    double backwards = 1 / (1 / negative + 1 / other.negative);
    return new AxisStiffness(forwards, backwards, Math.max(1, Math.min(forwards, backwards) / low));
  }
}
