package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.job.source.Located;
import spanledger.material.Alloy;
import spanledger.quantity.Dimension;
import spanledger.section.Section;

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

  private final Reading reading;
  private final Values values;
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
    this.joints = new JointDecoder(reading);
    this.nodes = nodes;
    this.sections = sections;
    this.materials = materials;
    this.alloys = alloys;
  }

  Names<Member> decode(Located members) {
    Names<Member> names = new Names<>(reading, "member");
    for (Located.Entry entry : reading.named(members)) {
      names.add(
          entry,
          reading.fields("member", entry.value()).flatMap(fields -> member(entry.key(), fields)));
    }
    return names;
  }

  private Optional<Member> member(String name, Fields fields) {
    Optional<MemberRole> role = fields.require("role").flatMap(r -> values.word(r, ROLES));
    Optional<List<Node>> along = straight(fields.requireList("nodes"));
    Optional<Section> section = fields.require("section").flatMap(sections::resolve);
    Optional<Alloy> alloy = fields.require("material").flatMap(m -> alloy(m, section));
    Optional<Double> roll =
        fields
            .find("roll")
            .map(angle -> values.quantity(angle, Dimension.NONE))
            .orElse(Optional.of(0.0));
    Optional<MemberEnd> start = fields.require("start").flatMap(joints::decode);
    Optional<MemberEnd> end = fields.require("end").flatMap(joints::decode);
    if (along.isEmpty()
        || start.isEmpty()
        || end.isEmpty()
        || !hasLength(along.get(), start.get(), end.get(), fields)
        || role.isEmpty()
        || section.isEmpty()
        || alloy.isEmpty()
        || roll.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Member(
            name,
            role.get(),
            along.get(),
            section.get(),
            alloy.get(),
            roll.get(),
            start.get(),
            end.get()));
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
