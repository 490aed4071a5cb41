package spanledger.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.Angle;
import spanledger.section.CatalogueSection;
import spanledger.section.Channel;
import spanledger.section.ISection;
import spanledger.section.PropertyRow;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.section.SolidRectangle;
import spanledger.section.SolidRound;

/** Decodes the cross-sections. */
final class SectionDecoder {

  /** Makes a shape from its sizes once all of them are read; throws if they make no outline. */
  private interface Outline {
    Shape of(Sizes sizes);
  }

  /**
   * A shape of the job file.
   *
   * @param kind its definition in the schema
   * @param outline makes it
   */
  private record Form(String kind, Outline outline) {}

  private static final Map<String, Form> FORMS =
      Map.of(
          "rectangular-hollow",
          new Form("rectangularHollow", SectionDecoder::rectangularHollow),
          "round-hollow",
          new Form(
              "roundHollow", s -> new RoundHollow(s.length("diameter"), s.length("thickness"))),
          "solid-rectangle",
          new Form("solidRectangle", s -> new SolidRectangle(s.length("depth"), s.length("width"))),
          "solid-round",
          new Form("solidRound", s -> new SolidRound(s.length("diameter"))),
          "channel",
          new Form(
              "channel",
              s ->
                  new Channel(
                      s.length("depth"),
                      s.length("width"),
                      s.length("flangeThickness"),
                      s.length("webThickness"))),
          "angle",
          new Form(
              "angle", s -> new Angle(s.length("depth"), s.length("width"), s.length("thickness"))),
          "i-section",
          new Form(
              "iSection",
              s ->
                  new ISection(
                      s.length("depth"),
                      s.length("width"),
                      s.length("flangeThickness"),
                      s.length("webThickness"))),
          "properties",
          new Form("propertyRow", SectionDecoder::propertyRow));

  /**
   * Sizes of extrusions and plates lie far within these, mm; beyond them properties lose their
   * digits.
   */
  private static final double LEAST_SIZE = 0.1;

  private static final double GREATEST_SIZE = 5000;

  private final Reading reading;
  private final OutlineSectionDecoder outlines;
  private final CatalogueSectionDecoder catalogue;

  /**
   * A decoder.
   *
   * @param catalogue the sections that can be named
   * @param solved torsion and shear of outlines
   */
  SectionDecoder(Reading reading, Map<String, CatalogueSection> catalogue, SolvedOutlines solved) {
    this.reading = reading;
    this.outlines = new OutlineSectionDecoder(reading, solved);
    this.catalogue = new CatalogueSectionDecoder(reading, catalogue, solved);
  }

  Names<Section> decode(Located sections) {
    Names<Section> names = new Names<>(reading, "section");
    for (Located.Entry entry : reading.named(sections)) {
      names.add(entry, shape(entry.value()).flatMap(shape -> section(entry, shape)));
    }
    return names;
  }

  private Optional<Section> section(Located.Entry entry, Shape shape) {
    try {
      return Optional.of(new Section(entry.key(), shape));
    } catch (IllegalArgumentException e) {
      return refuse(entry.value(), e);
    }
  }

  private Optional<Shape> shape(Located value) {
    if (value instanceof Located.LocatedObject object && object.find("outline").isPresent()) {
      return outlines.decode(value);
    }
    if (value instanceof Located.LocatedObject object && object.find("catalogue").isPresent()) {
      return catalogue.decode(value);
    }
    Optional<Form> form =
        value instanceof Located.LocatedObject object
            ? object.find("shape").map(Located.Entry::value).flatMap(this::form)
            : Optional.empty();
    if (form.isEmpty()) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Optional<Fields> fields = reading.fields(form.get().kind(), value);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().find("shape");
    Sizes sizes = new Sizes(reading, fields.get());
    try {
      Shape shape = form.get().outline().of(sizes);
      return sizes.areSound() ? Optional.of(shape) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return sizes.areSound() ? refuse(value, e) : Optional.empty();
    }
  }

  private Optional<Form> form(Located shape) {
    return shape instanceof LocatedText text
        ? Optional.ofNullable(FORMS.get(text.text()))
        : Optional.empty();
  }

  private <T> Optional<T> refuse(Located value, IllegalArgumentException fault) {
    reading.error(
        value,
        "sizes that make no section: " + fault.getMessage(),
        "walls that leave the outline open or hollow where it should be",
        "correct the sizes");
    return Optional.empty();
  }

