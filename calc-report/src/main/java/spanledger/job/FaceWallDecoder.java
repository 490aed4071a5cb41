package spanledger.job;

import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.joint.FaceBolts;
import spanledger.joint.FaceNormal;
import spanledger.joint.FacePlace;
import spanledger.joint.FaceWall;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes the wall of a post or beam behind a joint face. */
final class FaceWallDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;

  FaceWallDecoder(Reading reading, JointParts parts) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
  }

  /**
   * The wall.
   *
   * @param group the bolts, which must pull between its webs, if they have no fault
   */
  Optional<FaceWall> decode(Located given, Optional<FaceNormal> normal, Optional<FaceBolts> group) {
    return reading
        .fields("faceWall", given)
        .flatMap(fields -> wall(fields, normal))
        .filter(wall -> group.isEmpty() || holds(given, wall, group.get()));
  }

  private Optional<FaceWall> wall(Fields fields, Optional<FaceNormal> normal) {
    Optional<Boolean> along = fields.require("along").flatMap(v -> parts.isFirst(normal, v));
    Optional<Double> width = size(fields, "width");
    Optional<Double> middle =
        fields
            .find("middle")
            .map(v -> values.quantity(v, Dimension.LENGTH))
            .orElse(Optional.of(0.0));
    Optional<Double> thickness = size(fields, "thickness");
    Optional<Alloy> alloy = fields.require("material").flatMap(m -> parts.alloy(m, thickness));
    Optional<Boolean> clamped = fields.find("webs").map(this::clamps).orElse(Optional.of(false));
    Optional<Double> toEnd =
        fields
            .find("toEnd")
            .map(v -> values.positive(v, Dimension.LENGTH))
            .orElse(Optional.of(Double.POSITIVE_INFINITY));
    Optional<LocatedText> source = fields.requireText("source");
    if (along.isEmpty()
        || width.isEmpty()
        || middle.isEmpty()
        || thickness.isEmpty()
        || alloy.isEmpty()
        || clamped.isEmpty()
        || toEnd.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new FaceWall(
            along.get(),
            width.get(),
            middle.get(),
            thickness.get(),
            clamped.get(),
            toEnd.get(),
            alloy.get(),
            Source.declared(source.get().text())));
  }

  /** Whether the webs clamp the wall; the schema reports any other word. */
  private Optional<Boolean> clamps(Located given) {
    if (given instanceof LocatedText text
        && (text.text().equals("clamp") || text.text().equals("support"))) {
      return Optional.of(text.text().equals("clamp"));
    }
    reading.gap(given.pointer());
    return Optional.empty();
  }

  private boolean holds(Located given, FaceWall wall, FaceBolts group) {
    for (FacePlace place : group.places()) {
      if (!(wall.toWeb(place.a(), place.b()) > group.size().diameter() / 2)) {
        reading.error(
            given,
            "a wall that does not lie behind every bolt",
            "every bolt between the webs of the wall",
            "correct \"width\" or \"middle\", or the places of the bolts");
        return false;
      }
    }
    return true;
  }

  private Optional<Double> size(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.positive(v, Dimension.LENGTH));
  }
}
