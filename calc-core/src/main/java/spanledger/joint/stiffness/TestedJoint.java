package spanledger.joint.stiffness;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.provenance.Source;

/**
 * A joint known from tests of several specimens in one sense of turning.
 *
 * @param curves the specimens, fitted
 * @param play rotation before anything resists, rad
 * @param stiffness then, N·mm/rad
 * @param resistance moment that is held, or the greatest where none is, N·mm
 * @param source the test
 */
public record TestedJoint(
    List<FittedCurve> curves,
    MeasuredProperty play,
    MeasuredProperty stiffness,
    MeasuredProperty resistance,
    Source source) {

  public TestedJoint {
    curves = List.copyOf(curves);
  }

  /**
   * Fits all specimens and takes their characteristic values.
   *
   * @param knownVariation coefficient of variation, if it is known from earlier tests
   * @param source the test report
   * @throws IllegalArgumentException if there are too few specimens
   */
  public static TestedJoint of(
      List<MomentRotationCurve> specimens, OptionalDouble knownVariation, Source source) {
    CharacteristicValue.quantile(specimens.size(), knownVariation.isPresent());
    List<FittedCurve> fitted = specimens.stream().map(FittedCurve::of).toList();
    double[] resistances = new double[fitted.size()];
    for (int i = 0; i < resistances.length; i++) {
      double greatest = specimens.get(i).greatestMoment();
      resistances[i] = Math.min(greatest, fitted.get(i).plasticMoment().orElse(greatest));
    }
    return new TestedJoint(
        fitted,
        MeasuredProperty.normal(values(fitted, FittedCurve::play), knownVariation),
        MeasuredProperty.positive(values(fitted, FittedCurve::stiffness), knownVariation),
        MeasuredProperty.positive(resistances, knownVariation),
        source);
  }

  private static double[] values(List<FittedCurve> curves, ToDoubleFunction<FittedCurve> property) {
    return curves.stream().mapToDouble(property).toArray();
  }

  /** The characteristic stiffness as bounds; play is apart. */
  public StiffnessBounds bounds() {
    return new StiffnessBounds(stiffness.lower(), stiffness.upper(), source);
  }

  /**
   * What holds a member end in one run: the softer bound with the greater play, or the opposite.
   */
  public Restraint restraint(Bound bound) {
    double free = bound == Bound.LOWER ? play.upper() : play.lower();
    Restraint spring = bounds().restraint(bound);
    return free > 0 && spring instanceof Restraint.Spring held
        ? new Restraint.Play(free, held.stiffness())
        : spring;
  }
}
