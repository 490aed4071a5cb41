package spanledger.verification.stability;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.memberdesign.CriticalLengths;
import spanledger.provenance.Source;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.section.PropertyRow;
import spanledger.section.Section;
import spanledger.stability.FrameStiffness;

/** A frame in the X-Z plane, held out of it at every node, under given axial forces. */
final class PlaneFrame {

  static final double E = 70000;

  private static final Source INVENTED = Source.declared("invented for this case");
  private static final Alloy ALLOY =
      new Alloy(
          "case alloy",
          Set.of(ProductForm.OPEN_PROFILE),
          new ThicknessRange(0, 100),
          100,
          150,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          E,
          27000,
          2.7e-6,
          INVENTED,
          "");

  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final List<Support> supports = new ArrayList<>();
  private final List<Member> members = new ArrayList<>();
  private final Map<String, Double> forces = new LinkedHashMap<>();

  /**
   * Adds a node.
   *
   * @param held which of shift along X, shift along Z and turn about Y are held, for example "xz"
   */
  PlaneFrame node(String name, double x, double z, String held) {
    Node node = new Node(name, new Vector(x, 0, z));
    nodes.put(name, node);
    supports.add(
        new Support(
            node,
            List.of(
                hold(held, "x"),
                Restraint.FIXED,
                hold(held, "z"),
                Restraint.FIXED,
                hold(held, "r"),
                Restraint.FIXED)));
    return this;
  }

  private static Restraint hold(String held, String one) {
    return held.contains(one) ? Restraint.FIXED : Restraint.FREE;
  }

  /** Adds a rigidly joined member; compression positive, N. */
  PlaneFrame bar(String name, double moment, double compression, String... along) {
    return add(name, moment, compression, MemberEnd.RIGID, along);
  }

  /** Adds a member with pins at both ends. */
  PlaneFrame strut(String name, double moment, double compression, String... along) {
    MemberEnd pin = new MemberEnd(Restraint.FIXED, Restraint.FREE, Restraint.FREE, Vector.ZERO);
    return add(name, moment, compression, pin, along);
  }

  private PlaneFrame add(
      String name, double moment, double compression, MemberEnd end, String... along) {
    List<Node> through = new ArrayList<>();
    for (String node : along) {
      through.add(nodes.getOrDefault(node, new Node(node, Vector.ZERO)));
    }
    members.add(new Member(name, MemberRole.FLOOR, through, section(moment), ALLOY, 0, end, end));
    forces.put(name, -compression);
    return this;
  }

  /** Areas so large that bending alone decides, as in the closed forms. */
  private static Section section(double moment) {
    return new Section(
        "bar " + moment,
        new PropertyRow(
            1e6,
            1e12,
            1e12,
            moment,
            moment,
            moment,
            1e4,
            1e4,
            1e4,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            3,
            3,
            Optional.empty(),
            INVENTED));
  }

  Frame frame() {
    return new Frame(List.copyOf(nodes.values()), members, supports);
  }

  /** The axial forces of all segments, tension positive. */
  double[] axial(Frame frame) {
    double[] all = new double[frame.segments().size()];
    for (Segment segment : frame.segments()) {
      all[segment.index()] = forces.getOrDefault(segment.member().name(), 0.0);
    }
    return all;
  }

  /** Buckling length in the plane per length: out of it all nodes are clamped, which gives less. */
  double factor(String member) {
    Frame frame = frame();
    CriticalLengths lengths =
        new CriticalLengths(
            new FrameStiffness(frame), List.of(new CriticalLengths.Axial("case", axial(frame))));
    Member one =
        frame.members().stream().filter(m -> m.name().equals(member)).findFirst().orElseThrow();
    double longest = 0;
    for (BucklingMode mode : List.of(BucklingMode.FLEXURAL_Y, BucklingMode.FLEXURAL_Z)) {
      BucklingLength length = lengths.of(one, mode).orElseThrow();
      longest = Math.max(longest, length.length());
    }
    return longest / one.length();
  }
}
