package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedText;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.ClampFoot;
import spanledger.joint.FaceFriction;
import spanledger.joint.FacePlace;
import spanledger.joint.JointType;
import spanledger.joint.Tightening;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes the kinds of feet. */
final class FootTypeDecoder {

  private final Values values;
  private final JointParts parts;
  private final FaceBoltDecoder bolts;
  private final JointFaceDecoder faces;

  FootTypeDecoder(
      Reading reading, JointParts parts, FaceBoltDecoder bolts, JointFaceDecoder faces) {
    this.values = new Values(reading);
    this.parts = parts;
    this.bolts = bolts;
    this.faces = faces;
  }

  /** A plate on the ground; empty if it has faults. */
  Optional<JointType> basePlate(String name, Fields fields) {
    fields.require("kind");
    Optional<Double> lengthX = positive(fields, "lengthX", Dimension.LENGTH);
    Optional<Double> lengthY = positive(fields, "lengthY", Dimension.LENGTH);
    Optional<Double> pressure = positive(fields, "allowablePressure", Dimension.STRESS);
    Optional<Located> frictionGiven = fields.find("friction");
    Optional<FaceFriction> friction = frictionGiven.flatMap(faces::friction);
    Optional<Located> anchorsGiven = fields.find("anchors");
    List<FacePlace> anchors =
        anchorsGiven
            .filter(LocatedArray.class::isInstance)
            .map(list -> parts.places(((LocatedArray) list).elements()))
            .orElse(List.of());
    Optional<Located> offsetGiven = fields.find("offset");
    Optional<Vector> offset = offsetGiven.flatMap(at -> values.vector(at, Dimension.LENGTH));
    Optional<Source> source = source(fields);
    if (lengthX.isEmpty()
        || lengthY.isEmpty()
        || pressure.isEmpty()
        || frictionGiven.isPresent() != friction.isPresent()
        || anchorsGiven.isPresent() == anchors.isEmpty()
        || offsetGiven.isPresent() != offset.isPresent()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BasePlateFoot(
            name,
            lengthX.get(),
            lengthY.get(),
            pressure.get(),
            friction,
            anchors,
            offset.orElse(Vector.ZERO),
            source.get()));
  }

  /** A clamp on a post; empty if it has faults. */
  Optional<JointType> clamp(String name, Fields fields) {
    fields.require("kind");
    Optional<BoltSize> size = fields.require("size").flatMap(parts::size);
    Optional<BoltGrade> grade = fields.require("grade").flatMap(g -> parts.grade(g, size));
    Optional<Integer> count = fields.require("bolts").flatMap(bolts::count);
    Optional<Integer> surfaces = fields.require("surfaces").flatMap(bolts::count);
    Optional<Tightening> tightening = fields.require("tightening").flatMap(bolts::tightening);
    Optional<FaceFriction> friction = fields.require("friction").flatMap(faces::friction);
    Optional<Source> source = source(fields);
    if (size.isEmpty()
        || grade.isEmpty()
        || count.isEmpty()
        || surfaces.isEmpty()
        || tightening.isEmpty()
        || friction.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ClampFoot(
            name,
            size.get(),
            grade.get(),
            count.get(),
            surfaces.get(),
            tightening.get(),
            friction.get(),
            source.get()));
  }

  private Optional<Double> positive(Fields fields, String key, Dimension dimension) {
    return fields.require(key).flatMap(v -> values.positive(v, dimension));
  }

  private static Optional<Source> source(Fields fields) {
    return fields.requireText("source").map(LocatedText::text).map(Source::declared);
  }
}
