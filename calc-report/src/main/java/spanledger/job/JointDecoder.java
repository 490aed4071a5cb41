package spanledger.job;

import java.util.Map;
import java.util.Optional;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointType;
import spanledger.jointdesign.DescribedStiffness;
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
  private final Names<JointType> described;
  private final StiffnessBounds.Bound bound;
  private final SpringOrigins origins;

  /**
   * @param described joints described by their parts
   * @param bound the bound taken of their stiffness
   * @param origins keeps what springs were worked out from
   */
  JointDecoder(
      Reading reading,
      SpringDecoder springs,
      Names<JointType> described,
      StiffnessBound bound,
      SpringOrigins origins) {
    this.reading = reading;
    this.springs = springs;
    this.described = described;
    this.origins = origins;
    this.bound =
        bound == StiffnessBound.LOWER ? StiffnessBounds.Bound.LOWER : StiffnessBounds.Bound.UPPER;
    this.values = new Values(reading);
  }

  Optional<MemberEnd> decode(Located joint) {
    if (joint instanceof LocatedText) {
      return values.word(joint, WHOLE);
    }
    if (joint instanceof LocatedObject object && object.find("fromJoint").isPresent()) {
      return reading.fields("jointFromParts", joint).flatMap(this::decodeFromParts);
    }
    return reading.fields("joint", joint).flatMap(this::decodeApart);
  }

  /** As stiff as the parts of a described joint are. */
  private Optional<MemberEnd> decodeFromParts(Fields fields) {
    Optional<Located> named = fields.require("fromJoint");
    Optional<JointType> type = named.flatMap(described::resolve);
    Optional<Vector> offset = offset(fields);
    if (type.isEmpty() || offset.isEmpty()) {
      return Optional.empty();
    }
    if (!(type.get() instanceof BracketJoint joint)) {
      reading.error(
          named.orElseThrow(),
          "a foot in place of a joint of member ends",
          "a joint of kind \"bracket\" or \"brackets\"",
          "name another joint, or say the turns one by one");
      return Optional.empty();
    }
    try {
      MemberEnd end = DescribedStiffness.of(joint).memberEnd(bound, offset.get());
      for (Restraint hold : end.holds()) {
        if (hold instanceof Restraint.Spring) {
          origins.add(hold, new SpringOrigins.OfParts(joint, bound));
        }
      }
      return Optional.of(end);
    } catch (IllegalArgumentException cannotBe) {
      reading.error(
          named.orElseThrow(),
          "a joint whose stiffness cannot be worked out: " + cannotBe.getMessage(),
          "a joint whose parts hold the member along its axis, with bolts where their leg bends",
          "correct the joint, or say the turns one by one");
      return Optional.empty();
    }
  }

  private Optional<Vector> offset(Fields fields) {
    return fields
        .find("offset")
        .map(at -> values.vector(at, Dimension.LENGTH))
        .orElse(Optional.of(Vector.ZERO));
  }

  private Optional<MemberEnd> decodeApart(Fields fields) {
    Optional<Restraint> torsion = fields.require("torsion").flatMap(this::torsion);
    Optional<Restraint> axial =
        fields.find("axial").map(this::axial).orElse(Optional.of(Restraint.FIXED));
    Optional<Restraint> aboutY = fields.require("aboutY").flatMap(this::restraint);
    Optional<Restraint> aboutZ = fields.require("aboutZ").flatMap(this::restraint);
    Optional<Vector> offset = offset(fields);
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
