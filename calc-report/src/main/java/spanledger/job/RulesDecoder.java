package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.CombinationSet;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.provenance.Source;
import spanledger.tables.NearMiss;

/** Decodes the rule set, its overrides and the combination rules. */
final class RulesDecoder {

  private final Reading reading;
  private final Values values;
  private final Tables tables;

  RulesDecoder(Reading reading, Tables tables) {
    this.reading = reading;
    this.values = new Values(reading);
    this.tables = tables;
  }

  Optional<RuleSet> rules(Located name) {
    return named(name, "rule set", tables.rules());
  }

  Optional<CombinationSet> combinations(Located name) {
    return named(name, "combination rule", tables.combinations());
  }

  private <T> Optional<T> named(Located name, String kind, Map<String, T> known) {
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
          NearMiss.of(text.text(), known.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them; \"spanledger rules\" shows what they ask for"));
      return Optional.empty();
    }
    return Optional.of(found);
  }

  /**
   * The overrides, in the order of the file.
   *
   * @param rules the rule set, if it is known
   */
  List<FigureOverride> overrides(Located given, Optional<RuleSet> rules) {
    List<FigureOverride> overrides = new ArrayList<>();
    for (Located.Entry entry : reading.named(given)) {
      reading
          .fields("override", entry.value())
          .flatMap(fields -> override(entry, fields, rules))
          .ifPresent(overrides::add);
    }
    return overrides;
  }

  private Optional<FigureOverride> override(
      Located.Entry entry, Fields fields, Optional<RuleSet> rules) {
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Located> value = fields.require("value");
    String note = fields.findText("note");
    Map<String, Figure> known = tables.knownFigures();
    Optional<Figure> replaced = rules.flatMap(set -> set.find(entry.key()));
    Optional<Figure> model = replaced.or(() -> Optional.ofNullable(known.get(entry.key())));
    if (model.isEmpty()) {
      reading.error(
          entry,
          Quoted.text(entry.key()) + ", which is no figure of a rule set",
          "one of " + String.join(", ", known.keySet()),
          NearMiss.of(entry.key(), known.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them; \"spanledger rules\" shows what they mean"));
      return Optional.empty();
    }
    Figure old = model.get();
    Optional<Double> read = value.flatMap(v -> values.positive(v, old.dimension()));
    if (read.isEmpty() || source.isEmpty() || value.isEmpty()) {
      return Optional.empty();
    }
    String text = value.get() instanceof LocatedText written ? written.text().strip() : "";
    Figure figure =
        new Figure(
            old.id(),
            old.words(),
            text,
            read.get(),
            old.dimension(),
            Source.declared(source.get().text()),
            note);
    return Optional.of(new FigureOverride(figure, replaced));
  }
}
