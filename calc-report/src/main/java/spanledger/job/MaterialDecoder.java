package spanledger.job;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.material.Alloy;
import spanledger.material.AlloyTable;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.tables.NearMiss;

/** Decodes the materials. */
final class MaterialDecoder {

  private static final Map<String, ProductForm> FORMS =
      Map.of(
          "open-profile", ProductForm.OPEN_PROFILE,
          "hollow-profile", ProductForm.HOLLOW_PROFILE,
          "tube", ProductForm.TUBE,
          "rod-or-bar", ProductForm.ROD_OR_BAR);
  private static final Map<String, BucklingClass> CLASSES =
      Map.of("A", BucklingClass.A, "B", BucklingClass.B);

  private final Reading reading;
  private final Values values;
  private final AlloyTable table;

  MaterialDecoder(Reading reading, AlloyTable table) {
    this.reading = reading;
    this.values = new Values(reading);
    this.table = table;
  }

  Names<MaterialChoice> decode(Located materials) {
    Names<MaterialChoice> names = new Names<>(reading, "material");
    for (Located.Entry entry : reading.named(materials)) {
      names.add(entry, material(entry));
    }
    return names;
  }

  private Optional<MaterialChoice> material(Located.Entry entry) {
    boolean published =
        entry.value() instanceof Located.LocatedObject object && object.find("alloy").isPresent();
    Optional<Fields> fields =
        reading.fields(published ? "publishedMaterial" : "ownMaterial", entry.value());
    return published
        ? fields.flatMap(this::published)
        : fields.flatMap(f -> own(entry, f)).map(MaterialChoice.Own::new);
  }

  private Optional<MaterialChoice> published(Fields fields) {
    Optional<LocatedText> designation = fields.requireText("alloy");
    Optional<Located> stated = fields.find("form");
    Optional<ProductForm> form = stated.flatMap(f -> values.word(f, FORMS));
    if (designation.isEmpty() || stated.isPresent() != form.isPresent()) {
      return Optional.empty();
    }
    String name = designation.get().text();
    if (!table.designations().contains(name)) {
      reading.error(
          designation.get(),
          Quoted.text(name) + ", which is not in the alloy table",
          "one of " + String.join(", ", table.designations()),
          NearMiss.of(name, table.designations())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them, or give its strengths in place of \"alloy\""));
      return Optional.empty();
    }
    return Optional.of(new MaterialChoice.Published(name, form));
  }

  private Optional<Alloy> own(Located.Entry entry, Fields fields) {
    Optional<Double> proof = stress(fields, "proofStrength");
    Optional<Double> ultimate = stress(fields, "ultimateStrength");
    Optional<BucklingClass> bucklingClass =
        fields.require("bucklingClass").flatMap(c -> values.word(c, CLASSES));
    Optional<Double> youngs = stress(fields, "youngsModulus");
    Optional<Double> shear = stress(fields, "shearModulus");
    Optional<Double> density =
        fields.require("density").flatMap(d -> values.positive(d, Dimension.DENSITY));
    Optional<LocatedText> source = fields.requireText("source");
    String note = fields.findText("note");
    if (proof.isEmpty()
        || ultimate.isEmpty()
        || bucklingClass.isEmpty()
        || youngs.isEmpty()
        || shear.isEmpty()
        || density.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Alloy(
              entry.key(),
              EnumSet.allOf(ProductForm.class),
              new ThicknessRange(0, Double.POSITIVE_INFINITY),
              proof.get(),
              ultimate.get(),
              bucklingClass.get(),
              Optional.empty(),
              OptionalDouble.empty(),
              youngs.get(),
              shear.get(),
              density.get(),
              Source.declared(source.get().text()),
              note));
    } catch (IllegalArgumentException e) {
      reading.error(
          entry.value(),
          "strengths that contradict each other: " + e.getMessage(),
          "an ultimate strength not below the proof strength",
          "correct the strengths");
      return Optional.empty();
    }
  }

  private Optional<Double> stress(Fields fields, String key) {
    return fields.require(key).flatMap(value -> values.positive(value, Dimension.STRESS));
  }
}
