package spanledger.job;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.action.CombinationSet;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.bolt.BoltTable;
import spanledger.material.Alloy;
import spanledger.material.AlloyTable;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;

/** Tables invented for tests of reading alone; no figure of theirs is meant to be right. */
final class SmallTables {

  private static final Source INVENTED = new Source("invented", "", Confidence.INVENTED);

  private static final String CODE = "en-1999-1-1";

  private SmallTables() {}

  static Tables tables() {
    Map<String, CombinationSet> combinations = new HashMap<>();
    for (String id : List.of("as-nzs-1170.0", "en-1990")) {
      combinations.put(id, new CombinationSet(id, id, List.of(), List.of(equilibrium())));
    }
    Map<String, RuleSet> rules = new HashMap<>();
    for (String id : List.of("as-1657", "en-iso-14122")) {
      rules.put(id, rules(id));
    }
    return new Tables(
        new AlloyTable(List.of(alloy("6063-T6", 25), alloy("6082-T6", 5), alloy("6060-T66", 3))),
        rules,
        combinations,
        Map.of(CODE, new MemberCodeChoice(figures(), SmallTables::code)),
        Map.of(),
        bolts());
  }

  private static BoltTable bolts() {
    return new BoltTable(
        List.of(new BoltGrade("A4-70", 700, 450, true, 24, INVENTED, INVENTED, "")),
        List.of(
            new BoltSize(
                "M8", 8, 1.25, 36.6, 13, 5.3, 6.5, 9, 8.4, 16, 1.6, INVENTED, INVENTED, "")));
  }

  private static EquilibriumRule equilibrium() {
    return new EquilibriumRule(
        "EQU G",
        LeadingAction.NONE,
        figure("g-equ-inf", "0.9", 0.9, Dimension.NONE),
        figure("g-equ-sup", "1.1", 1.1, Dimension.NONE),
        Map.of(),
        true,
        INVENTED);
  }

  private static CodeFigures figures() {
    Figure factor = figure("gamma-m1", "1.1", 1.1, Dimension.NONE);
    return new CodeFigures(CODE, CODE, Map.of(factor.id(), factor));
  }

  /** A code that judges nothing. */
  private static MemberCode code(CodeFigures figures) {
    return new MemberCode() {
      @Override
      public CodeFigures figures() {
        return figures;
      }

      @Override
      public String id() {
        return figures.id();
      }

      @Override
      public String title() {
        return figures.title();
      }

      @Override
      public Preparation prepare(MemberCase member) {
        return new NotCheckable(member, List.of(new NotCheckable.Lack("no code", "a code")));
      }
    };
  }

  private static RuleSet rules(String id) {
    Map<String, Figure> figures = new HashMap<>();
    figures.put(
        RuleSet.FLOOR_AREA, figure(RuleSet.FLOOR_AREA, "2.5 kN/m2", 2.5e-3, Dimension.STRESS));
    if (id.startsWith("en")) {
      figures.put(
          RuleSet.FLOOR_DEFLECTION_RATIO,
          figure(RuleSet.FLOOR_DEFLECTION_RATIO, "1/200", 0.005, Dimension.NONE));
    }
    return new RuleSet(id, id, figures, List.of(RailDirection.OUTWARD));
  }

  private static Figure figure(String id, String text, double value, Dimension dimension) {
    return new Figure(id, "words for " + id, text, value, dimension, INVENTED, "");
  }

  private static Alloy alloy(String designation, double thickest) {
    return new Alloy(
        designation,
        EnumSet.allOf(ProductForm.class),
        new ThicknessRange(0, thickest),
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
  }
}
