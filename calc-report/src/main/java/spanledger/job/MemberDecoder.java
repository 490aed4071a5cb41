package spanledger.job;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.Section;
import spanledger.section.SolidRound;

/** Decodes the members and checks that each is one straight piece. */
final class MemberDecoder {

  private static final Map<String, MemberRole> ROLES =
      Map.of(
          "floor", MemberRole.FLOOR,
          "rail", MemberRole.RAIL,
          "rail-post", MemberRole.RAIL_POST,
          "leg", MemberRole.LEG,
          "brace", MemberRole.BRACE,
          "other", MemberRole.OTHER);

  /** Which way a member bears along its axis. */
  private enum Bearing {
    BOTH,
    TENSION,
    COMPRESSION
  }

  private static final Map<String, Bearing> BEARINGS =
      Map.of(
          "both", Bearing.BOTH,
          "tension", Bearing.TENSION,
          "compression", Bearing.COMPRESSION);

  /** Take the place of a section and an alloy with faults; a job with one is never calculated. */
  static final Section SOME_SECTION = new Section("stand-in", new SolidRound(1));

  static final Alloy SOME_ALLOY =
      new Alloy(
          "stand-in",
          EnumSet.allOf(ProductForm.class),
          new ThicknessRange(0, Double.POSITIVE_INFINITY),
          1,
          1,
          BucklingClass.B,
          Optional.empty(),
          OptionalDouble.empty(),
          1,
          1,
          1,
          Source.declared("stand-in"),
          "");

  private final Reading reading;
  private final Values values;
  private final TurnDecoder turns;
  private final JointDecoder joints;
  private final Names<Node> nodes;
  private final Names<Section> sections;
  private final Names<MaterialChoice> materials;
  private final AlloyChooser alloys;

  MemberDecoder(
      Reading reading,
      JointDecoder joints,
      Names<Node> nodes,
      Names<Section> sections,
      Names<MaterialChoice> materials,
      AlloyChooser alloys) {
    this.reading = reading;
    this.values = new Values(reading);
    this.turns = new TurnDecoder(reading);
    this.joints = joints;
    this.nodes = nodes;
    this.sections = sections;
    this.materials = materials;
    this.alloys = alloys;
  }

  /**
   * Decodes the members given by hand.
   *
   * @param names the members of the assembly; takes the others
   */
  Names<Member> decode(Located members, Names<Member> names) {
    for (Located.Entry entry : reading.named(members)) {
      if (names.isTaken(entry)) {
        continue;
      }
      Optional<Fields> fields = reading.fields("member", entry.value());
      if (fields.isPresent()) {
        decode(entry, fields.get(), names);
      } else {
        names.add(entry, Optional.empty());
      }
    }
    return names;
  }

  /**
   * Where only section, material or roll have faults, others take their place, so that loads can
   * still be checked.
   */
  private void decode(Located.Entry entry, Fields fields, Names<Member> names) {
    Optional<MemberRole> role = fields.require("role").flatMap(r -> values.word(r, ROLES));
    Optional<List<Node>> along = straight(fields.requireList("nodes"));
    Optional<Section> section = fields.require("section").flatMap(sections::resolve);
    Optional<Alloy> alloy = fields.require("material").flatMap(m -> alloy(m, section));
    Optional<Double> roll = fields.find("roll").map(turns::decode).orElse(Optional.of(0.0));
    Optional<MemberEnd> start = fields.require("start").flatMap(joints::decode);
    Optional<MemberEnd> end = fields.require("end").flatMap(joints::decode);
    if (role.isEmpty()
        || along.isEmpty()
        || start.isEmpty()
        || end.isEmpty()
        || !hasLength(along.get(), start.get(), end.get(), fields)) {
      names.add(entry, Optional.empty());
      return;
    }
    Optional<MemberEnd> oneWay = oneWay(fields, start.get(), end.get());
    if (oneWay.isEmpty()) {
      names.add(entry, Optional.empty());
      return;
    }
    Member member =
        new Member(
            entry.key(),
            role.get(),
            along.get(),
            section.orElse(SOME_SECTION),
            alloy.orElse(SOME_ALLOY),
            roll.orElse(0.0),
            oneWay.get(),
            end.get());
    if (section.isPresent() && alloy.isPresent() && roll.isPresent()) {
      names.add(entry, Optional.of(member));
    } else {
      names.addFaulty(entry, member);
    }
  }

  /** The start with what keeps the member from bearing both ways, if it does not. */
  private Optional<MemberEnd> oneWay(Fields fields, MemberEnd start, MemberEnd end) {
    Optional<Bearing> bears =
        fields
            .find("bears")
            .map(word -> values.word(word, BEARINGS))
            .orElse(Optional.of(Bearing.BOTH));
    Optional<Located> given = fields.find("slack");
    Optional<Double> slack =
        given.map(s -> values.notNegative(s, Dimension.LENGTH)).orElse(Optional.of(0.0));
    if (bears.isEmpty() || slack.isEmpty()) {
      return Optional.empty();
    }
    boolean both = bears.get() == Bearing.BOTH;
    if (both && slack.get() > 0) {
      given.ifPresent(
          s ->
              reading.error(
                  s,
                  "slack in a member that bears both ways",
                  "\"bears\": \"tension\" or \"compression\" beside it",
                  "add it, or give \"slip\" with a joint"));
      return Optional.empty();
    }
    boolean first = !start.axial().isLinear();
    boolean second = !end.axial().isLinear();
    if ((first && second) || (!both && (first || second))) {
      reading.error(
          fields.object(),
          both
              ? "a member with slip along its axis at both ends"
              : "a one-way member with slip along its axis at an end",
          "one of them only",
          "give the whole play at one end, or as \"slack\" of a one-way member");
      return Optional.empty();
    }
    if (both) {
      return Optional.of(start);
    }
    Restraint.Way way =
        bears.get() == Bearing.TENSION ? Restraint.Way.POSITIVE : Restraint.Way.NEGATIVE;
    double stiffness =
        start.axial() instanceof Restraint.Spring spring
            ? spring.stiffness()
            : Double.POSITIVE_INFINITY;
    return Optional.of(start.withAxial(new Restraint.OneWay(way, slack.get(), stiffness)));
  }

  private Optional<Alloy> alloy(Located reference, Optional<Section> section) {
    Optional<MaterialChoice> choice = materials.resolve(reference);
    if (choice.isEmpty() || section.isEmpty()) {
      return Optional.empty();
    }
    return alloys.alloy(choice.get(), section.get(), reference);
  }

  private Optional<List<Node>> straight(List<Located> places) {
    Optional<List<Node>> along = nodes.resolveAll(places);
    if (along.isEmpty() || along.get().size() < 2) {
      return Optional.empty();
    }
    MemberShape shape = new MemberShape(along.get());
    if (shape.hasNeighboursAtOnePlace()) {
      return Optional.empty();
    }
    Optional<MemberShape.Fault> fault = shape.offTheLine();
    if (fault.isPresent()) {
      reading.error(
          places.get(fault.get().at()),
          fault.get().words(),
          "nodes in order on one straight line, to within 1 mm",
          "correct the nodes or their order, or make two members of it");
      return Optional.empty();
    }
    return along;
  }

  private boolean hasLength(List<Node> along, MemberEnd start, MemberEnd end, Fields fields) {
    if (new MemberShape(along).leavesLength(start, end)) {
      return true;
    }
    reading.error(
        fields.object(),
        "a member whose offsets use up the length to its next node",
        "offsets that leave more than 1 mm of it",
        "correct the offsets");
    return false;
  }
}
