package spanledger.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import spanledger.quantity.Dimension;
import spanledger.section.Angle;
import spanledger.section.CatalogueSection;
import spanledger.section.Channel;
import spanledger.section.ISection;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Shape;
import spanledger.section.SolidRectangle;
import spanledger.section.SolidRound;
import spanledger.section.StandardOutlines;

/** Reads catalogue sections from data files. */
public final class SectionTables {

  /** Properties that a row may give as published, besides its sizes. */
  private static final Map<String, Dimension> PUBLISHED = published();

  private static final Map<String, Function<TableObject, CatalogueSection.Form>> SHAPES =
      Map.of(
          "channel", SectionTables::channel,
          "i-section", SectionTables::iSection,
          "angle", SectionTables::angle,
          "rectangular-hollow", SectionTables::rectangularHollow,
          "round-hollow",
              row -> sharp(new RoundHollow(length(row, "diameter"), length(row, "thickness"))),
          "solid-rectangle",
              row -> sharp(new SolidRectangle(length(row, "depth"), length(row, "width"))),
          "solid-round", row -> sharp(new SolidRound(length(row, "diameter"))));

  private SectionTables() {}

  private static Map<String, Dimension> published() {
    Map<String, Dimension> properties = new LinkedHashMap<>();
    properties.put("area", Dimension.AREA);
    for (String axis : List.of("Y", "Z")) {
      properties.put("secondMoment" + axis, Dimension.SECOND_MOMENT);
      properties.put("elasticModulus" + axis, Dimension.SECTION_MODULUS);
      properties.put("plasticModulus" + axis, Dimension.SECTION_MODULUS);
      properties.put("radiusOfGyration" + axis, Dimension.LENGTH);
    }
    properties.put("centroid", Dimension.LENGTH);
    properties.put("shearCentre", Dimension.LENGTH);
    properties.put("torsionConstant", Dimension.SECOND_MOMENT);
    properties.put("warpingConstant", Dimension.WARPING_CONSTANT);
    properties.put("polarRadius", Dimension.LENGTH);
    return properties;
  }

  /** All sections that come with this module, in the order of its files. */
  public static List<CatalogueSection> standard() {
    List<CatalogueSection> sections = new ArrayList<>();
    TableFile.shippedIn("sections").forEach(file -> sections.addAll(read(file)));
    return sections;
  }

  /**
   * Reads a file of sections, with commas if its name ends in {@code .csv}, else in JSON.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a file of sections; the message names the row
   */
  public static List<CatalogueSection> read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  static List<CatalogueSection> read(TableObject file) {
    file.allowOnly("table", "title", "work", "place", "confidence", "note", "rows");
    Set<String> names = new HashSet<>();
    return TableObject.readAll(
        file.rows("rows", "name"),
        row -> {
          CatalogueSection section =
              section(row.orFrom(file, "work", "place", "confidence", "note"));
          if (!names.add(section.name())) {
            throw row.fault("this name is given twice.");
          }
          return section;
        });
  }

  private static CatalogueSection section(TableObject row) {
    List<String> known =
        new ArrayList<>(List.of("name", "shape", "depth", "width", "thickness", "flangeThickness"));
    known.addAll(
        List.of("webThickness", "diameter", "fillet", "outerRadius", "innerRadius", "note"));
    known.addAll(List.of("work", "place", "confidence"));
    known.addAll(PUBLISHED.keySet());
    row.allowOnly(known.toArray(String[]::new));
    Map<String, Double> published = new LinkedHashMap<>();
    PUBLISHED.forEach(
        (key, dimension) ->
            row.optionalQuantity(key, dimension).ifPresent(value -> published.put(key, value)));
    return new CatalogueSection(
        row.text("name"),
        row.word("shape", SHAPES).apply(row),
        published,
        row.source(),
        row.optionalText("note").orElse(""));
  }

  private static CatalogueSection.Form sharp(Shape shape) {
    return new CatalogueSection.ByFormula(shape);
  }

  private static double length(TableObject row, String key) {
    return row.quantity(key, Dimension.LENGTH);
  }

  private static double radius(TableObject row, String key) {
    double radius = row.optionalQuantity(key, Dimension.LENGTH).orElse(0.0);
    if (radius < 0) {
      throw row.fault("\"" + key + "\" is negative; a radius is 0 or more.");
    }
    return radius;
  }

  private static CatalogueSection.Form channel(TableObject row) {
    Channel shape =
        new Channel(
            length(row, "depth"),
            length(row, "width"),
            length(row, "flangeThickness"),
            length(row, "webThickness"));
    double fillet = radius(row, "fillet");
    return fillet == 0
        ? sharp(shape)
        : new CatalogueSection.ByOutline(StandardOutlines.channel(shape, fillet));
  }

  private static CatalogueSection.Form iSection(TableObject row) {
    ISection shape =
        new ISection(
            length(row, "depth"),
            length(row, "width"),
            length(row, "flangeThickness"),
            length(row, "webThickness"));
    double fillet = radius(row, "fillet");
    return fillet == 0
        ? sharp(shape)
        : new CatalogueSection.ByOutline(StandardOutlines.iSection(shape, fillet));
  }

  private static CatalogueSection.Form angle(TableObject row) {
    Angle shape = new Angle(length(row, "depth"), length(row, "width"), length(row, "thickness"));
    double fillet = radius(row, "fillet");
    return fillet == 0
        ? sharp(shape)
        : new CatalogueSection.ByOutline(StandardOutlines.angle(shape, fillet));
  }

  private static CatalogueSection.Form rectangularHollow(TableObject row) {
    double depth = length(row, "depth");
    double width = length(row, "width");
    RectangularHollow shape =
        row.has("thickness")
            ? RectangularHollow.uniform(depth, width, length(row, "thickness"))
            : new RectangularHollow(
                depth, width, length(row, "webThickness"), length(row, "flangeThickness"));
    double outer = radius(row, "outerRadius");
    double inner = radius(row, "innerRadius");
    return outer == 0 && inner == 0
        ? sharp(shape)
        : new CatalogueSection.ByOutline(StandardOutlines.rectangularHollow(shape, outer, inner));
  }
}
