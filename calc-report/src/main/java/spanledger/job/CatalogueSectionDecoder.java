package spanledger.job;

import java.util.Map;
import java.util.Optional;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.section.CatalogueSection;
import spanledger.section.OutlineShape;
import spanledger.section.Shape;
import spanledger.section.mesh.MeshingException;
import spanledger.section.outline.Outline;
import spanledger.section.plate.Plates;
import spanledger.tables.NearMiss;

/** Decodes a section that is named in a catalogue. */
final class CatalogueSectionDecoder {

  /** How many names a message lists. */
  private static final int LISTED = 8;

  private final Reading reading;
  private final Map<String, CatalogueSection> catalogue;
  private final SolvedOutlines solved;

  CatalogueSectionDecoder(
      Reading reading, Map<String, CatalogueSection> catalogue, SolvedOutlines solved) {
    this.reading = reading;
    this.catalogue = catalogue;
    this.solved = solved;
  }

  /** The shape, unless no catalogue has the name. */
  Optional<Shape> decode(Located value) {
    return reading
        .fields("catalogueSection", value)
        .flatMap(fields -> fields.requireText("catalogue"))
        .flatMap(this::named);
  }

  private Optional<Shape> named(LocatedText name) {
    CatalogueSection section = catalogue.get(name.text());
    if (section == null) {
      reading.error(
          name,
          Quoted.text(name.text()) + ", which is in no catalogue",
          "the name of a catalogue section" + listed(),
          NearMiss.of(name.text(), catalogue.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("correct the name, or add the file with this section to \"libraries\""));
      return Optional.empty();
    }
    if (section.form() instanceof CatalogueSection.ByFormula formula) {
      return Optional.of(formula.shape());
    }
    Outline outline = ((CatalogueSection.ByOutline) section.form()).outline();
    try {
      return Optional.of(
          new OutlineShape(outline, Plates.of(outline), solved.of(outline)).from(section.source()));
    } catch (MeshingException e) {
      reading.error(
          name,
          "a section that cannot be meshed: " + e.getMessage(),
          "sizes that make a section",
          "correct the row of the catalogue");
      return Optional.empty();
    }
  }

  private String listed() {
    if (catalogue.isEmpty()) {
      return "; there are none";
    }
    String some =
        String.join(", ", catalogue.keySet().stream().limit(LISTED).map(Quoted::text).toList());
    return ": " + some + (catalogue.size() > LISTED ? ", ..." : "");
  }
}
