package spanledger.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.memberdesign.LengthBasis;
import spanledger.memberdesign.LengthRule;
import spanledger.memberdesign.MemberPick;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.BucklingMode;

/** Decodes buckling lengths of members. */
final class BucklingLengthDecoder {

  private static final Map<String, BucklingMode> MODES =
      Map.of(
          "flexural-y", BucklingMode.FLEXURAL_Y,
          "flexural-z", BucklingMode.FLEXURAL_Z,
          "torsional", BucklingMode.TORSIONAL,
          "lateral-torsional", BucklingMode.LATERAL_TORSIONAL);

  private final Reading reading;
  private final Values values;
  private final MemberPickDecoder picks;

  BucklingLengthDecoder(Reading reading, MemberPickDecoder picks) {
    this.reading = reading;
    this.values = new Values(reading);
    this.picks = picks;
  }

  Optional<LengthRule> decode(Located given) {
    return reading.fields("bucklingLength", given).flatMap(this::rule);
  }

  private Optional<LengthRule> rule(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    Set<BucklingMode> modes = EnumSet.noneOf(BucklingMode.class);
    for (Located mode : fields.requireList("modes")) {
      values.word(mode, MODES).ifPresent(modes::add);
    }
    Optional<LengthBasis> basis = basis(fields);
    Optional<LocatedText> reason = fields.requireText("reason");
    String source = fields.findText("source");
    if (members.isEmpty() || modes.isEmpty() || basis.isEmpty() || reason.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LengthRule(
            members.get(),
            modes,
            basis.get(),
            reason.get().text(),
            Source.declared(source.isEmpty() ? "the job" : source)));
  }

  private Optional<LengthBasis> basis(Fields fields) {
    List<Optional<LengthBasis>> given = new ArrayList<>();
    fields
        .find("length")
        .ifPresent(
            v -> given.add(values.positive(v, Dimension.LENGTH).map(LengthBasis.Declared::new)));
    fields
        .find("timesMember")
        .ifPresent(
            v -> given.add(values.positive(v, Dimension.NONE).map(LengthBasis.OfMember::new)));
    fields
        .find("timesBetweenNodes")
        .ifPresent(
            v -> given.add(values.positive(v, Dimension.NONE).map(LengthBasis.BetweenNodes::new)));
    fields
        .find("fromFrameBuckling")
        .ifPresent(v -> given.add(Optional.of(new LengthBasis.FrameBuckling())));
    if (given.size() == 1) {
      return given.get(0);
    }
    reading.error(
        fields.object(),
        given.isEmpty() ? "a buckling length that says no length" : "several lengths in one entry",
        "exactly one of length, timesMember, timesBetweenNodes, fromFrameBuckling",
        given.isEmpty() ? "add one of them" : "keep one of them, or make an entry of each");
    return Optional.empty();
  }
}
