package spanledger.job;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import spanledger.deck.Panel;
import spanledger.deck.PlankPanel;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.JobFile;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.material.Alloy;
import spanledger.quantity.Dimension;
import spanledger.section.Section;
import spanledger.tables.PanelTables;

/** Decodes deck panels, gratings, planks and treads. */
final class PanelDecoder {

  private static final ReferredTable TABLE =
      new ReferredTable(
          "a table",
          "a table of spans and loads as docs/job-file.md describes it",
          "correct the file");

  private final Reading reading;
  private final Values values;
  private final Names<Section> sections;
  private final Names<MaterialChoice> materials;
  private final AlloyChooser alloys;

  PanelDecoder(
      Reading reading,
      Names<Section> sections,
      Names<MaterialChoice> materials,
      AlloyChooser alloys) {
    this.reading = reading;
    this.values = new Values(reading);
    this.sections = sections;
    this.materials = materials;
    this.alloys = alloys;
  }

  Names<Panel> decode(Located panels) {
    Names<Panel> names = new Names<>(reading, "panel");
    for (Located.Entry entry : reading.named(panels)) {
      names.add(entry, panel(entry));
    }
    return names;
  }

  private Optional<Panel> panel(Located.Entry entry) {
    boolean tested =
        entry.value() instanceof LocatedObject object && object.find("table").isPresent();
    Optional<Fields> fields = reading.fields(tested ? "testedPanel" : "plankPanel", entry.value());
    return tested
        ? fields.flatMap(f -> tested(entry.key(), f))
        : fields.flatMap(f -> plank(entry.key(), f));
  }

  private Optional<Panel> tested(String name, Fields fields) {
    Optional<LocatedText> table = fields.requireText("table");
    Optional<Double> weight = weight(fields);
    Optional<Located> givenOpening = fields.find("opening");
    Optional<Double> opening = givenOpening.flatMap(this::opening);
    if (table.isEmpty() || weight.isEmpty() || givenOpening.isPresent() != opening.isPresent()) {
      return Optional.empty();
    }
    return read(name, table.get(), weight.get(), opening);
  }

  private Optional<Panel> read(
      String name, LocatedText file, double weight, Optional<Double> opening) {
    return TABLE.read(
        reading,
        file,
        bytes ->
            PanelTables.read(
                file.text(),
                new ByteArrayInputStream(bytes),
                name,
                JobFile.sha256(bytes),
                weight,
                opening));
  }

  private Optional<Panel> plank(String name, Fields fields) {
    Optional<Section> section = fields.require("section").flatMap(sections::resolve);
    Optional<Located> material = fields.require("material");
    Optional<Alloy> alloy = material.flatMap(m -> alloy(m, section));
    Optional<Double> width =
        fields.require("width").flatMap(v -> values.positive(v, Dimension.LENGTH));
    Optional<LocatedText> source = fields.requireText("source");
    Optional<Double> weight = weight(fields);
    Optional<Located> givenOpening = fields.find("opening");
    Optional<Double> opening = givenOpening.flatMap(this::opening);
    return section.isPresent()
            && alloy.isPresent()
            && width.isPresent()
            && source.isPresent()
            && weight.isPresent()
            && givenOpening.isPresent() == opening.isPresent()
        ? Optional.of(
            new PlankPanel(
                name,
                section.get(),
                alloy.get(),
                width.get(),
                source.get().text(),
                weight.get(),
                opening))
        : Optional.empty();
  }

  private Optional<Alloy> alloy(Located reference, Optional<Section> section) {
    Optional<MaterialChoice> choice = materials.resolve(reference);
    return choice.isEmpty() || section.isEmpty()
        ? Optional.empty()
        : alloys.alloy(choice.get(), section.get(), reference);
  }

  private Optional<Double> weight(Fields fields) {
    return fields
        .find("weight")
        .map(v -> values.notNegative(v, Dimension.STRESS))
        .orElse(Optional.of(0.0));
  }

  private Optional<Double> opening(Located value) {
    return values.notNegative(value, Dimension.LENGTH);
  }
}