  private static Shape rectangularHollow(Sizes s) {
    double depth = s.length("depth");
    double width = s.length("width");
    OptionalDouble uniform = s.findLength("thickness");
    if (uniform.isPresent()) {
      return RectangularHollow.uniform(depth, width, uniform.getAsDouble());
    }
    return new RectangularHollow(
        depth, width, s.length("webThickness"), s.length("flangeThickness"));
  }

  private static Shape propertyRow(Sizes s) {
    return new PropertyRow(
        s.require("area", Dimension.AREA),
        s.require("shearAreaY", Dimension.AREA),
        s.require("shearAreaZ", Dimension.AREA),
        s.require("secondMomentY", Dimension.SECOND_MOMENT),
        s.require("secondMomentZ", Dimension.SECOND_MOMENT),
        s.require("torsionConstant", Dimension.SECOND_MOMENT),
        s.require("elasticModulusY", Dimension.SECTION_MODULUS),
        s.require("elasticModulusZ", Dimension.SECTION_MODULUS),
        s.require("torsionModulus", Dimension.SECTION_MODULUS),
        s.find("plasticModulusY", Dimension.SECTION_MODULUS),
        s.find("plasticModulusZ", Dimension.SECTION_MODULUS),
        s.find("peakShearAreaY", Dimension.AREA),
        s.find("peakShearAreaZ", Dimension.AREA),
        s.length("thinnestWall"),
        s.length("thickestWall"),
        s.find("walls", "walls").map(SectionDecoder::walls),
        Source.declared(s.text("source")));
  }

  private static PropertyRow.Walls walls(Sizes s) {
    return new PropertyRow.Walls(
        s.find("web", Dimension.NONE).orElse(0),
        s.find("innerFlange", Dimension.NONE).orElse(0),
        s.find("outstand", Dimension.NONE).orElse(0),
        s.find("round", Dimension.NONE).orElse(0));
  }

  /** The sizes of one section; a size that cannot be read counts as 1 and spoils the whole. */
  private static final class Sizes {
    private final Reading reading;
    private final Values values;
    private final Fields fields;
    private final Map<String, Sizes> parts = new LinkedHashMap<>();
    private boolean sound = true;

    Sizes(Reading reading, Fields fields) {
      this.reading = reading;
      this.values = new Values(reading);
      this.fields = fields;
    }

    boolean areSound() {
      return sound && parts.values().stream().allMatch(Sizes::areSound);
    }

    double length(String key) {
      return fields.find(key).map(this::bounded).orElseGet(() -> require(key, Dimension.LENGTH));
    }

    OptionalDouble findLength(String key) {
      return fields
          .find(key)
          .map(value -> OptionalDouble.of(bounded(value)))
          .orElse(OptionalDouble.empty());
    }

    private double bounded(Located value) {
      Optional<Double> read = values.positive(value, Dimension.LENGTH);
      if (read.isPresent() && (read.get() < LEAST_SIZE || read.get() > GREATEST_SIZE)) {
        reading.error(
            value,
            value.words() + " as a size of a section",
            "sizes from 0.1 mm to 5 m",
            "check the number and its unit");
        sound = false;
      }
      sound &= read.isPresent();
      return read.orElse(1.0);
    }

    double require(String key, Dimension dimension) {
      Optional<Double> read =
          fields.require(key).flatMap(value -> values.positive(value, dimension));
      sound &= read.isPresent();
      return read.orElse(1.0);
    }

    OptionalDouble find(String key, Dimension dimension) {
      Optional<Located> value = fields.find(key);
      if (value.isEmpty()) {
        return OptionalDouble.empty();
      }
      Optional<Double> read = values.positive(value.get(), dimension);
      sound &= read.isPresent();
      return OptionalDouble.of(read.orElse(1.0));
    }

    String text(String key) {
      Optional<String> read = fields.requireText(key).map(LocatedText::text);
      sound &= read.isPresent();
      return read.orElse("");
    }

    Optional<Sizes> find(String key, String kind) {
      Optional<Located> value = fields.find(key);
      Optional<Sizes> part =
          value.flatMap(v -> reading.fields(kind, v)).map(f -> new Sizes(reading, f));
      part.ifPresent(p -> parts.put(key, p));
      sound &= value.isEmpty() || part.isPresent();
      return part;
    }
  }
}
