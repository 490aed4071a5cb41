package spanledger.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.assembly.Part;
import spanledger.assembly.Side;
import spanledger.deck.Panel;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.quantity.Dimension;

/** Decodes the values of which the objects of an assembly are made. */
final class AssemblyFields {

  /** The sides by their words. */
  static final Map<String, Side> SIDES =
      Map.of("north", Side.NORTH, "south", Side.SOUTH, "east", Side.EAST, "west", Side.WEST);

  private final Reading reading;
  private final Values values;
  private final Names<Part> parts;
  private final Names<Panel> panels;

  AssemblyFields(Reading reading, Names<Part> parts, Names<Panel> panels) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
    this.panels = panels;
  }

  Reading reading() {
    return reading;
  }

  /** A part that must be named. */
  Optional<Part> part(Fields fields, String key) {
    return fields.require(key).flatMap(parts::resolve);
  }

  /** A panel that may be named; empty if it is not, or has faults, which are told. */
  Optional<Panel> panel(Fields fields, String key) {
    return fields.find(key).flatMap(panels::resolve);
  }

  /** A length greater than zero that must be given. */
  Optional<Double> size(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.positive(v, Dimension.LENGTH));
  }

  /** A length greater than zero. */
  Optional<Double> size(Located value) {
    return values.positive(value, Dimension.LENGTH);
  }

  /** A length of zero or more that must be given. */
  Optional<Double> distance(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.notNegative(v, Dimension.LENGTH));
  }

  /** A length of zero or more; another if it is left out. */
  Optional<Double> distance(Fields fields, String key, double usual) {
    return fields
        .find(key)
        .map(v -> values.notNegative(v, Dimension.LENGTH))
        .orElse(Optional.of(usual));
  }

  /** A place along an axis; zero if it is left out. */
  Optional<Double> place(Fields fields, String key) {
    return fields.find(key).map(v -> values.quantity(v, Dimension.LENGTH)).orElse(Optional.of(0.0));
  }

  /** A place along an axis. */
  Optional<Double> place(Located value) {
    return values.quantity(value, Dimension.LENGTH);
  }

  /** A weight per area that must be given. */
  Optional<Double> areaLoad(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.notNegative(v, Dimension.STRESS));
  }

  /** A whole number within what the schema allows; another if it is left out. */
  Optional<Integer> count(Fields fields, String key, int usual) {
    return fields.find(key).map(this::count).orElse(Optional.of(usual));
  }

  /** A whole number; the schema reports anything else. */
  Optional<Integer> count(Located value) {
    if (value instanceof LocatedNumber number
        && number.value() == (int) number.value()
        && number.value() >= 1
        && number.value() <= 500) {
      return Optional.of((int) number.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  /** A set of whole numbers; empty if it is left out. */
  Optional<Set<Integer>> counts(Fields fields, String key) {
    Set<Integer> all = new TreeSet<>();
    boolean sound = true;
    for (Located value : fields.findList(key)) {
      Optional<Integer> one = count(value);
      one.ifPresent(all::add);
      sound &= one.isPresent();
    }
    return sound ? Optional.of(all) : Optional.empty();
  }

  /** True or false; another if it is left out. */
  Optional<Boolean> flag(Fields fields, String key, boolean usual) {
    Optional<Located> value = fields.find(key);
    if (value.isEmpty()) {
      return Optional.of(usual);
    }
    if (value.get() instanceof LocatedTruth truth) {
      return Optional.of(truth.value());
    }
    reading.gap(value.get().pointer());
    return Optional.empty();
  }

  /** A side that must be named. */
  Optional<Side> side(Fields fields) {
    return fields.require("side").flatMap(v -> values.word(v, SIDES));
  }

  /** Some sides; others if the list is left out. */
  Optional<Set<Side>> sides(Fields fields, List<Side> usual) {
    if (!fields.has("sides")) {
      fields.find("sides");
      return Optional.of(Set.copyOf(usual));
    }
    Set<Side> all = new LinkedHashSet<>();
    boolean sound = true;
    for (Located value : fields.findList("sides")) {
      Optional<Side> one = values.word(value, SIDES);
      one.ifPresent(all::add);
      sound &= one.isPresent();
    }
    return sound ? Optional.of(all) : Optional.empty();
  }

  /** One of some words; another if it is left out. */
  <T> Optional<T> word(Fields fields, String key, Map<String, T> known, T usual) {
    return fields.find(key).map(v -> values.word(v, known)).orElse(Optional.of(usual));
  }
}
