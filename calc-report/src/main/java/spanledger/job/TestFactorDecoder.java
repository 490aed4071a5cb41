package spanledger.job;

import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.jointdesign.KnownVariation;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Figured;

/** Decodes what a job says beside the tests of a joint: a partial factor, and known scatter. */
final class TestFactorDecoder {

  private final Reading reading;
  private final Values values;

  TestFactorDecoder(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /**
   * What a job says of a partial factor.
   *
   * @param declared the factor, if there is one
   */
  record PartialFactor(Optional<Figured> declared) {}

  /** The partial factor, if there is one; nothing if it has faults. */
  Optional<PartialFactor> partialFactor(Fields fields) {
    Optional<Located> given = fields.find("partialFactor");
    if (given.isEmpty()) {
      return Optional.of(new PartialFactor(Optional.empty()));
    }
    return reading
        .fields("testFactor", given.get())
        .flatMap(this::factor)
        .map(factor -> new PartialFactor(Optional.of(factor)));
  }

  private Optional<Figured> factor(Fields fields) {
    Optional<Located> value = fields.require("value");
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Double> factor = value.flatMap(v -> values.positive(v, Dimension.NONE));
    if (factor.isPresent() && factor.get() < 1) {
      reading.error(
          value.orElseThrow(),
          value.orElseThrow().words() + ", less than 1",
          "a partial factor of 1 or more",
          "give the factor by which the characteristic resistance is divided");
      return Optional.empty();
    }
    return factor.isEmpty() || source.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Figured(
                factor.get(),
                "partial factor of the moment from tests",
                Source.declared(source.get().text())));
  }

  /** What is known of the scatter; nothing if it has faults. */
  Optional<KnownVariation> known(Fields fields) {
    Optional<Located> given = fields.find("knownVariation");
    return given.isEmpty()
        ? Optional.of(KnownVariation.NONE)
        : reading.fields("knownVariation", given.get()).flatMap(this::variation);
  }

  private Optional<KnownVariation> variation(Fields fields) {
    Optional<OptionalDouble> moment = one(fields, "moment");
    Optional<OptionalDouble> stiffness = one(fields, "stiffness");
    Optional<OptionalDouble> slip = one(fields, "slip");
    Optional<LocatedText> source = fields.requireText("source");
    return moment.isEmpty() || stiffness.isEmpty() || slip.isEmpty() || source.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new KnownVariation(
                slip.get(), stiffness.get(), moment.get(), Source.declared(source.get().text())));
  }

  private Optional<OptionalDouble> one(Fields fields, String key) {
    Optional<Located> given = fields.find(key);
    if (given.isEmpty()) {
      return Optional.of(OptionalDouble.empty());
    }
    Optional<Double> read = values.positive(given.get(), Dimension.NONE);
    if (read.isPresent() && read.get() >= 1) {
      reading.error(
          given.get(),
          given.get().words() + " as a coefficient of variation",
          "a number above 0 and below 1, such as 0.08",
          "give the standard deviation per mean");
      return Optional.empty();
    }
    return read.map(OptionalDouble::of);
  }
}
