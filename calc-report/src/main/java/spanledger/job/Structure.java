package spanledger.job;

import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Support;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.section.Section;

/**
 * The named parts of the frame.
 *
 * @param sections the cross-sections
 * @param materials the materials
 * @param nodes the nodes
 * @param members the members
 * @param supports the supports
 */
record Structure(
    Names<Section> sections,
    Names<MaterialChoice> materials,
    Names<Node> nodes,
    Names<Member> members,
    Names<Support> supports) {

  /** Decodes the parts in the order in which they refer to each other. */
  static Structure decode(Fields fields, Reading reading, Tables tables) {
    Names<Section> sections =
        fields
            .require("sections")
            .map(new SectionDecoder(reading)::decode)
            .orElse(new Names<>(reading, "section"));
    Names<MaterialChoice> materials =
        fields
            .require("materials")
            .map(new MaterialDecoder(reading, tables.alloys())::decode)
            .orElse(new Names<>(reading, "material"));
    Names<Node> nodes =
        fields
            .require("nodes")
            .map(new NodeDecoder(reading)::decode)
            .orElse(new Names<>(reading, "node"));
    AlloyChooser alloys = new AlloyChooser(reading, tables.alloys());
    Names<Member> members =
        fields
            .require("members")
            .map(new MemberDecoder(reading, nodes, sections, materials, alloys)::decode)
            .orElse(new Names<>(reading, "member"));
    Names<Support> supports =
        fields
            .require("supports")
            .map(new SupportDecoder(reading, nodes)::decode)
            .orElse(new Names<>(reading, "support"));
    return new Structure(sections, materials, nodes, members, supports);
  }

  /** Whether all parts are without faults. */
  boolean isSound() {
    return sections.areAllSound()
        && materials.areAllSound()
        && nodes.areAllSound()
        && members.areAllSound()
        && supports.areAllSound();
  }

  /** Whether it is known which nodes are where and what joins and holds them. */
  boolean isUsable() {
    return nodes.areAllUsable() && members.areAllUsable() && supports.areAllUsable();
  }

  /** The frame of all usable parts; nodes that no member goes through are left out. */
  Frame frame(FrameChecks checks) {
    return new Frame(
        nodes.usable().stream().filter(checks::isJoined).toList(),
        members.usable(),
        supports.usable().stream().filter(s -> checks.isJoined(s.node())).toList());
  }
}
