package spanledger.job.outline;

import java.util.Map;
import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.quantity.Dimension;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/** Decodes how an outline is mirrored, rotated and shifted. */
final class PlacementDecoder {

  private static final Point NOWHERE = new Point(0, 0);

  private final Reading reading;
  private final Lengths lengths;

  PlacementDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
  }

  /** The move: mirrored, then rotated about the origin, then shifted. */
  Optional<Similarity> decode(Located value) {
    Optional<Fields> read = reading.fields("placement", value);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = read.get();
    Values values = new Values(reading);
    // Mirrored in the z axis and turned by half a turn is mirrored in the y axis.
    Optional<Double> mirror =
        fields
            .find("mirror")
            .map(m -> values.word(m, Map.of("y", 0.0, "z", Math.PI)))
            .orElse(Optional.of(0.0));
    Optional<Double> angle =
        fields.find("rotate").map(a -> values.quantity(a, Dimension.NONE)).orElse(Optional.of(0.0));
    Optional<Point> shift = fields.find("shift").map(lengths::place).orElse(Optional.of(NOWHERE));
    return mirror.isPresent() && angle.isPresent() && shift.isPresent()
        ? Optional.of(
            new Similarity(fields.has("mirror"), mirror.get() + angle.get(), 1, shift.get()))
        : Optional.empty();
  }
}
