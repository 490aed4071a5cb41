package spanledger.job;

import java.util.Optional;
import spanledger.assembly.Part;
import spanledger.frame.MemberEnd;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.material.Alloy;
import spanledger.section.Section;

/** Decodes what pieces of an assembly are made of. */
final class PartDecoder {

  private final Reading reading;
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
    Optional<MemberEnd> joint = fields.require("joint").flatMap(joints::decode);
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
            joint.orElse(MemberEnd.RIGID));
    if (section.isPresent() && alloy.isPresent() && roll.isPresent() && joint.isPresent()) {
      names.add(entry, Optional.of(part));
    } else {
      names.addFaulty(entry, part);
    }
  }

  private Optional<Alloy> alloy(Located reference, Optional<Section> section) {
    Optional<MaterialChoice> choice = materials.resolve(reference);
    if (choice.isEmpty() || section.isEmpty()) {
      return Optional.empty();
    }
    return alloys.alloy(choice.get(), section.get(), reference);
  }
}
