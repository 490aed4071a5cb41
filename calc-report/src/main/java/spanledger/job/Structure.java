package spanledger.job;

import java.util.Optional;
import spanledger.assembly.GeneratedFrame;
import spanledger.deck.Panel;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Support;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.joint.JointType;
import spanledger.section.Section;

/**
 * The named parts of the frame.
 *
 * @param sections the cross-sections
 * @param materials the materials
 * @param panels deck panels and treads
 * @param described joints and feet by their parts
 * @param assembly the assembly
 * @param nodes the nodes
 * @param members the members
 * @param supports the supports
 * @param springs what springs of member ends were worked out from
 */
record Structure(
    Names<Section> sections,
    Names<MaterialChoice> materials,
    Names<Panel> panels,
    Names<JointType> described,
    DecodedAssembly assembly,
    Names<Node> nodes,
    Names<Member> members,
    Names<Support> supports,
    SpringOrigins springs) {

  /** Decodes the parts in the order in which they refer to each other. */
  static Structure decode(
      Fields fields, Reading reading, Tables tables, SolvedOutlines solved, StiffnessBound bound) {
    SpringOrigins origins = new SpringOrigins();
    SpringDecoder springs = new SpringDecoder(reading, bound, origins);
    Names<Section> sections =
        fields
            .require("sections")
            .map(new SectionDecoder(reading, tables.sections(), solved)::decode)
            .orElse(new Names<>(reading, "section"));
    Names<MaterialChoice> materials =
        fields
            .require("materials")
            .map(new MaterialDecoder(reading, tables.alloys())::decode)
            .orElse(new Names<>(reading, "material"));
    AlloyChooser alloys = new AlloyChooser(reading, tables.alloys());
    Names<JointType> described =
        fields
            .find("jointDetails")
            .map(new JointDetailDecoder(reading, sections, materials, tables)::decode)
            .orElse(new Names<>(reading, "joint"));
    JointDecoder joints = new JointDecoder(reading, springs, described, bound, origins);
    Names<Panel> panels =
        fields
            .find("panels")
            .map(new PanelDecoder(reading, sections, materials, alloys)::decode)
            .orElse(new Names<>(reading, "panel"));
    PartDecoder parts = new PartDecoder(reading, joints, sections, materials, alloys);
    DecodedAssembly assembly =
        fields
            .find("assembly")
            .map(new AssemblyDecoder(reading, parts, panels)::decode)
            .orElse(DecodedAssembly.NONE);
    Names<Node> nodes = new Names<>(reading, "node");
    assembly.addTo(nodes, GeneratedFrame::nodes, Node::name);
    given(fields, "nodes").ifPresent(n -> new NodeDecoder(reading).decode(n, nodes));
    Names<Member> members = new Names<>(reading, "member");
    assembly.addTo(members, GeneratedFrame::members, Member::name);
    MemberDecoder memberDecoder =
        new MemberDecoder(reading, joints, nodes, sections, materials, alloys);
    given(fields, "members").ifPresent(m -> memberDecoder.decode(m, members));
    Names<Support> supports = new Names<>(reading, "support");
    assembly.addFeetTo(supports);
    given(fields, "supports")
        .ifPresent(s -> new SupportDecoder(reading, springs, nodes).decode(s, supports));
    return new Structure(
        sections, materials, panels, described, assembly, nodes, members, supports, origins);
  }

  /** What must be given by hand unless an assembly is there. */
  private static Optional<Located> given(Fields fields, String key) {
    return fields.has("assembly") ? fields.find(key) : fields.require(key);
  }

  /** Whether all parts are without faults. */
  boolean isSound() {
    return sections.areAllSound()
        && materials.areAllSound()
        && panels.areAllSound()
        && described.areAllSound()
        && assembly.isSound()
        && nodes.areAllSound()
        && members.areAllSound()
        && supports.areAllSound();
  }

  /** Whether it is known which nodes are where and what joins and holds them. */
  boolean isUsable() {
    return (assembly.isSound() || assembly.built().isPresent())
        && nodes.areAllUsable()
        && members.areAllUsable()
        && supports.areAllUsable();
  }

  /** The frame of all usable parts; nodes that no member goes through are left out. */
  Frame frame(FrameChecks checks) {
    return new Frame(
        nodes.usable().stream().filter(checks::isJoined).toList(),
        members.usable(),
        supports.usable().stream().filter(s -> checks.isJoined(s.node())).toList());
  }
}
