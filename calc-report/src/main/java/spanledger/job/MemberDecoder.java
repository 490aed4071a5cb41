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
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
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
      Names<Node> nodes,
      Names<Section> sections,
      Names<MaterialChoice> materials,
      AlloyChooser alloys) {
    this.reading = reading;
    this.values = new Values(reading);
    this.turns = new TurnDecoder(reading);
    this.joints = new JointDecoder(reading);
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
    Member member =
        new Member(
            entry.key(),
            role.get(),
            along.get(),
            section.orElse(SOME_SECTION),
            alloy.orElse(SOME_ALLOY),
            roll.orElse(0.0),
            start.get(),
            end.get());
    if (section.isPresent() && alloy.isPresent() && roll.isPresent()) {
      names.add(entry, Optional.of(member));
    } else {
      names.addFaulty(entry, member);
    }
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
