package spanledger.job;

import java.util.Optional;
import spanledger.frame.Restraint;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.quantity.Dimension;

/** Decodes springs with free play or with a range of stiffness, taken at one bound of the range. */
final class SpringDecoder {

  private final Reading reading;
  private final Values values;
  private final StiffnessBound bound;
  private final TestedSpringDecoder tested;

  /**
   * @param bound the bound taken where a range is given
   * @param origins keeps what springs were worked out from
   */
  SpringDecoder(Reading reading, StiffnessBound bound, SpringOrigins origins) {
    this.reading = reading;
    this.values = new Values(reading);
    this.bound = bound;
    this.tested = new TestedSpringDecoder(reading, bound, origins);
  }

  /**
   * A spring given as an object.
   *
   * @param kind its name among the definitions of the schema
   * @param turn whether it holds a turn (else a shift)
   */
  Optional<Restraint> decode(String kind, Located value, boolean turn) {
    return reading.fields(kind, value).flatMap(fields -> spring(kind, fields, turn));
  }

  private Optional<Restraint> spring(String kind, Fields fields, boolean turn) {
    Dimension dimension = turn ? Dimension.MOMENT : Dimension.LINE_LOAD;
    boolean ranged = kind.endsWith("Bounds");
    Optional<Located> one = ranged ? Optional.empty() : fields.find("stiffness");
    Optional<Located> low = fields.find("lower");
    Optional<Located> high = fields.find("upper");
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Located> tests = kind.equals("turnSpring") ? fields.find("tests") : Optional.empty();
    Optional<Double> slip =
        ranged
            ? Optional.of(0.0)
            : fields
                .find("slip")
                .map(s -> values.notNegative(s, turn ? Dimension.NONE : Dimension.LENGTH))
                .orElse(Optional.of(0.0));
    if (tests.isPresent()) {
      return tested.decode(fields, tests.get(), source);
    }
    Optional<Double> stiffness =
        one.isPresent()
            ? values.positive(one.get(), dimension)
            : inRange(fields, low, high, dimension);
    if (stiffness.isEmpty() || slip.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        slip.get() > 0
            ? new Restraint.Play(slip.get(), stiffness.get())
            : new Restraint.Spring(stiffness.get()));
  }

  private Optional<Double> inRange(
      Fields fields, Optional<Located> low, Optional<Located> high, Dimension dimension) {
    if (low.isEmpty() || high.isEmpty()) {
      reading.gap(fields.object().pointer());
      return Optional.empty();
    }
    Optional<Double> lower = values.positive(low.get(), dimension);
    Optional<Double> upper = values.positive(high.get(), dimension);
    if (lower.isEmpty() || upper.isEmpty()) {
      return Optional.empty();
    }
    if (lower.get() > upper.get()) {
      reading.error(
          low.get(),
          low.get().words() + ", more than the upper bound",
          "a lower bound that is not above the upper one",
          "exchange the two, or correct the number");
      return Optional.empty();
    }
    return bound == StiffnessBound.LOWER ? lower : upper;
  }
}
