package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.memberdesign.Detail;
import spanledger.memberdesign.LengthRule;
import spanledger.memberdesign.MemberDesign;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.tables.NearMiss;

/** Decodes by which code members are checked, and what it has to know of them. */
final class MemberChecksDecoder {

  private final Reading reading;
  private final Values values;
  private final Map<String, MemberCodeChoice> codes;
  private final BucklingLengthDecoder lengths;
  private final MemberDetailDecoder details;

  MemberChecksDecoder(Reading reading, Structure structure, Map<String, MemberCodeChoice> codes) {
    this.reading = reading;
    this.values = new Values(reading);
    this.codes = codes;
    MemberPickDecoder picks = new MemberPickDecoder(reading, structure.members());
    this.lengths = new BucklingLengthDecoder(reading, picks);
    this.details = new MemberDetailDecoder(reading, picks);
  }

  /** What the job says; empty if it has faults. */
  Optional<MemberDesign> decode(Located given) {
    return reading.fields("memberChecks", given).flatMap(this::design);
  }

  private Optional<MemberDesign> design(Fields fields) {
    Optional<MemberCodeChoice> choice = fields.require("code").flatMap(this::choice);
    Optional<CodeFigures> figures =
        fields
            .find("figures")
            .map(f -> figures(f, choice))
            .orElseGet(() -> choice.map(MemberCodeChoice::figures));
    List<LengthRule> rules = new ArrayList<>();
    boolean sound = true;
    for (Located one : fields.requireList("lengths")) {
      Optional<LengthRule> rule = lengths.decode(one);
      rule.ifPresent(rules::add);
      sound &= rule.isPresent();
    }
    List<Detail> found = new ArrayList<>();
    sound &= details.decode(fields, found);
    if (!sound || choice.isEmpty() || figures.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new MemberDesign(choice.get().with(figures.get()), rules, found));
  }

  private Optional<MemberCodeChoice> choice(Located name) {
    if (!(name instanceof LocatedText text)) {
      reading.gap(name.pointer());
      return Optional.empty();
    }
    MemberCodeChoice found = codes.get(text.text());
    if (found == null) {
      reading.error(
          name,
          Quoted.text(text.text()) + ", which is no member code",
          "one of " + String.join(", ", codes.keySet()),
          NearMiss.of(text.text(), codes.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them; \"spanledger rules\" lists them"));
    }
    return Optional.ofNullable(found);
  }

  private Optional<CodeFigures> figures(Located given, Optional<MemberCodeChoice> choice) {
    Optional<CodeFigures> changed = choice.map(MemberCodeChoice::figures);
    for (Located.Entry entry : reading.named(given)) {
      Optional<Fields> fields = reading.fields("override", entry.value());
      Optional<Figure> figure = fields.flatMap(f -> figure(entry, f, choice));
      if (figure.isEmpty()) {
        changed = Optional.empty();
      }
      changed = changed.flatMap(all -> figure.map(all::with));
    }
    return changed;
  }

  private Optional<Figure> figure(
      Located.Entry entry, Fields fields, Optional<MemberCodeChoice> choice) {
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Located> value = fields.require("value");
    String note = fields.findText("note");
    if (choice.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Figure> known = new TreeMap<>(choice.get().figures().figures());
    Figure old = known.get(entry.key());
    if (old == null) {
      reading.error(
          entry,
          Quoted.text(entry.key()) + ", which is no figure of this code",
          "one of " + String.join(", ", known.keySet()),
          NearMiss.of(entry.key(), known.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them"));
      return Optional.empty();
    }
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
}
