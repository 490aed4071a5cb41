package spanledger.job;

import java.util.Map;
import java.util.Optional;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.quantity.Dimension;

/** Decodes how members are joined to their nodes. */
final class JointDecoder {

  private static final Map<String, MemberEnd> WHOLE =
      Map.of("rigid", MemberEnd.RIGID, "pinned", MemberEnd.PINNED);
  private static final Map<String, Restraint> SINGLE =
      Map.of("rigid", Restraint.FIXED, "pinned", Restraint.FREE);

  private final Reading reading;
  private final Values values;
  private final SpringDecoder springs;

  JointDecoder(Reading reading, SpringDecoder springs) {
    this.reading = reading;
    this.springs = springs;
    this.values = new Values(reading);
  }

  Optional<MemberEnd> decode(Located joint) {
    if (joint instanceof LocatedText) {
      return values.word(joint, WHOLE);
    }
    return reading.fields("joint", joint).flatMap(this::decodeApart);
  }

  private Optional<MemberEnd> decodeApart(Fields fields) {
    Optional<Restraint> torsion = fields.require("torsion").flatMap(this::torsion);
    Optional<Restraint> axial =
        fields.find("axial").map(this::axial).orElse(Optional.of(Restraint.FIXED));
    Optional<Restraint> aboutY = fields.require("aboutY").flatMap(this::restraint);
    Optional<Restraint> aboutZ = fields.require("aboutZ").flatMap(this::restraint);
    Optional<Vector> offset =
        fields
            .find("offset")
            .map(at -> values.vector(at, Dimension.LENGTH))
            .orElse(Optional.of(Vector.ZERO));
    if (torsion.isEmpty()
        || axial.isEmpty()
        || aboutY.isEmpty()
        || aboutZ.isEmpty()
        || offset.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new MemberEnd(axial.get(), torsion.get(), aboutY.get(), aboutZ.get(), offset.get()));
  }

  private Optional<Restraint> torsion(Located value) {
    Optional<Restraint> read = restraint(value);
    if (read.isPresent() && !read.get().isLinear()) {
      reading.error(
          value,
          "a joint with slip in torsion",
          "slip along the member or in bending only",
          "leave \"slip\" out, or make it \"pinned\" if the play is wide");
      return Optional.empty();
    }
    return read;
  }

  private Optional<Restraint> axial(Located value) {
    if (value instanceof LocatedObject) {
      return springs.decode("shiftSpring", value, false);
    }
    if (value instanceof LocatedText text && text.text().equals("rigid")) {
      return Optional.of(Restraint.FIXED);
    }
    if (Values.isWord(value)) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    return values.positive(value, Dimension.LINE_LOAD).map(Restraint.Spring::new);
  }

  private Optional<Restraint> restraint(Located value) {
    if (value instanceof LocatedObject) {
      return springs.decode("turnSpring", value, true);
    }
    if (value instanceof LocatedText text && SINGLE.containsKey(text.text())) {
      return values.word(value, SINGLE);
    }
    if (Values.isWord(value)) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    return values.positive(value, Dimension.MOMENT).map(Restraint.Spring::new);
  }
}
