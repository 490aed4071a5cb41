package spanledger.job;

import java.util.Optional;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.overturning.Standing;
import spanledger.quantity.Dimension;

/** Decodes how ground slopes. */
final class SlopeDecoder {

  /** Ground steeper than this, rad, is no ground to stand on. */
  private static final double STEEPEST = Math.PI / 4;

  private final Reading reading;
  private final Values values;

  SlopeDecoder(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /** The slope; empty if it has faults. */
  Optional<Standing.Ground> decode(Located value) {
    return reading.fields("slopingGround", value).flatMap(this::ground);
  }

  private Optional<Standing.Ground> ground(Fields fields) {
    Optional<Located> written = fields.require("slope");
    Optional<Double> slope = written.flatMap(s -> values.notNegative(s, Dimension.NONE));
    Optional<Vector> falls = fields.require("falls").flatMap(new Directions(reading)::level);
    if (slope.isPresent() && slope.get() > STEEPEST) {
      reading.error(
          written.get(),
          written.get().words(),
          "a slope of at most 45 deg",
          "give the angle of the ground from level");
      return Optional.empty();
    }
    return slope.flatMap(s -> falls.map(f -> new Standing.Ground(s, f)));
  }
}
