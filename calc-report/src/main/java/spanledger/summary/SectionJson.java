package spanledger.summary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spanledger.extrusion.ExtrusionReport;
import spanledger.extrusion.PropertyList;
import spanledger.section.SectionStudy;
import spanledger.section.feature.Feature;
import spanledger.section.outline.Point;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.warping.FieldReport;

/**
 * The properties of an extrusion for other programs, documented in docs/section-file.md. Core units
 * throughout, angles in degrees where the unit says so.
 */
public final class SectionJson {

  /** The version of the form of the file; raised when a reader would have to change. */
  public static final int FORMAT_VERSION = 1;

  private SectionJson() {}

  /** The properties as JSON text, ending in a line break. */
  public static String of(ExtrusionReport report) {
    SectionStudy study = report.study();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "spanledger-section");
    root.put("formatVersion", FORMAT_VERSION);
    root.put("name", report.name());
    root.put("source", report.extrusion().source());
    if (!report.sha256().isEmpty()) {
      root.put("inputSha256", report.sha256());
    }
    ArrayNode cautions = root.putArray("cautions");
    Cautions.LINES.forEach(cautions::add);
    properties(root.putArray("exact"), PropertyList.exact(study.plane()));
    report.massPerMetre().ifPresent(mass -> root.put("massPerMetre", mass));
    study
        .field()
        .ifPresent(
            field -> {
              properties(
                  root.putArray("finiteElements"),
                  PropertyList.byElements(field, study.plane().centroid()));
              mesh(root.putObject("mesh"), field.report());
            });
    root.put("platesSure", study.plates().isSure() && !study.plates().plates().isEmpty());
    plates(root, study);
    ArrayNode features = root.putArray("features");
    study.features().forEach(feature -> add(features.addObject(), feature));
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }

  private static void properties(ArrayNode array, List<PropertyList.Property> properties) {
    for (PropertyList.Property property : properties) {
      ObjectNode node = array.addObject();
      node.put("symbol", property.symbol());
      node.put("words", property.words());
      if (Double.isFinite(property.value())) {
        node.put("value", property.value());
      }
      node.put("unit", property.unit());
      property
          .error()
          .filter(error -> Double.isFinite(error.size()))
          .ifPresent(
              error -> node.put(error.isBound() ? "errorBound" : "lastChange", error.size()));
    }
  }

  private static void mesh(ObjectNode node, FieldReport report) {
    node.put("triangles", report.triangles());
    node.put("nodes", report.nodes());
    node.put("refinements", report.refinements());
    node.put("torsionError", report.torsionError());
    node.put("shapeError", report.shapeError());
    node.put("target", report.target());
    node.put("targetMet", report.targetMet());
    ArrayNode sharp = node.putArray("sharpCorners");
    report.sharpCorners().forEach(corner -> add(sharp.addArray(), corner));
  }

  private static void plates(ObjectNode root, SectionStudy study) {
    ArrayNode plates = root.putArray("plates");
    for (Plate plate : study.plates().plates()) {
      ObjectNode node = plates.addObject();
      node.put("name", plate.name());
      node.put("kind", plate.kind().words());
      add(node.putArray("start"), plate.start());
      add(node.putArray("end"), plate.end());
      node.put("bulge", plate.bulge());
      node.put("width", plate.width());
      node.put("thickness", plate.thickness());
      node.put("slenderness", plate.slenderness());
      if (plate.certainty() instanceof Certainty.Unsure unsure) {
        node.put("unsureBecause", unsure.because());
      }
      String edited = study.edits().words(plate);
      if (!edited.isEmpty()) {
        node.put("edited", edited);
      }
    }
    ArrayNode doubts = root.putArray("doubts");
    study
        .plates()
        .doubts()
        .forEach(
            doubt -> {
              ObjectNode node = doubts.addObject();
              add(node.putArray("at"), doubt.where());
              node.put("because", doubt.because());
            });
  }

  private static void add(ObjectNode node, Feature feature) {
    node.put("name", feature.name());
    node.put("kind", feature.kind());
    ObjectNode sizes = node.putObject("sizes");
    feature.sizes().forEach(sizes::put);
  }

  private static void add(ArrayNode array, Point point) {
    array.add(point.y()).add(point.z());
  }
}
