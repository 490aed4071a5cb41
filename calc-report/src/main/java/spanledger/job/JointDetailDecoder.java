package spanledger.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.BracketJoint;
import spanledger.joint.ClampFoot;
import spanledger.joint.FaceFriction;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.JointType;
import spanledger.joint.Tightening;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.Section;

/** Decodes the kinds of joints and feet. */
final class JointDetailDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;
  private final FaceBoltDecoder bolts;
  private final JointFaceDecoder faces;

  JointDetailDecoder(
      Reading reading, Names<Section> sections, Names<MaterialChoice> materials, Tables tables) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts =
        new JointParts(
            reading, materials, new AlloyChooser(reading, tables.alloys()), tables.bolts());
    this.bolts = new FaceBoltDecoder(reading, parts);
    this.faces =
        new JointFaceDecoder(reading, parts, bolts, new SlotLipDecoder(reading, parts, sections));
  }

  Names<JointType> decode(Located given) {
    Names<JointType> names = new Names<>(reading, "joint");
    for (Located.Entry entry : reading.named(given)) {
      names.add(entry, type(entry));
    }
    return names;
  }

  private Optional<JointType> type(Located.Entry entry) {
    Map<String, Function<Located, Optional<JointType>>> kinds =
        Map.of(
            "bracket",
            v -> reading.fields("bracketJoint", v).flatMap(f -> bracket(entry.key(), f)),
            "base-plate",
            v -> reading.fields("basePlateFoot", v).flatMap(f -> basePlate(entry.key(), f)),
            "clamp-foot",
            v -> reading.fields("clampFoot", v).flatMap(f -> clamp(entry.key(), f)));
    Optional<Located> kind =
        entry.value() instanceof Located.LocatedObject object
            ? object.find("kind").map(Located.Entry::value)
            : Optional.empty();
    if (kind.isEmpty()) {
      reading.gap(entry.value().pointer());
      return Optional.empty();
    }
    return values.word(kind.get(), kinds).flatMap(decoder -> decoder.apply(entry.value()));
  }

  private Optional<JointType> bracket(String name, Fields fields) {
    fields.require("kind");
    List<JointFace> found = new ArrayList<>();
    Set<String> names = new HashSet<>();
    boolean sound = true;
    for (Located one : fields.requireList("faces")) {
      Optional<JointFace> face = faces.decode(one);
      face.ifPresent(found::add);
      sound &= face.isPresent();
      if (face.isPresent() && !names.add(face.get().name())) {
        reading.error(
            one,
            "face " + Quoted.text(face.get().name()) + " a second time in this joint",
            "each face with a name of its own",
            "choose another name");
        sound = false;
      }
    }
    Optional<Source> source = source(fields);
    return sound && !found.isEmpty() && source.isPresent()
        ? Optional.of(new BracketJoint(name, found, source.get()))
        : Optional.empty();
  }

  private Optional<JointType> basePlate(String name, Fields fields) {
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
    Optional<Source> source = source(fields);
    if (lengthX.isEmpty()
        || lengthY.isEmpty()
        || pressure.isEmpty()
        || frictionGiven.isPresent() != friction.isPresent()
        || anchorsGiven.isPresent() == anchors.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new BasePlateFoot(
            name, lengthX.get(), lengthY.get(), pressure.get(), friction, anchors, source.get()));
  }

  private Optional<JointType> clamp(String name, Fields fields) {
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
