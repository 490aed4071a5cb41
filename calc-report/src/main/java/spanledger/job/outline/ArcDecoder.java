package spanledger.job.outline;

import java.util.Map;
import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Point;

/** Decodes the arc between two corners to its bulge. */
final class ArcDecoder {

  /** Radii at both ends of an arc may differ by this much, mm: drawings round to hundredths. */
  private static final double SAME_RADIUS = 0.02;

  private static final double SMALLEST_BULGE = 1e-6;
  private static final double GREATEST_BULGE = 1e3;

  private final Reading reading;
  private final Lengths lengths;

  ArcDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
  }

  /** The bulge of the arc from one corner to the next. */
  Optional<Double> bulge(Located value, Point from, Point to) {
    Optional<Fields> read = reading.fields("arc", value);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = read.get();
    Optional<Located> bulge = fields.find("bulge");
    Optional<Located> centre = fields.find("centre");
    Optional<Located> radius = fields.find("radius");
    Optional<Boolean> left =
        fields
            .find("turn")
            .flatMap(turn -> new Values(reading).word(turn, Map.of("left", true, "right", false)));
    boolean isLong =
        fields.find("long").map(v -> v instanceof LocatedTruth t && t.value()).orElse(false);
    if (bulge.isPresent()) {
      return given(bulge.get());
    }
    if (left.isEmpty()) {
      reading.gap(value.pointer().child("turn"));
      return Optional.empty();
    }
    if (centre.isPresent()) {
      return lengths.place(centre.get()).flatMap(at -> about(value, at, from, to, left.get()));
    }
    if (radius.isPresent()) {
      return lengths
          .positive(radius.get())
          .flatMap(r -> ofRadius(value, r, from.distance(to), left.get(), isLong));
    }
    reading.gap(value.pointer().child("radius"));
    return Optional.empty();
  }

  private Optional<Double> given(Located value) {
    if (!(value instanceof LocatedNumber number)) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    double size = Math.abs(number.value());
    if (!(size >= SMALLEST_BULGE && size <= GREATEST_BULGE)) {
      reading.error(
          value,
          value.words() + " as a bulge, which is no arc",
          "the tangent of a quarter of the arc's turn, for example 1 for a half circle",
          "leave \"arc\" out for a straight edge, or correct the number");
      return Optional.empty();
    }
    return Optional.of(number.value());
  }

  private Optional<Double> about(Located value, Point centre, Point from, Point to, boolean left) {
    double first = centre.distance(from);
    double last = centre.distance(to);
    if (Math.abs(first - last) > SAME_RADIUS || first == 0) {
      reading.error(
          value,
          "a centre that is "
              + Rounded.mm(first)
              + " from the corner "
              + from
              + " mm, but "
              + Rounded.mm(last)
              + " from the next, "
              + to
              + " mm",
          "a centre equally far from both ends of the arc",
          "correct the centre or a corner");
      return Optional.empty();
    }
    return Optional.of(ArcEdge.about(centre, from, to, left).bulge());
  }

  private Optional<Double> ofRadius(
      Located value, double radius, double chord, boolean left, boolean isLong) {
    double half = chord / (2 * radius);
    if (half > 1 + 1e-6) {
      reading.error(
          value,
          "a radius of "
              + Rounded.mm(radius)
              + " for an arc between corners "
              + Rounded.mm(chord)
              + " apart",
          "a radius of at least half that distance",
          "correct the radius or a corner");
      return Optional.empty();
    }
    double turn = 2 * Math.asin(Math.min(1, half));
    double whole = isLong ? 2 * Math.PI - turn : turn;
    return Optional.of((left ? 1 : -1) * Math.tan(whole / 4));
  }
}
