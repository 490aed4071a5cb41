package spanledger.job.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.quantity.Dimension;
import spanledger.section.feature.Feature;
import spanledger.section.feature.KeyedFace;
import spanledger.section.feature.MissingFeatureException;
import spanledger.section.feature.Slot;
import spanledger.section.feature.SlotLip;
import spanledger.section.feature.Web;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;

/** Decodes the named features and measures them on the outline. */
final class FeatureDecoder {

  /** Sizes given may differ from the outline by this much, mm: drawings round to tenths. */
  private static final double AS_DRAWN = 0.051;

  private static final Map<String, Point> AXES =
      Map.of(
          "+y", new Point(1, 0),
          "-y", new Point(-1, 0),
          "+z", new Point(0, 1),
          "-z", new Point(0, -1));

  private static final Map<String, Kind> KINDS =
      Map.of(
          "slot", new Kind("slot", List.of("opening", "headWidth", "lip", "headDepth")),
          "slot-lip", new Kind("slotLip", List.of("reach", "thickness")),
          "keyed-face", new Kind("keyedFace", List.of("width", "keyWidth", "keyDepth")),
          "web", new Kind("web", List.of("depth", "thickness")));

  /**
   * A kind of feature.
   *
   * @param definition its name among the definitions of the schema
   * @param sizes the keys of its sizes
   */
  private record Kind(String definition, List<String> sizes) {}

  private final Reading reading;
  private final Lengths lengths;
  private final Values values;

  FeatureDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
    this.values = new Values(reading);
  }

  /**
   * The features, each measured on the first outline that has it.
   *
   * @param outlines the pieces as drawn; none if they have faults, which keeps features from being
   *     measured, not from being read
   */
  List<Feature> decode(Located features, List<Outline> outlines) {
    List<Feature> found = new ArrayList<>();
    for (Located.Entry entry : reading.named(features)) {
      feature(entry, outlines).ifPresent(found::add);
    }
    return found;
  }

  /** Makes a feature of one outline. */
  private interface Measure {
    Feature on(Outline outline);
  }

  private Optional<Feature> feature(Located.Entry entry, List<Outline> outlines) {
    Optional<Kind> kind =
        entry.value() instanceof LocatedObject object
            ? object.find("kind").flatMap(k -> kind(k.value()))
            : Optional.empty();
    if (kind.isEmpty()) {
      reading.gap(entry.value().pointer());
      return Optional.empty();
    }
    Optional<Fields> fields = reading.fields(kind.get().definition(), entry.value());
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().find("kind");
    Optional<Measure> measure = measure(entry.key(), kind.get(), fields.get());
    Map<String, Double> stated = new TreeMap<>();
    for (String key : kind.get().sizes()) {
      fields.get().find(key).flatMap(lengths::positive).ifPresent(v -> stated.put(key, v));
    }
    Optional<Feature> feature = measure.flatMap(m -> measured(entry, m, outlines));
    feature.ifPresent(f -> compare(f, stated, fields.get()));
    return feature;
  }

  private static Optional<Kind> kind(Located value) {
    return value instanceof LocatedText text
        ? Optional.ofNullable(KINDS.get(text.text()))
        : Optional.empty();
  }

  private Optional<Measure> measure(String name, Kind kind, Fields fields) {
    return switch (kind.definition()) {
      case "slot" -> {
        Optional<Point> mouth = fields.require("mouth").flatMap(lengths::place);
        Optional<Point> opens = fields.require("opens").flatMap(this::direction);
        yield both(mouth, opens, (m, d) -> outline -> Slot.measured(outline, name, m, d));
      }
      case "slotLip" ->
          both(
              fields.require("edge").flatMap(lengths::place),
              fields.require("root").flatMap(lengths::place),
              (edge, root) -> outline -> SlotLip.measured(outline, name, edge, root));
      case "keyedFace" -> {
        Optional<Located> keyAt = fields.find("keyAt");
        Optional<Point> groove = keyAt.flatMap(lengths::place);
        Optional<Measure> face =
            both(
                fields.require("from").flatMap(lengths::place),
                fields.require("to").flatMap(lengths::place),
                (from, to) -> outline -> KeyedFace.measured(outline, name, from, to, groove));
        yield keyAt.isPresent() != groove.isPresent() ? Optional.empty() : face;
      }
      default ->
          both(
              fields.require("from").flatMap(lengths::place),
              fields.require("to").flatMap(lengths::place),
              (from, to) -> outline -> Web.measured(outline, name, from, to));
    };
  }

  private interface OfTwo {
    Measure of(Point one, Point other);
  }

  private static Optional<Measure> both(Optional<Point> one, Optional<Point> other, OfTwo measure) {
    return one.isPresent() && other.isPresent()
        ? Optional.of(measure.of(one.get(), other.get()))
        : Optional.empty();
  }

  private Optional<Point> direction(Located value) {
    if (value instanceof LocatedText text) {
      Point axis = AXES.get(text.text().strip());
      if (axis != null) {
        return Optional.of(axis);
      }
    }
    return Values.isWord(value)
        ? Optional.empty()
        : values.quantity(value, Dimension.NONE).map(Point::direction);
  }

  private Optional<Feature> measured(Located.Entry entry, Measure measure, List<Outline> outlines) {
    String reason = "";
    for (Outline outline : outlines) {
      try {
        return Optional.of(measure.on(outline));
      } catch (MissingFeatureException e) {
        reason = String.valueOf(e.getMessage());
      }
    }
    if (!outlines.isEmpty()) {
      reading.error(
          entry,
          reason,
          "a feature that the outline has at the place given",
          "correct its places, or the outline");
    }
    return Optional.empty();
  }

  private void compare(Feature feature, Map<String, Double> stated, Fields fields) {
    stated.forEach(
        (key, size) -> {
          Double drawn = feature.sizes().get(key);
          Located value = fields.find(key).orElse(fields.object());
          if (drawn == null) {
            reading.error(
                value,
                value.words() + " as the " + key + " of a groove whose place is not given",
                "\"keyAt\", the middle of its mouth",
                "add \"keyAt\", or remove this key");
          } else if (Math.abs(drawn - size) > AS_DRAWN) {
            reading.error(
                value,
                Rounded.mm(size) + ", but the outline has " + Rounded.mm(drawn) + " there",
                "the size as drawn, to within 0.05 mm",
                "correct the size or the outline, or leave the size out");
          }
        });
  }
}
