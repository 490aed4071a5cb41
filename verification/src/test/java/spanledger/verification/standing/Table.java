package spanledger.verification.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.Rail;
import spanledger.action.RailDirection;
import spanledger.action.RailKind;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.overturning.Standing;
import spanledger.overturning.StandingAnalysis;
import spanledger.overturning.StandingResult;
import spanledger.overturning.StandingStructure;
import spanledger.overturning.Wind;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/**
 * A table: a rectangular top with overhangs on four legs, and a rail along its north side. Its
 * members weigh 10 N per metre (1000 mm² of a material of 10/9.80665e6 kg/mm³), so that weights by
 * hand are round. It may be turned about the upright axis and moved.
 *
 * @param length of the top along X, mm
 * @param width of the top along Y, mm
 * @param inset how far the legs at both ends of the length stand within the top, mm
 * @param height of the top above the feet, mm
 * @param railHeight of the rail above the top, mm
 * @param finishes weight on the top, MPa
 * @param turn about the upright axis, rad
 */
record Table(
    double length,
    double width,
    double inset,
    double height,
    double railHeight,
    double finishes,
    double turn) {

  static final Source INVENTED = Source.declared("invented for this case");

  /** N/mm. */
  static final double PER_LENGTH = 0.01;

  static final double GRAVITY = 9.80665;

  private static final Alloy ALLOY = alloy("case alloy", PER_LENGTH / 1000 / GRAVITY);

  /** So light that it does not count. */
  private static final Alloy WEIGHTLESS = alloy("weightless", 1e-30);

  private static final Section BAR =
      new Section(
          "case bar",
          new PropertyRow(
              1000,
              1e3,
              1e3,
              1e6,
              1e6,
              1e6,
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

  private static Alloy alloy(String name, double density) {
    return new Alloy(
        name,
        Set.of(ProductForm.OPEN_PROFILE),
        new ThicknessRange(0, 100),
        100,
        150,
        BucklingClass.A,
        Optional.empty(),
        OptionalDouble.empty(),
        70000,
        27000,
        density,
        INVENTED,
        "");
  }

  Table turned(double angle) {
    return new Table(length, width, inset, height, railHeight, finishes, angle);
  }

  Table withFinishes(double pressure) {
    return new Table(length, width, inset, height, railHeight, pressure, turn);
  }

  /** A place of the table, turned with it. */
  Vector at(double x, double y, double z) {
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return new Vector(c * x - s * y, s * x + c * y, z);
  }

  /** A level direction of the table, turned with it. */
  Vector towards(double x, double y) {
    return at(x, y, 0);
  }

  StandingStructure structure(RuleSet rules, UserCase... userCases) {
    Map<String, Node> n = new TreeMap<>();
    double[] xs = {inset, length - inset};
    double[] ys = {0, width};
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        String name = (j == 0 ? "south" : "north") + (i + 1);
        n.put(name + "-foot", new Node(name + "-foot", at(xs[i], ys[j], 0)));
        n.put(name + "-top", new Node(name + "-top", at(xs[i], ys[j], height)));
        String corner = name + "-corner";
        n.put(
            corner,
            inset == 0 ? of(n, name + "-top") : new Node(corner, at(i * length, ys[j], height)));
      }
      String rail = "rail" + (i + 1);
      n.put(rail, new Node(rail, at(xs[i], width, height + railHeight)));
    }
    List<Member> members = new ArrayList<>();
    members.add(member("leg-s1", MemberRole.LEG, of(n, "south1-foot"), of(n, "south1-top")));
    members.add(member("leg-s2", MemberRole.LEG, of(n, "south2-foot"), of(n, "south2-top")));
    Member post1 =
        member("leg-n1", MemberRole.LEG, of(n, "north1-foot"), of(n, "north1-top"), of(n, "rail1"));
    Member post2 =
        member("leg-n2", MemberRole.LEG, of(n, "north2-foot"), of(n, "north2-top"), of(n, "rail2"));
    members.add(post1);
    members.add(post2);
    Member south = beam("beam-s", "south", n);
    Member north = beam("beam-n", "north", n);
    members.add(south);
    members.add(north);
    Member rail = member("rail", MemberRole.RAIL, of(n, "rail1"), of(n, "rail2"));
    members.add(rail);
    for (int i = 1; i <= 2; i++) {
      members.add(
          new Member(
              "tie" + i,
              MemberRole.OTHER,
              List.of(of(n, "south" + i + "-top"), of(n, "north" + i + "-top")),
              BAR,
              WEIGHTLESS,
              0,
              MemberEnd.RIGID,
              MemberEnd.RIGID));
    }
    List<Support> supports = new ArrayList<>();
    for (String foot : List.of("south1-foot", "south2-foot", "north1-foot", "north2-foot")) {
      supports.add(pinned(of(n, foot)));
    }
    List<Node> nodes = n.values().stream().distinct().toList();
    Surface top =
        new Surface(
            "top",
            List.of(
                of(n, "south1-corner"),
                of(n, "south2-corner"),
                of(n, "north2-corner"),
                of(n, "north1-corner")),
            List.of(south, north),
            finishes);
    return new StandingStructure(
        new Frame(nodes, members, supports),
        List.of(top),
        List.of(
            new Rail("rail", RailKind.TOP, List.of(rail), List.of(post1, post2), towards(0, 1))),
        List.of(userCases),
        List.of(),
        rules);
  }

  private Member beam(String name, String side, Map<String, Node> n) {
    return inset == 0
        ? member(name, MemberRole.FLOOR, of(n, side + "1-top"), of(n, side + "2-top"))
        : member(
            name,
            MemberRole.FLOOR,
            of(n, side + "1-corner"),
            of(n, side + "1-top"),
            of(n, side + "2-top"),
            of(n, side + "2-corner"));
  }

  private static Node of(Map<String, Node> nodes, String name) {
    return Optional.ofNullable(nodes.get(name)).orElseThrow();
  }

  static Member member(String name, MemberRole role, Node... nodes) {
    return new Member(name, role, List.of(nodes), BAR, ALLOY, 0, MemberEnd.RIGID, MemberEnd.RIGID);
  }

  /** One without weight, joined alike at both ends. */
  static Member weightless(String name, MemberRole role, MemberEnd ends, Node... nodes) {
    return new Member(name, role, List.of(nodes), BAR, WEIGHTLESS, 0, ends, ends);
  }

  static Support pinned(Node node) {
    return new Support(
        node,
        List.of(
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FREE,
            Restraint.FREE,
            Restraint.FREE));
  }

  static Figure figure(String id, double value, Dimension dimension) {
    return new Figure(id, id, "", value, dimension, INVENTED, "");
  }

  static RuleSet rules(double area, double point, double railLine, double railPoint, double sway) {
    Map<String, Figure> all = new TreeMap<>();
    put(all, RuleSet.FLOOR_AREA, area, Dimension.STRESS);
    put(all, RuleSet.FLOOR_POINT, point, Dimension.FORCE);
    put(all, RuleSet.GUARDRAIL_LINE, railLine, Dimension.LINE_LOAD);
    put(all, RuleSet.GUARDRAIL_POINT, railPoint, Dimension.FORCE);
    put(all, RuleSet.NOTIONAL_SWAY, sway, Dimension.NONE);
    return new RuleSet("case", "case", all, List.of(RailDirection.OUTWARD, RailDirection.INWARD));
  }

  private static void put(Map<String, Figure> all, String id, double value, Dimension dimension) {
    if (value > 0 || id.equals(RuleSet.FLOOR_AREA)) {
      all.put(id, figure(id, value, dimension));
    }
  }

  /** A rule with factors 0.9 and 1.1 on permanent load and 1.5 on what leads. */
  static EquilibriumRule rule(LeadingAction leading, boolean sway) {
    Map<ActionCategory, Figure> factors = new TreeMap<>();
    Figure q = figure("q", 1.5, Dimension.NONE);
    switch (leading) {
      case NONE -> {}
      case FLOOR -> factors.put(ActionCategory.IMPOSED, q);
      case GUARDRAIL -> factors.put(ActionCategory.GUARDRAIL, q);
      case WIND -> factors.put(ActionCategory.WIND, q);
    }
    return new EquilibriumRule(
        leading.name(),
        leading,
        figure("g-inf", 0.9, Dimension.NONE),
        figure("g-sup", 1.1, Dimension.NONE),
        factors,
        sway,
        INVENTED);
  }

  static Standing standing(double friction, Standing.Ballast... ballast) {
    return new Standing(
        false,
        Optional.of(new Standing.Friction(friction, INVENTED)),
        List.of(ballast),
        Optional.empty(),
        Standing.Ground.LEVEL,
        Map.of());
  }

  static Standing windy(Wind wind) {
    return new Standing(
        false,
        Optional.of(new Standing.Friction(0.5, INVENTED)),
        List.of(),
        Optional.of(wind),
        Standing.Ground.LEVEL,
        Map.of());
  }

  static Standing sloping(double slope, Vector downhill) {
    return new Standing(
        false,
        Optional.of(new Standing.Friction(0.5, INVENTED)),
        List.of(),
        Optional.empty(),
        new Standing.Ground(slope, downhill),
        Map.of());
  }

  StandingResult stands(RuleSet rules, Standing standing, EquilibriumRule... by) {
    return new StandingAnalysis(structure(rules), standing, List.of(by)).run();
  }
}
