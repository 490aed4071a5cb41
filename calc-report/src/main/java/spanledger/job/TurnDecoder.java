package spanledger.job;

import java.util.Optional;
import java.util.regex.Pattern;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;
import spanledger.quantity.Dimension;

/** Decodes angles. */
final class TurnDecoder {

  /** Radians are a plain number for the quantity reader, but an angle must show its unit. */
  private static final Pattern UNITLESS = Pattern.compile("[-+0-9.eE/\\s]*");

  private final Reading reading;
  private final Values values;

  TurnDecoder(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /** An angle of at most a full turn, rad. */
  Optional<Double> decode(Located angle) {
    if (angle instanceof LocatedText text && UNITLESS.matcher(text.text()).matches()) {
      reading.gap(angle.pointer());
      return Optional.empty();
    }
    if (angle instanceof LocatedNumber number) {
      reading.error(
          angle,
          angle.words(),
          "a number and a unit of angle in quotation marks: deg or rad",
          "write \"" + number.digits() + " deg\", if degrees were meant");
      return Optional.empty();
    }
    Optional<Double> read = values.quantity(angle, Dimension.NONE);
    if (read.isPresent() && Math.abs(read.get()) > 2 * Math.PI) {
      reading.error(
          angle,
          angle.words() + ", more than a full turn",
          "an angle from -360 deg to 360 deg",
          "check the number and its unit");
      return Optional.empty();
    }
    return read;
  }

  /** An angle above the level and below the upright, rad. */
  Optional<Double> slope(Located angle) {
    Optional<Double> read = decode(angle);
    if (read.isPresent() && !(read.get() > 0 && read.get() < Math.PI / 2)) {
      reading.error(
          angle,
          angle.words() + ", which is no slope",
          "an angle between 0 deg and 90 deg",
          "correct the angle");
      return Optional.empty();
    }
    return read;
  }
}
