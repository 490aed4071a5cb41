package spanledger.jointdesign;

import java.util.OptionalDouble;
import spanledger.provenance.Source;

/**
 * Coefficients of variation of tested joints that are known beforehand; those that are not are
 * estimated from the specimens.
 *
 * @param slip of the play
 * @param stiffness of the stiffness
 * @param moment of the moment resisted
 * @param source from where they are known
 */
public record KnownVariation(
    OptionalDouble slip, OptionalDouble stiffness, OptionalDouble moment, Source source) {

  /** None is known. */
  public static final KnownVariation NONE =
      new KnownVariation(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Source.derived("nothing is known beforehand"));

  /** Whether no scatter need be estimated from the specimens. */
  public boolean isWhole() {
    return slip.isPresent() && stiffness.isPresent() && moment.isPresent();
  }
}
