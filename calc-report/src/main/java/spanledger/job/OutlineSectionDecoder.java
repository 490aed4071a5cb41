package spanledger.job;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import spanledger.job.dxf.DxfOptions;
import spanledger.job.outline.NestedProblems;
import spanledger.job.outline.OutlineReader;
import spanledger.job.outline.ReadOutline;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.Extrusion;
import spanledger.section.OutlineShape;
import spanledger.section.Shape;
import spanledger.section.mesh.MeshingException;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.Plates;

/** Decodes a section that is given by its outline: in a file of its own, or within the job. */
final class OutlineSectionDecoder {

  private static final Map<String, Double> UNITS = OutlineReader.UNITS;

  private final Reading reading;
  private final Values values;
  private final SolvedOutlines solved;
  private final OutlineReader reader = new OutlineReader();

  OutlineSectionDecoder(Reading reading, SolvedOutlines solved) {
    this.reading = reading;
    this.solved = solved;
    this.values = new Values(reading);
  }

  /** The shape, unless the outline has faults. */
  Optional<Shape> decode(Located value) {
    Optional<Fields> read = reading.fields("outlineSection", value);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = read.get();
    Optional<Located> outline = fields.require("outline");
    Optional<DxfOptions> options = options(fields);
    if (outline.isEmpty() || options.isEmpty()) {
      return Optional.empty();
    }
    if (outline.get() instanceof LocatedText file) {
      return fromFile(file, options.get(), fields).flatMap(shape -> shape(shape, file));
    }
    refuseDrawingKeys(fields);
    if (outline.get() instanceof Located.LocatedObject inline) {
      return reader
          .decode(inline, reading.directory(), reading.log())
          .map(e -> new Drawn(e, Source.declared("job file: " + e.source())))
          .flatMap(drawn -> shape(drawn, inline));
    }
    reading.gap(outline.get().pointer());
    return Optional.empty();
  }

  /** A section as drawn, and where it is drawn. */
  private record Drawn(Extrusion extrusion, Source source) {}

  private Optional<DxfOptions> options(Fields fields) {
    Set<String> layers = new TreeSet<>();
    for (Located layer : fields.findList("layers")) {
      if (layer instanceof LocatedText text) {
        layers.add(text.text());
      } else {
        reading.gap(layer.pointer());
      }
    }
    OptionalDouble unit =
        fields
            .find("unit")
            .flatMap(u -> values.word(u, UNITS))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    Optional<Double> join =
        fields
            .find("joinWithin")
            .map(j -> values.positive(j, Dimension.LENGTH))
            .orElse(Optional.of(DxfOptions.USUAL_JOIN));
    return join.map(within -> new DxfOptions(unit, layers, within));
  }

  private void refuseDrawingKeys(Fields fields) {
    for (String key : new String[] {"unit", "layers", "joinWithin"}) {
      fields
          .find(key)
          .ifPresent(
              value ->
                  reading.error(
                      value,
                      "\"" + key + "\" beside an outline that is no drawing",
                      "\"" + key + "\" beside a DXF drawing only",
                      "remove it"));
    }
  }

  private Optional<Drawn> fromFile(LocatedText file, DxfOptions options, Fields fields) {
    Path path;
    try {
      path = reading.directory().resolve(file.text());
    } catch (InvalidPathException e) {
      reading.error(
          file, Quoted.text(file.text()), "the path of an outline file", "correct the path");
      return Optional.empty();
    }
    if (!OutlineReader.isDrawing(path)) {
      refuseDrawingKeys(fields);
    }
    ReadOutline read = reader.read(path, options);
    NestedProblems.report(read.problems(), file.text(), file, reading);
    return read instanceof ReadOutline.Accepted accepted
        ? Optional.of(
            new Drawn(
                accepted.extrusion(),
                Source.declared(
                    file.text()
                        + " (SHA-256 "
                        + accepted.sha256()
                        + "): "
                        + accepted.extrusion().source())))
        : Optional.empty();
  }

  /** Local buckling stays unchecked while a plate is in doubt. */
  private void warnUnsure(Plates plates, Located value) {
    if (plates.isSure()) {
      return;
    }
    List<String> doubts = new ArrayList<>();
    for (Plate plate : plates.plates()) {
      if (plate.certainty() instanceof Certainty.Unsure unsure) {
        doubts.add(plate.name() + " at " + plate.midpoint() + ": " + unsure.because());
      }
    }
    plates.doubts().forEach(doubt -> doubts.add("at " + doubt.where() + ": " + doubt.because()));
    reading.warning(
        value,
        "plates that were not recognised beyond doubt: " + String.join("; ", doubts),
        "plates that are sure, or else local buckling is not checked",
        "confirm, change, add or drop them by \"plates\" in the outline file");
  }

  private Optional<Shape> shape(Drawn drawn, Located value) {
    Extrusion extrusion = drawn.extrusion();
    if (!extrusion.isOnePiece()) {
      reading.error(
          value,
          "a section of " + extrusion.parts().size() + " parts",
          "a section of one piece: how parts twist depends on how they are joined",
          "join them in the drawing, or give a row of properties");
      return Optional.empty();
    }
    try {
      OutlineShape shape = extrusion.shape(solved.of(extrusion.outline()));
      warnUnsure(extrusion.plates(), value);
      return Optional.of(shape.from(drawn.source()));
    } catch (MeshingException e) {
      reading.error(
          value,
          "an outline that cannot be meshed: " + e.getMessage(),
          "details not too fine for the section",
          "leave out what is too fine to matter");
      return Optional.empty();
    }
  }
}
