package spanledger.job;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.resistance.member.CodeFigures;

/** Decodes the figures of a code that a job replaces, by a national annex for example. */
final class CodeFiguresDecoder {

  private final Reading reading;
  private final PublishedNames names;

  CodeFiguresDecoder(Reading reading) {
    this.reading = reading;
    this.names = new PublishedNames(reading);
  }

  /**
   * The figures of a code as the job wants them.
   *
   * @param fields of the block that names the code
   * @param published its figures; empty if the code is not known, which is reported already
   * @return empty if something is wrong
   */
  Optional<CodeFigures> decode(Fields fields, Optional<CodeFigures> published) {
    return fields.find("figures").map(given -> changed(given, published)).orElse(published);
  }

  private Optional<CodeFigures> changed(Located given, Optional<CodeFigures> published) {
    Optional<CodeFigures> changed = published;
    for (Located.Entry entry : reading.named(given)) {
      Optional<Fields> fields = reading.fields("override", entry.value());
      Optional<Figure> figure =
          fields.flatMap(f -> published.flatMap(code -> figure(entry, f, code)));
      changed = changed.flatMap(all -> figure.map(all::with));
    }
    return changed;
  }

  private Optional<Figure> figure(Located.Entry entry, Fields fields, CodeFigures code) {
    Map<String, Figure> known = new TreeMap<>(code.figures());
    Optional<Figure> model = Optional.ofNullable(known.get(entry.key()));
    return names.replacement(entry, fields, model, "this code", known);
  }
}
