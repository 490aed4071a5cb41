package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.bolt.BoltTable;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.FaceNormal;
import spanledger.joint.FacePlace;
import spanledger.joint.JointAxis;
import spanledger.material.Alloy;
import spanledger.quantity.Dimension;
import spanledger.tables.NearMiss;

/** Decodes what the parts of joints have in common: places, axes, alloys, bolts of the table. */
final class JointParts {

  private static final Map<String, JointAxis> AXES =
      Map.of("u", JointAxis.U, "v", JointAxis.V, "w", JointAxis.W);

  private static final Map<String, FaceNormal> NORMALS =
      Map.of(
          "u", new FaceNormal(JointAxis.U, true),
          "-u", new FaceNormal(JointAxis.U, false),
          "v", new FaceNormal(JointAxis.V, true),
          "-v", new FaceNormal(JointAxis.V, false),
          "w", new FaceNormal(JointAxis.W, true),
          "-w", new FaceNormal(JointAxis.W, false));

  private final Reading reading;
  private final Values values;
  private final Names<MaterialChoice> materials;
  private final AlloyChooser alloys;
  private final BoltTable bolts;

  JointParts(
      Reading reading, Names<MaterialChoice> materials, AlloyChooser alloys, BoltTable bolts) {
    this.reading = reading;
    this.values = new Values(reading);
    this.materials = materials;
    this.alloys = alloys;
    this.bolts = bolts;
  }

  /** A place in a face. */
  Optional<FacePlace> place(Located value) {
    if (!(value instanceof LocatedArray list) || list.elements().size() != 2) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Optional<Double> a = values.quantity(list.elements().get(0), Dimension.LENGTH);
    Optional<Double> b = values.quantity(list.elements().get(1), Dimension.LENGTH);
    return a.flatMap(first -> b.map(second -> new FacePlace(first, second)));
  }

  /** Places in a face; none if one has faults or two are one. */
  List<FacePlace> places(List<Located> given) {
    List<FacePlace> places = new ArrayList<>();
    boolean sound = true;
    for (Located one : given) {
      Optional<FacePlace> place = place(one);
      sound &= place.isPresent();
      if (place.isPresent() && places.contains(place.get())) {
        reading.error(
            one, "a place a second time in this list", "each place once", "remove one of the two");
        sound = false;
      }
      place.ifPresent(places::add);
    }
    return sound ? places : List.of();
  }

  /** A direction square to a face. */
  Optional<FaceNormal> normal(Located value) {
    return values.word(value, NORMALS);
  }

  /** Whether an axis of a face is its first, or else its second; one square to it is reported. */
  Optional<Boolean> isFirst(Optional<FaceNormal> normal, Located value) {
    Optional<JointAxis> axis = values.word(value, AXES);
    if (axis.isEmpty() || normal.isEmpty()) {
      return Optional.empty();
    }
    if (axis.get() == normal.get().axis()) {
      reading.error(
          value,
          value.words() + ", which is square to the face",
          "an axis in the face: "
              + Quoted.text(normal.get().first().letter())
              + " or "
              + Quoted.text(normal.get().second().letter()),
          "name one of the two");
      return Optional.empty();
    }
    return Optional.of(axis.get() == normal.get().first());
  }

  /** The alloy of a part by the name of its material, as it is strong at one thickness. */
  Optional<Alloy> alloy(Located reference, Optional<Double> thickness) {
    Optional<MaterialChoice> choice = materials.resolve(reference);
    return choice.flatMap(c -> thickness.flatMap(t -> alloys.ofPart(c, t, reference)));
  }

  /** A size of the bolt table; an unknown one is reported. */
  Optional<BoltSize> size(Located name) {
    return known(
            name, "size of the bolt table", bolts.sizes().stream().map(BoltSize::name).toList())
        .flatMap(bolts::size);
  }

  /** A grade of the bolt table that holds for a size; another is reported. */
  Optional<BoltGrade> grade(Located name, Optional<BoltSize> size) {
    Optional<BoltGrade> grade =
        known(
                name,
                "grade of the bolt table",
                bolts.grades().stream().map(BoltGrade::name).toList())
            .flatMap(bolts::grade);
    if (grade.isPresent()
        && size.isPresent()
        && size.get().diameter() > grade.get().largestDiameter()) {
      reading.error(
          name,
          "grade "
              + Quoted.text(grade.get().name())
              + ", whose strengths hold up to "
              + Math.round(grade.get().largestDiameter())
              + " mm",
          "a grade that holds for " + size.get().name(),
          "choose another grade or size");
      return Optional.empty();
    }
    return grade;
  }

  private Optional<String> known(Located name, String kind, List<String> names) {
    if (!(name instanceof LocatedText text)) {
      reading.gap(name.pointer());
      return Optional.empty();
    }
    if (!names.contains(text.text())) {
      reading.error(
          name,
          Quoted.text(text.text()) + ", which is no " + kind,
          "one of " + String.join(", ", names),
          NearMiss.of(text.text(), names)
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("choose one of them, or add your own in a library"));
      return Optional.empty();
    }
    return Optional.of(text.text());
  }
}
