package spanledger.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointFace;
import spanledger.joint.JointType;
import spanledger.provenance.Source;
import spanledger.section.Section;

/** Decodes the kinds of joints and feet. */
final class JointDetailDecoder {

  private final Reading reading;
  private final Values values;
  private final JointFaceDecoder faces;
  private final FootTypeDecoder feet;

  JointDetailDecoder(
      Reading reading, Names<Section> sections, Names<MaterialChoice> materials, Tables tables) {
    this.reading = reading;
    this.values = new Values(reading);
    JointParts parts =
        new JointParts(
            reading, materials, new AlloyChooser(reading, tables.alloys()), tables.bolts());
    FaceBoltDecoder bolts = new FaceBoltDecoder(reading, parts);
    this.faces =
        new JointFaceDecoder(reading, parts, bolts, new SlotLipDecoder(reading, parts, sections));
    this.feet = new FootTypeDecoder(reading, parts, bolts, faces);
  }

  Names<JointType> decode(Located given) {
    Names<JointType> names = new Names<>(reading, "joint");
    List<Located.Entry> shared = new ArrayList<>();
    for (Located.Entry entry : reading.named(given)) {
      if (isShared(entry)) {
        shared.add(entry);
      } else {
        names.add(entry, type(entry));
      }
    }
    Set<String> sharedNames = new HashSet<>();
    shared.forEach(entry -> sharedNames.add(entry.key()));
    BracketsDecoder brackets = new BracketsDecoder(reading, names, sharedNames);
    for (Located.Entry entry : shared) {
      names.add(entry, brackets.decode(entry.key(), entry.value()));
    }
    return names;
  }

  /** Several brackets, which other entries describe. */
  private static boolean isShared(Located.Entry entry) {
    return entry.value() instanceof Located.LocatedObject object
        && object.find("kind").map(Located.Entry::value).orElse(null) instanceof LocatedText kind
        && kind.text().equals("brackets");
  }

  private Optional<JointType> type(Located.Entry entry) {
    Map<String, Function<Located, Optional<JointType>>> kinds =
        Map.of(
            "bracket",
            v -> reading.fields("bracketJoint", v).flatMap(f -> bracket(entry.key(), f)),
            "brackets", // decoded after all others, see above
            v -> Optional.empty(),
            "base-plate",
            v -> reading.fields("basePlateFoot", v).flatMap(f -> feet.basePlate(entry.key(), f)),
            "declared-foot",
            v -> reading.fields("declaredFoot", v).flatMap(f -> feet.declared(entry.key(), f)),
            "clamp-foot",
            v -> reading.fields("clampFoot", v).flatMap(f -> feet.clamp(entry.key(), f)));
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
        ? Optional.of(BracketJoint.ofOne(name, found, source.get()))
        : Optional.empty();
  }

  private static Optional<Source> source(Fields fields) {
    return fields.requireText("source").map(LocatedText::text).map(Source::declared);
  }
}
