package spanledger.job;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
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

  /** Between which values a property of any aluminium alloy lies; common practice, no source. */
  private record Range(Dimension dimension, double least, double greatest, String words) {}

  private static final Range STRENGTH =
      new Range(Dimension.STRESS, 10, 1000, "a strength from 10 MPa to 1000 MPa");
  private static final Range YOUNGS_MODULUS =
      new Range(Dimension.STRESS, 50_000, 100_000, "a Young's modulus from 50 GPa to 100 GPa");
  private static final Range SHEAR_MODULUS =
      new Range(Dimension.STRESS, 15_000, 40_000, "a shear modulus from 15 GPa to 40 GPa");
  private static final Range DENSITY =
      new Range(Dimension.DENSITY, 2e-6, 3.5e-6, "a density from 2000 kg/m3 to 3500 kg/m3");

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
    Optional<Double> proof = within(fields, "proofStrength", STRENGTH);
    Optional<Double> ultimate = within(fields, "ultimateStrength", STRENGTH);
    Optional<BucklingClass> bucklingClass =
        fields.require("bucklingClass").flatMap(c -> values.word(c, CLASSES));
    Optional<Double> youngs = within(fields, "youngsModulus", YOUNGS_MODULUS);
    Optional<Double> shear = within(fields, "shearModulus", SHEAR_MODULUS);
    Optional<Double> density = within(fields, "density", DENSITY);
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

  private Optional<Double> within(Fields fields, String key, Range range) {
    return fields.require(key).flatMap(value -> within(value, range));
  }

  private Optional<Double> within(Located value, Range range) {
    Optional<Double> read = values.positive(value, range.dimension());
    if (read.isPresent() && (read.get() < range.least() || read.get() > range.greatest())) {
      reading.error(
          value,
          value.words() + ", which no aluminium alloy has",
          range.words(),
          "check the number and its unit");
      return Optional.empty();
    }
    return read;
  }
}
