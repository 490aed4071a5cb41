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
import spanledger.job.source.Located;

/** Decodes the rule set, its overrides and the combination rules. */
final class RulesDecoder {

  private final Reading reading;
  private final PublishedNames names;
  private final Tables tables;

  RulesDecoder(Reading reading, Tables tables) {
    this.reading = reading;
    this.names = new PublishedNames(reading);
    this.tables = tables;
  }

  Optional<RuleSet> rules(Located name) {
    return names.choose(name, "rule set", tables.rules());
  }

  Optional<CombinationSet> combinations(Located name) {
    return names.choose(name, "combination rule", tables.combinations());
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
    Map<String, Figure> known = tables.knownFigures();
    Optional<Figure> replaced = rules.flatMap(set -> set.find(entry.key()));
    Optional<Figure> model = replaced.or(() -> Optional.ofNullable(known.get(entry.key())));
    return names
        .replacement(entry, fields, model, "a rule set", known)
        .map(figure -> new FigureOverride(figure, replaced));
  }
}
