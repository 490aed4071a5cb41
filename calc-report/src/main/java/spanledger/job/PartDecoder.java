package spanledger.job;

import java.util.Optional;
import spanledger.assembly.Part;
import spanledger.frame.MemberEnd;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.material.Alloy;
import spanledger.quantity.Dimension;
import spanledger.section.Section;

/** Decodes what pieces of an assembly are made of. */
final class PartDecoder {

  private final Reading reading;
  private final Values values;
  private final JointDecoder joints;
  private final TurnDecoder turns;
  private final Names<Section> sections;
  private final Names<MaterialChoice> materials;
  private final AlloyChooser alloys;

  PartDecoder(
      Reading reading,
      JointDecoder joints,
      Names<Section> sections,
      Names<MaterialChoice> materials,
      AlloyChooser alloys) {
    this.reading = reading;
    this.values = new Values(reading);
    this.joints = joints;
    this.turns = new TurnDecoder(reading);
    this.sections = sections;
    this.materials = materials;
    this.alloys = alloys;
  }

  Names<Part> decode(Located parts) {
    Names<Part> names = new Names<>(reading, "part");
    for (Located.Entry entry : reading.named(parts)) {
      reading.fields("part", entry.value()).ifPresent(fields -> part(entry, fields, names));
    }
    return names;
  }

  /** Others take the place of what has faults, so that the assembly can still be checked. */
  private void part(Located.Entry entry, Fields fields, Names<Part> names) {
    Optional<Section> section = fields.require("section").flatMap(sections::resolve);
    Optional<Located> material = fields.require("material");
    Optional<Alloy> alloy = material.flatMap(m -> alloy(m, section));
    Optional<Double> roll = fields.find("roll").map(turns::decode).orElse(Optional.of(0.0));
    Optional<Ends> ends = ends(fields);
    Optional<Double> inset =
        fields
            .find("inset")
            .map(length -> values.positive(length, Dimension.LENGTH))
            .orElse(Optional.of(0.0));
    Part part =
        new Part(
            entry.key(),
            section.orElse(MemberDecoder.SOME_SECTION),
            material
                .filter(LocatedText.class::isInstance)
                .map(m -> ((LocatedText) m).text())
                .orElse(""),
            alloy.orElse(MemberDecoder.SOME_ALLOY),
            roll.orElse(0.0),
            ends.map(Ends::start).orElse(MemberEnd.RIGID),
            ends.map(Ends::end).orElse(MemberEnd.RIGID),
            inset.orElse(0.0));
    if (section.isPresent()
        && alloy.isPresent()
        && roll.isPresent()
        && ends.isPresent()
        && inset.isPresent()) {
      names.add(entry, Optional.of(part));
    } else {
      names.addFaulty(entry, part);
    }
  }

  private record Ends(MemberEnd start, MemberEnd end) {}

  /** One {@code joint} for both ends, or {@code start} and {@code end}. */
  private Optional<Ends> ends(Fields fields) {
    Optional<Located> both = fields.find("joint");
    Optional<Located> start = fields.find("start");
    Optional<Located> end = fields.find("end");
    if (both.isPresent() != (start.isPresent() && end.isPresent())
        && start.isPresent() == end.isPresent()) {
      Optional<MemberEnd> first = both.or(() -> start).flatMap(joints::decode);
      Optional<MemberEnd> last = both.isPresent() ? first : end.flatMap(joints::decode);
      return first.isPresent() && last.isPresent()
          ? Optional.of(new Ends(first.get(), last.get()))
          : Optional.empty();
    }
    reading.error(
        both.or(() -> start).or(() -> end).orElse(fields.object()),
        both.isPresent()
            ? "\"joint\" together with \"start\" or \"end\""
            : "a part "
                + (start.or(() -> end).isPresent() ? "joined at one end" : "without joints"),
        "either \"joint\", for both ends, or both \"start\" and \"end\"",
        "say how both ends are joined, once");
    return Optional.empty();
  }

  private Optional<Alloy> alloy(Located reference, Optional<Section> section) {
    Optional<MaterialChoice> choice = materials.resolve(reference);
    if (choice.isEmpty() || section.isEmpty()) {
      return Optional.empty();
    }
    return alloys.alloy(choice.get(), section.get(), reference);
  }
}
