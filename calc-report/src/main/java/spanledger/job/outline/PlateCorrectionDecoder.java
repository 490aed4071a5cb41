package spanledger.job.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateCorrection;
import spanledger.section.plate.PlateCorrections;
import spanledger.section.plate.PlateKind;
import spanledger.section.plate.Plates;

/** Decodes what the author says about the recognised plates. */
final class PlateCorrectionDecoder {

  private static final Map<String, PlateKind> KINDS =
      Map.of(
          "internal", PlateKind.INTERNAL,
          "outstand", PlateKind.OUTSTAND,
          "stiffened-outstand", PlateKind.STIFFENED_OUTSTAND,
          "round", PlateKind.ROUND,
          "free", PlateKind.FREE);

  private final Reading reading;
  private final Lengths lengths;
  private final Values values;

  PlateCorrectionDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
    this.values = new Values(reading);
  }

  /**
   * The corrections; reports those that do not fit the plates.
   *
   * @param recognised the plates as recognised on the outline after its move; empty if the outline
   *     has faults
   * @param move from the places in the file to those of the plates
   */
  PlateCorrections decode(Located value, Optional<Plates> recognised, Similarity move) {
    Optional<Fields> read = reading.fields("plateEdits", value);
    if (read.isEmpty()) {
      return PlateCorrections.NONE;
    }
    Fields fields = read.get();
    String by = fields.requireText("by").map(LocatedText::text).orElse("");
    List<PlateCorrection> edits = new ArrayList<>();
    each(fields, "confirm", e -> near(e, PlateCorrection.Confirm::new), recognised, move, edits);
    each(fields, "drop", e -> near(e, PlateCorrection.Drop::new), recognised, move, edits);
    each(fields, "change", this::change, recognised, move, edits);
    each(fields, "add", this::added, recognised, move, edits);
    boolean settled =
        fields
            .find("settleDoubts")
            .map(v -> v instanceof LocatedTruth truth && truth.value())
            .orElse(false);
    return new PlateCorrections(by, edits, settled);
  }

  private void each(
      Fields fields,
      String key,
      Function<Located.Entry, Optional<PlateCorrection>> decoder,
      Optional<Plates> recognised,
      Similarity move,
      List<PlateCorrection> into) {
    for (Located.Entry entry : fields.find(key).map(reading::named).orElse(List.of())) {
      Optional<PlateCorrection> edit = decoder.apply(entry).map(read -> read.moved(move));
      if (edit.isEmpty()) {
        continue;
      }
      Optional<String> fault = recognised.flatMap(p -> PlateCorrections.fault(edit.get(), p));
      if (fault.isPresent()) {
        reading.error(
            entry,
            fault.get(),
            key.equals("add") ? "a name of its own" : "a recognised plate and a point on it",
            "correct the name or the point; \"spanledger section\" draws the plates");
      } else {
        into.add(edit.get());
      }
    }
  }

  private interface ByPoint {
    PlateCorrection of(String plate, Point near);
  }

  private Optional<PlateCorrection> near(Located.Entry entry, ByPoint edit) {
    return lengths.place(entry.value()).map(near -> edit.of(entry.key(), near));
  }

  private Optional<PlateCorrection> change(Located.Entry entry) {
    Optional<Fields> fields = reading.fields("plateChange", entry.value());
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    Optional<Point> near = fields.get().require("near").flatMap(lengths::place);
    Optional<PlateKind> kind = fields.get().find("kind").flatMap(k -> values.word(k, KINDS));
    OptionalDouble width = size(fields.get(), "width");
    OptionalDouble thickness = size(fields.get(), "thickness");
    return near.map(at -> new PlateCorrection.Change(entry.key(), at, kind, width, thickness));
  }

  private Optional<PlateCorrection> added(Located.Entry entry) {
    Optional<Fields> read = reading.fields("addedPlate", entry.value());
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = read.get();
    Optional<PlateKind> kind = fields.require("kind").flatMap(k -> values.word(k, KINDS));
    Optional<Point> from = fields.require("from").flatMap(lengths::place);
    Optional<Point> to = fields.require("to").flatMap(lengths::place);
    Optional<Double> thickness = fields.require("thickness").flatMap(lengths::positive);
    OptionalDouble width = size(fields, "width");
    if (kind.isEmpty() || from.isEmpty() || to.isEmpty() || thickness.isEmpty()) {
      return Optional.empty();
    }
    double length = width.orElse(from.get().distance(to.get()));
    if (!(length > 0)) {
      reading.error(entry, "a plate without width", "two different ends", "correct one of them");
      return Optional.empty();
    }
    return Optional.of(
        new PlateCorrection.Add(
            new Plate(
                entry.key(),
                kind.get(),
                from.get(),
                to.get(),
                0,
                length,
                thickness.get(),
                Certainty.sure())));
  }

  private OptionalDouble size(Fields fields, String key) {
    return fields
        .find(key)
        .flatMap(lengths::positive)
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }
}
