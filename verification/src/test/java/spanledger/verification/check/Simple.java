package spanledger.verification.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;
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
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/** Structures so simple that statics gives the result. */
final class Simple {

  private static final Source INVENTED = Source.declared("invented for this case");

  /** N/mm², so that a utilisation times this and the modulus is a moment. */
  static final double STRENGTH = 100;

  /** mm³. */
  static final double MODULUS = 1e4;

  private static final Alloy ALLOY =
      new Alloy(
          "case alloy",
          Set.of(ProductForm.OPEN_PROFILE),
          new ThicknessRange(0, 100),
          STRENGTH,
          150,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          70000,
          27000,
          2.7e-6,
          INVENTED,
          "");

  /** Shear areas so large that bending alone decides, as in the published values. */
  private static final Section BAR =
      new Section(
          "case bar",
          new PropertyRow(
              1000,
              1e12,
              1e12,
              1e6,
              1e6,
              1e6,
              MODULUS,
              MODULUS,
              MODULUS,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              3,
              3,
              Optional.empty(),
              INVENTED));

  private Simple() {}

  static Figure figure(String id, double value, Dimension dimension) {
    return new Figure(id, id, "", value, dimension, INVENTED, "");
  }

  /** Rules with a resistance divisor of 1. */
  static RuleSet rules(Figure... figures) {
    Map<String, Figure> all = new TreeMap<>();
    for (Figure figure : figures) {
      all.put(figure.id(), figure);
    }
    all.put(RuleSet.RESISTANCE_DIVISOR, figure(RuleSet.RESISTANCE_DIVISOR, 1, Dimension.NONE));
    return new RuleSet("case", "case", all, List.of(RailDirection.OUTWARD));
  }

  /** One strength and one serviceability combination, led by floor or guardrail loads. */
  static CombinationSet combinations(
      LeadingAction leading, double permanent, double leader, boolean sway) {
    Map<ActionCategory, Figure> factors =
        Map.of(
            ActionCategory.PERMANENT,
            figure("G", permanent, Dimension.NONE),
            leading == LeadingAction.FLOOR ? ActionCategory.IMPOSED : ActionCategory.GUARDRAIL,
            figure("Q", leader, Dimension.NONE));
    List<CombinationTemplate> templates = new ArrayList<>();
    for (LimitState state : List.of(LimitState.STRENGTH, LimitState.SERVICEABILITY)) {
      templates.add(
          new CombinationTemplate(state.words(), state, leading, factors, sway, INVENTED));
    }
    return new CombinationSet("case", "case", templates);
  }

  static Member member(String name, MemberRole role, Node... nodes) {
    return new Member(name, role, List.of(nodes), BAR, ALLOY, 0, MemberEnd.RIGID, MemberEnd.RIGID);
  }

  /** Hands on neither moments nor, from one end to the other, torque. */
  static Member bolted(String name, MemberRole role, Node... nodes) {
    MemberEnd turning = new MemberEnd(Restraint.FREE, Restraint.FREE, Restraint.FREE, Vector.ZERO);
    return new Member(name, role, List.of(nodes), BAR, ALLOY, 0, turning, MemberEnd.PINNED);
  }

  /** Free to turn about Y, all else held. */
  static Support bearing(Node node) {
    return new Support(
        node,
        List.of(
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FIXED,
            Restraint.FREE,
            Restraint.FIXED));
  }

  static Support fixed(Node node) {
    return new Support(node, java.util.Collections.nCopies(6, Restraint.FIXED));
  }

  /**
   * Equal spans on bearings. The first span is one member; a stub of a thousandth of a span beyond
   * the first inner bearing is another, in which the moment over that bearing is the greatest.
   */
  static Frame spans(int count, double span) {
    List<Node> bearings = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      bearings.add(new Node("bearing-" + i, new Vector(i * span, 0, 0)));
    }
    List<Node> nodes = new ArrayList<>(bearings);
    List<Member> members = new ArrayList<>();
    members.add(member("first", MemberRole.FLOOR, bearings.get(0), bearings.get(1)));
    if (count > 1) {
      Node stub = new Node("stub", new Vector(span * 1.001, 0, 0));
      nodes.add(stub);
      List<Node> rest = new ArrayList<>(List.of(stub));
      rest.addAll(bearings.subList(2, count + 1));
      members.add(member("stub", MemberRole.FLOOR, bearings.get(1), stub));
      members.add(member("rest", MemberRole.FLOOR, rest.toArray(new Node[0])));
    }
    return new Frame(nodes, members, bearings.stream().map(Simple::bearing).toList());
  }
}
