package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final CodeFiguresDecoder figures;
  private final Map<String, MemberCodeChoice> codes;
  private final BucklingLengthDecoder lengths;
  private final MemberDetailDecoder details;

  MemberChecksDecoder(Reading reading, Structure structure, Map<String, MemberCodeChoice> codes) {
    this.reading = reading;
    this.names = new PublishedNames(reading);
    this.figures = new CodeFiguresDecoder(reading);
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
    Optional<CodeFigures> wanted = figures.decode(fields, choice.map(MemberCodeChoice::figures));
    List<LengthRule> rules = new ArrayList<>();
    boolean sound = true;
    for (Located one : fields.requireList("lengths")) {
      Optional<LengthRule> rule = lengths.decode(one);
      rule.ifPresent(rules::add);
      sound &= rule.isPresent();
    }
    List<Detail> found = new ArrayList<>();
    sound &= details.decode(fields, found);
    if (!sound || choice.isEmpty() || wanted.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new MemberDesign(choice.get().with(wanted.get()), rules, found));
  }
}
