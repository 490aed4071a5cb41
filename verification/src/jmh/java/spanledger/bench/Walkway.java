package spanledger.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.SegmentLoad;
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
import spanledger.provenance.Source;
import spanledger.section.RectangularHollow;
import spanledger.section.Section;

/**
 * A straight walkway with guardrails on both sides, on braced legs: per bay two edge beams, a cross
 * bearer, two posts with a middle and a top rail.
 */
final class Walkway {

  private static final double BAY = 1_000;
  private static final double WIDTH = 800;
  private static final double RAIL = 550;
  private static final double HEIGHT = 2_500;
  private static final int BAYS_PER_LEG = 4;

  private static final Source INVENTED = Source.derived("Round figures for benchmarks");
  private static final Alloy ALLOY =
      new Alloy(
          "benchmark alloy",
          Set.of(ProductForm.HOLLOW_PROFILE),
          new ThicknessRange(0, 50),
          160,
          195,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          70_000,
          27_000,
          2.7e-6,
          INVENTED,
          "");
  private static final Section BEAM = new Section("beam", new RectangularHollow(150, 50, 4, 4));
  private static final Section TUBE = new Section("tube", new RectangularHollow(50, 50, 3, 3));

  private final List<Node> nodes = new ArrayList<>();
  private final List<Member> members = new ArrayList<>();
  private final List<Support> supports = new ArrayList<>();
  private final Frame frame;

  Walkway(int bays) {
    List<List<Node>> lines = new ArrayList<>();
    for (int line = 0; line < 6; line++) {
      lines.add(new ArrayList<>());
    }
    for (int bay = 0; bay <= bays; bay++) {
      for (int line = 0; line < 6; line++) {
        String name = "N" + bay + "." + line;
        int level = line / 2;
        Vector place = new Vector(bay * BAY, (line % 2) * WIDTH, level * RAIL);
        Node node = new Node(name, place);
        nodes.add(node);
        lines.get(line).add(node);
      }
      cross(bay, lines);
      if (bay % BAYS_PER_LEG == 0) {
        legs(bay, lines);
      }
    }
    for (int line = 0; line < 6; line++) {
      member("line " + line, line < 2 ? BEAM : TUBE, MemberEnd.RIGID, lines.get(line));
    }
    frame = new Frame(nodes, members, supports);
  }

  private void cross(int bay, List<List<Node>> lines) {
    Node left = lines.get(0).get(bay);
    Node right = lines.get(1).get(bay);
    member("bearer " + bay, TUBE, MemberEnd.RIGID, List.of(left, right));
    for (int side = 0; side < 2; side++) {
      member(
          "post " + bay + "." + side,
          TUBE,
          MemberEnd.RIGID,
          List.of(
              lines.get(side).get(bay),
              lines.get(2 + side).get(bay),
              lines.get(4 + side).get(bay)));
    }
  }

  private void legs(int bay, List<List<Node>> lines) {
    List<Node> feet = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      Node top = lines.get(side).get(bay);
      Node foot = new Node("F" + bay + "." + side, top.place().plus(new Vector(0, 0, -HEIGHT)));
      nodes.add(foot);
      feet.add(foot);
      member("leg " + bay + "." + side, TUBE, MemberEnd.RIGID, List.of(foot, top));
      supports.add(new Support(foot, Collections.nCopies(6, Restraint.FIXED)));
    }
    member("brace " + bay, TUBE, MemberEnd.PINNED, List.of(feet.get(0), lines.get(1).get(bay)));
  }

  private void member(String name, Section section, MemberEnd ends, List<Node> along) {
    members.add(new Member(name, MemberRole.OTHER, along, section, ALLOY, 0, ends, ends));
  }

  Frame frame() {
    return frame;
  }

  /** Cases that each load another stretch of the edge beams. */
  List<LoadCase> cases(int count) {
    List<LoadCase> cases = new ArrayList<>();
    List<Segment> edge = frame.segmentsOf(frame.members().get(frame.members().size() - 6));
    for (int i = 0; i < count; i++) {
      List<SegmentLoad> loads = new ArrayList<>();
      for (int s = i; s < edge.size(); s += count) {
        loads.add(
            new SegmentLoad.Distributed(
                edge.get(s),
                LoadAxes.GLOBAL,
                Vector.DOWN,
                new LoadOrigin.Given("floor"),
                2,
                2,
                0,
                edge.get(s).length()));
      }
      cases.add(new LoadCase("case " + i, List.of(), loads));
    }
    return cases;
  }
}
