package spanledger.job.outline;

import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.quantity.Dimension;
import spanledger.section.outline.Point;

/** Lengths and places of one outline file: bare numbers in its unit, or texts with their own. */
final class Lengths {

  /** No place of a section lies farther from the origin, mm. */
  private static final double FARTHEST = 1e5;

  private final Reading reading;
  private final Values values;
  private final OptionalDouble unit;
  private boolean missingUnitTold;

  /**
   * The lengths of a file.
   *
   * @param unit what a bare number of 1 means, mm; empty if the file does not say
   */
  Lengths(Reading reading, OptionalDouble unit) {
    this.reading = reading;
    this.values = new Values(reading);
    this.unit = unit;
  }

  /** A length, mm. */
  Optional<Double> length(Located value) {
    Optional<Double> read =
        value instanceof LocatedNumber number
            ? bare(number)
            : values.quantity(value, Dimension.LENGTH);
    if (read.isPresent() && !(Math.abs(read.get()) <= FARTHEST)) {
      reading.error(
          value, value.words() + " as a length of a section", "at most 100 m", "check the unit");
      return Optional.empty();
    }
    return read;
  }

  private Optional<Double> bare(LocatedNumber number) {
    if (unit.isPresent()) {
      return Optional.of(number.value() * unit.getAsDouble());
    }
    if (missingUnitTold) {
      reading.gap(number.pointer());
    } else {
      missingUnitTold = true;
      reading.error(
          number,
          number.words() + " in a file that names no unit",
          "\"unit\" at the head of the file, or lengths as texts such as \"12.5 mm\"",
          "add \"unit\": \"mm\" at the head of the file, or the unit that it is drawn in");
    }
    return Optional.empty();
  }

  /** A length that must be greater than zero, mm. */
  Optional<Double> positive(Located value) {
    Optional<Double> read = length(value);
    if (read.isPresent() && read.get() <= 0) {
      reading.error(value, value.words(), "more than zero", "correct the number");
      return Optional.empty();
    }
    return read;
  }

  /** A length that must not be less than zero, mm. */
  Optional<Double> notNegative(Located value) {
    Optional<Double> read = length(value);
    if (read.isPresent() && read.get() < 0) {
      reading.error(value, value.words(), "zero or more", "correct the number");
      return Optional.empty();
    }
    return read;
  }

  /** A list of y and z; further elements are passed over. */
  Optional<Point> place(Located value) {
    if (!(value instanceof LocatedArray list) || list.elements().size() < 2) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Optional<Double> y = length(list.elements().get(0));
    Optional<Double> z = length(list.elements().get(1));
    return y.isPresent() && z.isPresent()
        ? Optional.of(new Point(y.get(), z.get()))
        : Optional.empty();
  }
}
