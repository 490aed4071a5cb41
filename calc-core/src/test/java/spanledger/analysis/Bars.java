package spanledger.analysis;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
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
import spanledger.provenance.Source;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/** Short ways to write frames in tests. */
final class Bars {

  static final double E = 70_000;
  static final double G = 27_000;
  static final double A = 1_200;
  static final double AVY = 500;
  static final double AVZ = 600;
  static final double IY = 1.6e6;
  static final double IZ = 0.7e6;
  static final double IT = 1.1e6;

  static final Alloy ALLOY =
      new Alloy(
          "test alloy",
          Set.of(ProductForm.HOLLOW_PROFILE),
          new ThicknessRange(0, 50),
          160,
          195,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          E,
          G,
          2.7e-6,
          Source.derived("Round figures for tests"),
          "");

  static final Section BOX =
      new Section(
          "box",
          new PropertyRow(
              A,
              AVY,
              AVZ,
              IY,
              IZ,
              IT,
              32_000,
              23_000,
              25_000,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              3,
              3,
              Optional.empty(),
              Source.derived("Round figures for tests")));

  static final Vector ALONG_X = new Vector(1, 0, 0);
  static final Vector ALONG_Y = new Vector(0, 1, 0);
  static final Vector ALONG_Z = new Vector(0, 0, 1);

  private Bars() {}

  static Node node(String name, double x, double y, double z) {
    return new Node(name, new Vector(x, y, z));
  }

  static Member member(String name, MemberEnd start, MemberEnd end, Node... nodes) {
    return new Member(name, MemberRole.OTHER, List.of(nodes), BOX, ALLOY, 0, start, end);
  }

  static Member member(String name, Node... nodes) {
    return member(name, MemberEnd.RIGID, MemberEnd.RIGID, nodes);
  }

  static Support clamp(Node node) {
    return new Support(node, Collections.nCopies(6, Restraint.FIXED));
  }

  static Support hold(Node node, Freedom... freedoms) {
    List<Freedom> held = List.of(freedoms);
    return new Support(
        node,
        Arrays.stream(Freedom.values())
            .map(f -> held.contains(f) ? Restraint.FIXED : Restraint.FREE)
            .toList());
  }

  static SegmentLoad point(Segment segment, Vector direction, double force, double at) {
    return new SegmentLoad.Point(
        segment, LoadAxes.GLOBAL, direction, new LoadOrigin.Given("test"), force, at);
  }

  static SegmentLoad spread(
      Segment segment, Vector direction, double q1, double q2, double from, double to) {
    return new SegmentLoad.Distributed(
        segment, LoadAxes.GLOBAL, direction, new LoadOrigin.Given("test"), q1, q2, from, to);
  }

  static NodalLoad force(Node node, Vector force) {
    return new NodalLoad(node, force, Vector.ZERO, "test");
  }

  static LoadCase nodal(NodalLoad... loads) {
    return new LoadCase("case", List.of(loads), List.of());
  }

  static LoadCase along(SegmentLoad... loads) {
    return new LoadCase("case", List.of(), List.of(loads));
  }

  static CaseResult solve(Frame frame, LoadCase loadCase) {
    return new FrameAnalysis(frame).solve(List.of(loadCase)).results().get(0);
  }
}
