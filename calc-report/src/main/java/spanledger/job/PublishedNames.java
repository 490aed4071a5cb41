package spanledger.job;

import java.util.Map;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.provenance.Source;
import spanledger.tables.NearMiss;

/** Decodes names of published data, and figures that replace published ones. */
final class PublishedNames {

  private final Reading reading;
  private final Values values;

  PublishedNames(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /** The thing of that name; a name that nothing has is reported. */
  <T> Optional<T> choose(Located name, String kind, Map<String, T> known) {
    if (!(name instanceof LocatedText text)) {
      reading.gap(name.pointer());
      return Optional.empty();
    }
    T found = known.get(text.text());
    if (found == null) {
      reading.error(
          name,
          Quoted.text(text.text()) + ", which is no " + kind,
          "one of " + String.join(", ", known.keySet()),
          near(text.text(), known)
              .orElse("choose one of them; \"spanledger rules\" shows what they ask for"));
    }
    return Optional.ofNullable(found);
  }

  /**
   * A figure in place of a published one.
   *
   * @param model the figure it replaces, or one like it; empty if there is none of that id
   * @param kind whose figures are meant, for example {@code a rule set}
   * @param known the figures there are, by id
   */
  Optional<Figure> replacement(
      Located.Entry entry,
      Fields fields,
      Optional<Figure> model,
      String kind,
      Map<String, Figure> known) {
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Located> value = fields.require("value");
    String note = fields.findText("note");
    if (model.isEmpty()) {
      reading.error(
          entry,
          Quoted.text(entry.key()) + ", which is no figure of " + kind,
          "one of " + String.join(", ", known.keySet()),
          near(entry.key(), known)
              .orElse("choose one of them; \"spanledger rules\" shows what they mean"));
      return Optional.empty();
    }
    Figure old = model.get();
    Optional<Double> read = value.flatMap(v -> values.positive(v, old.dimension()));
    if (read.isEmpty() || source.isEmpty() || value.isEmpty()) {
      return Optional.empty();
    }
    String text = value.get() instanceof LocatedText written ? written.text().strip() : "";
    return Optional.of(
        new Figure(
            old.id(),
            old.words(),
            text,
            read.get(),
            old.dimension(),
            Source.declared(source.get().text()),
            note));
  }

  private static Optional<String> near(String name, Map<String, ?> known) {
    return NearMiss.of(name, known.keySet()).map(near -> "did you mean " + Quoted.text(near) + "?");
  }
}
