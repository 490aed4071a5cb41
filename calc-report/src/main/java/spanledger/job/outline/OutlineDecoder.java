package spanledger.job.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.section.Extrusion;
import spanledger.section.ExtrusionPart;
import spanledger.section.feature.Feature;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Outline;
import spanledger.section.outline.OutlineFault;
import spanledger.section.outline.PartOverlaps;
import spanledger.section.outline.Similarity;
import spanledger.section.plate.PlateCorrections;
import spanledger.section.plate.Plates;

/** Decodes a whole outline file, or an outline within a job file. */
final class OutlineDecoder {

  /** Units of drawings, mm; an inch is 25.4 mm by definition (NIST SP 811, appendix B). */
  static final Map<String, Double> UNITS =
      Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4, "ft", 304.8);

  private static final Similarity UNMOVED = Similarity.shift(0, 0);

  private final Reading reading;

  OutlineDecoder(Reading reading) {
    this.reading = reading;
  }

  /**
   * A piece in the file.
   *
   * @param outline empty if it has faults
   */
  private record Piece(String name, Located value, Optional<Outline> outline) {}

  /** The section; empty if it has faults, which are reported. */
  Optional<Extrusion> decode(Located root) {
    return reading.fields("outline", root).flatMap(this::extrusion);
  }

  private Optional<Extrusion> extrusion(Fields fields) {
    fields.find("$schema");
    fields.require("formatVersion");
    fields.findList("notes");
    Optional<String> name = fields.requireText("name").map(LocatedText::text);
    Optional<String> source = fields.requireText("source").map(LocatedText::text);
    OptionalDouble unit =
        fields
            .find("unit")
            .flatMap(u -> new Values(reading).word(u, UNITS))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    if (unit.isEmpty() && fields.has("unit")) {
      // Every number would be reported again.
      unit = OptionalDouble.of(1);
    }
    Lengths lengths = new Lengths(reading, unit);
    List<Piece> pieces = pieces(fields, lengths);
    Optional<Similarity> move =
        fields
            .find("placement")
            .map(new PlacementDecoder(reading, lengths)::decode)
            .orElse(Optional.of(UNMOVED));
    List<Outline> sound = pieces.stream().flatMap(piece -> piece.outline().stream()).toList();
    boolean complete = !pieces.isEmpty() && sound.size() == pieces.size();
    List<Feature> features =
        fields
            .find("features")
            .map(f -> new FeatureDecoder(reading, lengths).decode(f, complete ? sound : List.of()))
            .orElse(List.of());
    List<Outline> placed = placed(fields, sound, move.orElse(UNMOVED));
    if (placed.size() < sound.size()) {
      return Optional.empty();
    }
    Optional<Plates> recognised =
        complete && sound.size() == 1 && move.isPresent()
            ? Optional.of(Plates.of(placed.get(0)))
            : Optional.empty();
    PlateCorrections corrections =
        fields
            .find("plates")
            .map(
                p ->
                    new PlateCorrectionDecoder(reading, lengths)
                        .decode(p, recognised, move.orElse(UNMOVED)))
            .orElse(PlateCorrections.NONE);
    if (recognised.isEmpty() && sound.size() > 1) {
      fields.find("plates").ifPresent(this::refusePlates);
    }
    Optional<String> together = together(fields, pieces);
    if (!complete || name.isEmpty() || source.isEmpty() || move.isEmpty() || overlap(pieces)) {
      return Optional.empty();
    }
    List<ExtrusionPart> parts = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      parts.add(new ExtrusionPart(pieces.get(i).name(), placed.get(i)));
    }
    List<Feature> moved = features.stream().map(f -> f.moved(move.get())).toList();
    if (recognised.isEmpty()) {
      return Optional.of(Extrusion.ofParts(name.get(), source.get(), parts, together, moved));
    }
    return Optional.of(
        new Extrusion(
            name.get(),
            source.get(),
            parts,
            Optional.empty(),
            moved,
            corrections.applied(recognised.get()),
            corrections));
  }

  private List<Piece> pieces(Fields fields, Lengths lengths) {
    PartDecoder decoder = new PartDecoder(reading, lengths);
    List<Piece> pieces = new ArrayList<>();
    Optional<Located> parts = fields.find("parts");
    Optional<Located> drawing = fields.find("drawing");
    if (drawing.isPresent()) {
      List<Outline> drawn = new DrawingDecoder(reading, lengths).decode(drawing.get());
      for (Outline outline : drawn) {
        String name = drawn.size() == 1 ? "" : String.valueOf(pieces.size() + 1);
        pieces.add(new Piece(name, drawing.get(), Optional.of(outline)));
      }
      return pieces;
    }
    if (parts.isEmpty()) {
      return List.of(new Piece("", fields.object(), decoder.decode(fields)));
    }
    for (Located.Entry entry : reading.named(parts.get())) {
      Optional<Outline> outline =
          reading
              .fields("part", entry.value())
              .flatMap(
                  part -> {
                    Optional<Similarity> move =
                        part.find("placement")
                            .map(new PlacementDecoder(reading, lengths)::decode)
                            .orElse(Optional.of(UNMOVED));
                    Optional<Outline> drawn = decoder.decode(part);
                    return move.flatMap(m -> drawn.map(d -> d.moved(m)));
                  });
      pieces.add(new Piece(entry.key(), entry.value(), outline));
    }
    return pieces;
  }

  /** Outlines where they are placed; fewer if a wall so thin that rounding counts does not last. */
  private List<Outline> placed(Fields fields, List<Outline> sound, Similarity move) {
    List<Outline> placed = new ArrayList<>();
    for (Outline outline : sound) {
      try {
        placed.add(outline.moved(move));
      } catch (InvalidOutlineException e) {
        Faults.report(reading, fields.find("placement").orElse(fields.object()), e.faults().get(0));
      }
    }
    return placed;
  }

  /** Who says that the pieces act together. */
  private Optional<String> together(Fields fields, List<Piece> pieces) {
    Optional<Located> composite = fields.find("composite");
    if (composite.isEmpty()) {
      if (pieces.size() > 1) {
        reading.error(
            fields.find("parts").or(() -> fields.find("drawing")).orElse(fields.object()),
            pieces.size() + " parts, and nothing about whether they act together",
            "\"composite\" with \"together\" true or false, and \"by\": who says so",
            "add it; parts act together only if they cannot slip on each other");
      }
      return Optional.empty();
    }
    Optional<Fields> read = reading.fields("composite", composite.get());
    if (read.isEmpty()) {
      return Optional.empty();
    }
    boolean acting =
        read.get()
            .require("together")
            .map(v -> v instanceof LocatedTruth t && t.value())
            .orElse(false);
    Optional<String> by = read.get().requireText("by").map(LocatedText::text);
    return acting ? by : Optional.empty();
  }

  private void refusePlates(Located plates) {
    if (reading.isFree(plates)) {
      reading.error(
          plates,
          "corrections of plates for a section of several parts",
          "corrections for a section of one part",
          "remove them; plates of several parts are not recognised");
    }
  }

  private boolean overlap(List<Piece> pieces) {
    List<OutlineFault> faults =
        PartOverlaps.of(pieces.stream().map(p -> p.outline().orElseThrow()).toList());
    for (OutlineFault fault : faults) {
      Faults.report(
          reading, pieces.get(fault.ring()).value(), fault, "parts that touch each other at most");
    }
    return !faults.isEmpty();
  }
}
