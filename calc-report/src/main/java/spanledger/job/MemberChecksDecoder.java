package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.memberdesign.Detail;
import spanledger.memberdesign.LengthRule;
import spanledger.memberdesign.MemberDesign;
import spanledger.resistance.member.CodeFigures;

/** Decodes by which code members are checked, and what it has to know of them. */
final class MemberChecksDecoder {

  private final Reading reading;
  private final PublishedNames names;
  private final Map<String, MemberCodeChoice> codes;
  private final BucklingLengthDecoder lengths;
  private final MemberDetailDecoder details;

  MemberChecksDecoder(Reading reading, Structure structure, Map<String, MemberCodeChoice> codes) {
    this.reading = reading;
    this.names = new PublishedNames(reading);
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
    Optional<MemberCodeChoice> choice =
        fields.require("code").flatMap(name -> names.choose(name, "member code", codes));
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
    return choice.flatMap(
        code -> {
          Map<String, Figure> known = new TreeMap<>(code.figures().figures());
          Optional<Figure> model = Optional.ofNullable(known.get(entry.key()));
          return names.replacement(entry, fields, model, "this code", known);
        });
  }
}
