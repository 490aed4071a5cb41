package spanledger.verification.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.LeadingAction;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.overturning.StandingAnalysis;
import spanledger.overturning.StandingResult;
import spanledger.overturning.StandingStructure;
import spanledger.overturning.TippingCase;
import spanledger.overturning.TippingEdge;

/** Three feet at different levels, so that every line slants in plan and rises. */
class SlantedLinesTest {

  private static final double PRESSURE = 0.001;

  /** How finely the floor is cut for the sum by hand. */
  private static final int CELLS = 300;

  private static final RuleSet LOADS = Table.rules(PRESSURE, 0, 0, 0, 0.02);

  /**
   * The moment of a force about a line by vector algebra, u · (r - A) × F, per length in plan
   * (elementary statics).
   */
  @Property(tries = 50)
  void momentsOfForcesFollowVectorAlgebra(
      @ForAll @DoubleRange(min = -500, max = 500) double rise1,
      @ForAll @DoubleRange(min = -500, max = 500) double rise2,
      @ForAll @DoubleRange(min = -900, max = 900) double along,
      @ForAll @DoubleRange(min = -900, max = 900) double across,
      @ForAll @DoubleRange(min = -900, max = 900) double up,
      @ForAll @DoubleRange(min = -1000000, max = 1000000) double twist) {
    Node[] nodes = tripod(rise1, rise2);
    Vector force = new Vector(along, across, up);
    Vector couple = new Vector(twist, -0.5 * twist, 0.3 * twist);
    UserCase pull =
        new UserCase(
            ActionCategory.PERMANENT,
            new LoadCase(
                "pull", List.of(new NodalLoad(nodes[3], force, couple, "pull")), List.of()));
    StandingResult result = stands(nodes, List.of(), List.of(pull), LeadingAction.NONE, false);

    assertThat(result.edges()).hasSize(3);
    for (TippingCase one : result.tipping()) {
      Vector a = one.edge().first().place();
      Vector axis = one.edge().second().place().minus(a);
      Vector perPlan = axis.times(1 / Math.hypot(axis.x(), axis.y()));
      double expected = perPlan.dot(nodes[3].place().minus(a).cross(force)) + perPlan.dot(couple);
      assertThat(one.permanent().tipping() - one.permanent().holding())
          .isCloseTo(expected, within(1e-9 * (1e6 + Math.abs(expected))));
    }
  }

  /**
   * A floor over all three feet that every line cuts somewhere: its load by cells of 1/300 of its
   * sides (midpoint rule). Tolerance: cells on the line err by their share, about 1/300² of the
   * floor's load times its size.
   */
  @Property(tries = 20)
  void floorsArePartedAtSlantedLines(
      @ForAll @DoubleRange(min = -300, max = 300) double rise1,
      @ForAll @DoubleRange(min = -300, max = 300) double rise2,
      @ForAll @DoubleRange(min = 0.05, max = 1.5) double turn) {
    Node[] nodes = tripod(rise1, rise2);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    Vector corner = new Vector(1000 - 1500 * c + 800 * s, 600 - 1500 * s - 800 * c, 900);
    Vector a = new Vector(3000 * c, 3000 * s, 0);
    Vector b = new Vector(-1600 * s, 1600 * c, 0);
    List<Node> corners = new ArrayList<>();
    corners.add(new Node("c1", corner));
    corners.add(new Node("c2", corner.plus(a)));
    corners.add(new Node("c3", corner.plus(a).plus(b)));
    corners.add(new Node("c4", corner.plus(b)));
    Surface floor = new Surface("floor", corners, List.of(), PRESSURE);
    StandingResult level = stands(nodes, List.of(floor), List.of(), LeadingAction.FLOOR, false);
    StandingResult swayed = stands(nodes, List.of(floor), List.of(), LeadingAction.FLOOR, true);

    double size = PRESSURE * 3000 * 1600 * 2000;
    for (int i = 0; i < level.tipping().size(); i++) {
      TippingCase one = level.tipping().get(i);
      double tips = sum(one.edge(), corner, a, b, 0);
      assertThat(one.permanent().tipping()).isCloseTo(tips, within(1e-5 * size));
      assertThat(one.variableMoment()).isCloseTo(1.5 * tips, within(2e-5 * size));
      assertThat(swayed.tipping().get(i).variableMoment())
          .isCloseTo(1.5 * sum(one.edge(), corner, a, b, 0.02), within(2e-5 * size));
    }
  }

  private static double sum(TippingEdge edge, Vector corner, Vector a, Vector b, double sway) {
    double sum = 0;
    double cell = PRESSURE * a.norm() * b.norm() / CELLS / CELLS;
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        Vector place = corner.plus(a.times((i + 0.5) / CELLS)).plus(b.times((j + 0.5) / CELLS));
        sum += cell * Math.max(0, edge.beyond(place) + sway * edge.above(place));
      }
    }
    return sum;
  }

  private static Node[] tripod(double rise1, double rise2) {
    return new Node[] {
      new Node("foot1", new Vector(0, 100, 0)),
      new Node("foot2", new Vector(2100, 0, rise1)),
      new Node("foot3", new Vector(900, 1700, rise2)),
      new Node("top", new Vector(1000, 600, 900))
    };
  }

  private static StandingResult stands(
      Node[] nodes,
      List<Surface> floors,
      List<UserCase> cases,
      LeadingAction leading,
      boolean sway) {
    List<Member> members = new ArrayList<>();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      members.add(Table.weightless("leg" + i, MemberRole.LEG, MemberEnd.RIGID, nodes[i], nodes[3]));
      supports.add(Table.pinned(nodes[i]));
    }
    EquilibriumRule rule = Table.rule(leading, sway);
    return new StandingAnalysis(
            new StandingStructure(
                new Frame(List.of(nodes), members, supports),
                floors,
                List.of(),
                cases,
                List.of(),
                LOADS),
            Table.standing(0.5),
            List.of(rule))
        .run();
  }
}
