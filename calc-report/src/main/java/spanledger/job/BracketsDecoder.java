package spanledger.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.Bracket;
import spanledger.joint.BracketJoint;
import spanledger.joint.BracketPlace;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.JointType;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes joints of several brackets, each described once elsewhere and placed here. */
final class BracketsDecoder {

  private static final Map<String, JointAxis> MIRRORS =
      Map.of("u", JointAxis.U, "v", JointAxis.V, "w", JointAxis.W);
  private static final Map<String, Integer> TURNS = Map.of("90 deg", 1, "180 deg", 2, "270 deg", 3);

  private final Reading reading;
  private final Values values;
  private final Names<JointType> described;
  private final Set<String> shared;

  /**
   * @param described what is described by its own faces
   * @param shared names of joints of several brackets
   */
  BracketsDecoder(Reading reading, Names<JointType> described, Set<String> shared) {
    this.reading = reading;
    this.values = new Values(reading);
    this.described = described;
    this.shared = Set.copyOf(shared);
  }

  Optional<JointType> decode(String name, Located given) {
    return reading.fields("bracketsJoint", given).flatMap(fields -> joint(name, fields));
  }

  private Optional<JointType> joint(String name, Fields fields) {
    fields.require("kind");
    List<Bracket> brackets = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Map<Standing, String> standing = new HashMap<>();
    boolean sound = true;
    for (Located one : fields.requireList("brackets")) {
      Optional<Bracket> bracket =
          reading.fields("placedBracket", one).flatMap(own -> bracket(own, names, standing));
      bracket.ifPresent(brackets::add);
      sound &= bracket.isPresent();
    }
    Optional<Source> source =
        fields.requireText("source").map(LocatedText::text).map(Source::declared);
    return sound && !brackets.isEmpty() && source.isPresent()
        ? Optional.of(new BracketJoint(name, brackets, source.get()))
        : Optional.empty();
  }

  private record Standing(String bracket, BracketPlace place) {}

  private Optional<Bracket> bracket(
      Fields fields, Set<String> names, Map<Standing, String> standing) {
    Optional<LocatedText> name = fields.requireText("name");
    Optional<Located> named = fields.require("bracket");
    Optional<BracketJoint> joint = named.flatMap(this::described);
    Optional<BracketPlace> place = place(fields);
    if (name.isPresent() && !names.add(name.get().text())) {
      reading.error(
          name.get(),
          Quoted.text(name.get().text()) + " a second time in this joint",
          "each bracket with a name of its own",
          "choose another name");
      return Optional.empty();
    }
    if (name.isEmpty() || joint.isEmpty() || place.isEmpty()) {
      return Optional.empty();
    }
    String other =
        standing.putIfAbsent(new Standing(joint.get().name(), place.get()), name.get().text());
    if (other != null) {
      reading.error(
          fields.object(),
          "a bracket that stands where " + Quoted.text(other) + " stands",
          "each bracket in a place of its own",
          "add \"mirror\", \"turn\" or \"at\", or remove one of the two");
      return Optional.empty();
    }
    String prefix = name.get().text() + ", ";
    List<JointFace> faces =
        joint.get().faces().stream()
            .map(face -> place.get().placed(face, prefix + face.name()))
            .toList();
    return Optional.of(new Bracket(name.get().text(), faces, joint.get().source()));
  }

  private Optional<BracketJoint> described(Located named) {
    boolean several = named instanceof LocatedText text && shared.contains(text.text());
    Optional<JointType> type = several ? Optional.empty() : described.resolve(named);
    if (several || (type.isPresent() && !(type.get() instanceof BracketJoint))) {
      reading.error(
          named,
          several ? "several brackets in place of one" : "a foot in place of a bracket",
          "a joint of kind \"bracket\"",
          "name the bracket that is described by its faces");
      return Optional.empty();
    }
    return type.map(BracketJoint.class::cast);
  }

  private Optional<BracketPlace> place(Fields fields) {
    Optional<Located> mirrorGiven = fields.find("mirror");
    Optional<JointAxis> mirror = mirrorGiven.flatMap(word -> values.word(word, MIRRORS));
    Optional<Located> turnGiven = fields.find("turn");
    Optional<Integer> turn = turnGiven.map(word -> values.word(word, TURNS)).orElse(Optional.of(0));
    Optional<Vector> at =
        fields
            .find("at")
            .map(v -> values.vector(v, Dimension.LENGTH))
            .orElse(Optional.of(Vector.ZERO));
    return mirrorGiven.isPresent() != mirror.isPresent() || turn.isEmpty() || at.isEmpty()
        ? Optional.empty()
        : Optional.of(new BracketPlace(mirror, turn.get(), at.get()));
  }
}
