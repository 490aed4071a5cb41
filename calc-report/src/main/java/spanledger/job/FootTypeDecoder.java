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
import spanledger.joint.DeclaredFoot;
import spanledger.joint.FaceFriction;
import spanledger.joint.FacePlace;
import spanledger.joint.FootMetal;
import spanledger.joint.JointType;
import spanledger.joint.PlateBending;
import spanledger.joint.Spindle;
import spanledger.joint.Tightening;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes the kinds of feet. */
final class FootTypeDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;
  private final FaceBoltDecoder bolts;
  private final JointFaceDecoder faces;

  FootTypeDecoder(
      Reading reading, JointParts parts, FaceBoltDecoder bolts, JointFaceDecoder faces) {
    this.reading = reading;
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
    Optional<Located> plateGiven = fields.find("plate");
    Optional<PlateBending> plate =
        plateGiven.flatMap(v -> reading.fields("footPlate", v)).flatMap(this::plate);
    Optional<Located> spindleGiven = fields.find("spindle");
    Optional<Spindle> spindle =
        spindleGiven.flatMap(v -> reading.fields("footSpindle", v)).flatMap(this::spindle);
    if (plate.isPresent() && lengthX.isPresent() && lengthY.isPresent() && offset.isPresent()) {
      if (isOff(offset.get().x(), lengthX.get()) || isOff(offset.get().y(), lengthY.get())) {
        reading.error(
            offsetGiven.orElseThrow(),
            "a plate that does not lie under its node",
            "an offset of less than half of its sides, so that what stands on it does so",
            "correct the offset or the sizes");
        return Optional.empty();
      }
    }
    if (lengthX.isPresent()
        && lengthY.isPresent()
        && !fits(lengthX.get(), lengthY.get(), anchorsGiven, anchors, plateGiven, plate)) {
      return Optional.empty();
    }
    Optional<Source> source = source(fields);
    if (lengthX.isEmpty()
        || lengthY.isEmpty()
        || pressure.isEmpty()
        || frictionGiven.isPresent() != friction.isPresent()
        || anchorsGiven.isPresent() == anchors.isEmpty()
        || offsetGiven.isPresent() != offset.isPresent()
        || plateGiven.isPresent() != plate.isPresent()
        || spindleGiven.isPresent() != spindle.isPresent()
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
            plate,
            spindle,
            source.get()));
  }

  /** Whether anchors go through the plate, and what stands on it is no wider; reports it. */
  private boolean fits(
      double lengthX,
      double lengthY,
      Optional<Located> anchorsGiven,
      List<FacePlace> anchors,
      Optional<Located> plateGiven,
      Optional<PlateBending> plate) {
    boolean fits = true;
    if (anchors.stream().anyMatch(at -> isOff(at.a(), lengthX) || isOff(at.b(), lengthY))) {
      reading.error(
          anchorsGiven.orElseThrow(),
          "an anchor that does not go through the plate",
          "places from the middle of the plate, within half of its sides",
          "correct the places of the anchors, or the sizes of the plate");
      fits = false;
    }
    if (plate.filter(own -> own.stemX() > lengthX || own.stemY() > lengthY).isPresent()) {
      reading.error(
          plateGiven.orElseThrow(),
          "a \"stem\" that is wider than the plate on which it stands",
          "lengths along the sides of the plate, no longer than these",
          "correct \"stem\", or the sizes of the plate");
      fits = false;
    }
    return fits;
  }

  private static boolean isOff(double offset, double length) {
    return !(Math.abs(offset) < length / 2);
  }

  private Optional<PlateBending> plate(Fields fields) {
    Optional<Double> thickness = positive(fields, "thickness", Dimension.LENGTH);
    Optional<FootMetal> metal = metal(fields, thickness);
    List<Located> sides = fields.requireList("stem");
    if (sides.size() != 2) {
      return Optional.empty();
    }
    Optional<Double> stemX = values.positive(sides.get(0), Dimension.LENGTH);
    Optional<Double> stemY = values.positive(sides.get(1), Dimension.LENGTH);
    return thickness.isEmpty() || metal.isEmpty() || stemX.isEmpty() || stemY.isEmpty()
        ? Optional.empty()
        : Optional.of(new PlateBending(thickness.get(), metal.get(), stemX.get(), stemY.get()));
  }

  private Optional<Spindle> spindle(Fields fields) {
    Optional<Double> root = positive(fields, "rootDiameter", Dimension.LENGTH);
    Optional<Double> extension = positive(fields, "extension", Dimension.LENGTH);
    Optional<Double> eccentricity =
        fields.require("eccentricity").flatMap(v -> values.notNegative(v, Dimension.LENGTH));
    Optional<FootMetal> metal = metal(fields, root);
    Optional<Source> source = source(fields);
    return root.isEmpty()
            || extension.isEmpty()
            || eccentricity.isEmpty()
            || metal.isEmpty()
            || source.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Spindle(
                root.get(), extension.get(), eccentricity.get(), metal.get(), source.get()));
  }

  /** An alloy of the job, or steel of a yield strength. */
  private Optional<FootMetal> metal(Fields fields, Optional<Double> thickness) {
    Optional<Located> material = fields.find("material");
    Optional<Located> steel = fields.find("steelYield");
    if (material.isPresent() == steel.isPresent()) {
      reading.error(
          fields.object(),
          material.isPresent()
              ? "both \"material\" and \"steelYield\""
              : "neither \"material\" nor \"steelYield\"",
          "one of the two",
          material.isPresent() ? "keep one of them" : "say what it is made of");
      return Optional.empty();
    }
    if (steel.isPresent()) {
      return values.positive(steel.get(), Dimension.STRESS).map(FootMetal::steel);
    }
    return parts.alloy(material.get(), thickness).map(FootMetal::of);
  }

  /** A foot with declared capacities; empty if it has faults. */
  Optional<JointType> declared(String name, Fields fields) {
    fields.require("kind");
    Optional<Double> compression = positive(fields, "compression", Dimension.FORCE);
    Optional<Located> tensionGiven = fields.find("tension");
    Optional<Double> tension = tensionGiven.flatMap(v -> values.notNegative(v, Dimension.FORCE));
    Optional<Located> shearGiven = fields.find("shear");
    Optional<Double> shear = shearGiven.flatMap(v -> values.positive(v, Dimension.FORCE));
    Optional<Located> frictionGiven = fields.find("friction");
    Optional<FaceFriction> friction = frictionGiven.flatMap(faces::friction);
    Optional<Source> source = source(fields);
    if (compression.isEmpty()
        || tensionGiven.isPresent() != tension.isPresent()
        || shearGiven.isPresent() != shear.isPresent()
        || frictionGiven.isPresent() != friction.isPresent()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DeclaredFoot(
            name, compression.get(), tension.orElse(0.0), shear, friction, source.get()));
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
