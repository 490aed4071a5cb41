package spanledger.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;
import spanledger.material.Alloy;
import spanledger.material.ProductForm;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;

/**
 * The data files that come with this module: complete, consistent, and read as the standards say.
 */
class ShippedTablesTest {

  static Stream<RuleSet> ruleSets() {
    return RuleTables.ruleSets().stream();
  }

  static Stream<CombinationSet> combinationSets() {
    return CombinationTables.sets().stream();
  }

  /** EN 1999-1-1, Table 3.2b; the row of 6082-T6 is from memory. */
  @ParameterizedTest
  @CsvSource({
    "6060-T66, OPEN_PROFILE, 3, 160, 215, 65, 110",
    "6060-T66, OPEN_PROFILE, 3.1, 150, 195, 65, 110",
    "6063-T5, HOLLOW_PROFILE, 2, 130, 175, 60, 100",
    "6063-T6, TUBE, 4, 160, 195, 65, 110",
    "6061-T6, ROD_OR_BAR, 20, 240, 260, 115, 175",
    "6005A-T6, OPEN_PROFILE, 4, 225, 270, 115, 165",
    "6005A-T6, HOLLOW_PROFILE, 4, 215, 255, 115, 165",
    "6082-T6, HOLLOW_PROFILE, 6, 260, 310, 125, 185",
  })
  void alloysOfTheEuropeanTable(
      String name,
      ProductForm form,
      double thickness,
      double proof,
      double ultimate,
      double weldProof,
      double weldUltimate) {
    Alloy alloy = AlloyTables.standard().select(name, form, thickness, thickness);
    assertThat(alloy.proofStrength()).isEqualTo(proof);
    assertThat(alloy.ultimateStrength()).isEqualTo(ultimate);
    assertThat(alloy.heatAffected())
        .hasValueSatisfying(
            weld -> {
              assertThat(weld.proofStrength()).isEqualTo(weldProof);
              assertThat(weld.ultimateStrength()).isEqualTo(weldUltimate);
            });
    assertThat(alloy.youngsModulus()).isEqualTo(70_000);
    assertThat(alloy.shearModulus()).isEqualTo(27_000);
    assertThat(alloy.density()).isEqualTo(2.7e-6);
  }

  /** ASTM B221 in ksi; ksi = 6.894757 MPa (NIST SP 811), so half a unit of its seventh digit. */
  @ParameterizedTest
  @CsvSource({"6061-T6 ASTM B221, 3, 35, 38", "6063-T5 ASTM B221, 20, 15, 21"})
  void alloysOfTheAmericanTable(String name, double thickness, double proof, double ultimate) {
    Alloy alloy =
        AlloyTables.standard().select(name, ProductForm.OPEN_PROFILE, thickness, thickness);
    assertThat(alloy.proofStrength()).isCloseTo(proof * 6.894757, within(5e-7 * proof * 6.894757));
    assertThat(alloy.ultimateStrength())
        .isCloseTo(ultimate * 6.894757, within(5e-7 * ultimate * 6.894757));
  }

  /**
   * The printed ratios rho_o and rho_u of EN 1999-1-1, Table 3.2b, to two digits, guard against
   * slips in the strengths.
   */
  @ParameterizedTest
  @CsvSource({
    "6060-T5, 4, .42, .50", "6060-T5, 6, .50, .57", "6060-T6, 5, .43, .59",
    "6060-T64, 5, .50, .56", "6060-T66, 2, .41, .51", "6061-T4, 5, .86, .83",
    "6061-T6, 5, .48, .67", "6063-T5, 2, .46, .57", "6063-T5, 5, .55, .63",
    "6063-T6, 5, .41, .56", "6063-T66, 5, .38, .53", "6063-T66, 12, .42, .58",
    "6005A-T6, 4, .51, .61", "6005A-T6, 7, .53, .63", "6005A-T6, 12, .58, .66",
    "6106-T6, 5, .48, .64", "6082-T4, 5, .91, .78", "6082-T5, 4, .54, .69",
    "6082-T6, 4, .50, .64", "6082-T6, 8, .48, .60",
  })
  void weldStrengthsHaveThePrintedRatio(
      String name, double thickness, double proofRatio, double ultimateRatio) {
    Alloy alloy =
        AlloyTables.standard().select(name, ProductForm.OPEN_PROFILE, thickness, thickness);
    assertThat(alloy.heatAffected())
        .hasValueSatisfying(
            weld -> {
              // Half a unit of the last printed digit, both ends included.
              assertThat(weld.proofStrength() / alloy.proofStrength())
                  .isCloseTo(proofRatio, within(0.0051));
              assertThat(weld.ultimateStrength() / alloy.ultimateStrength())
                  .isCloseTo(ultimateRatio, within(0.0051));
            });
  }

  @Test
  void everyAlloyRowHasItsSources() {
    assertThat(AlloyTables.standard().rows())
        .hasSize(34)
        .allSatisfy(
            alloy -> {
              assertSound(alloy.source());
              assertThat(alloy.note()).contains("E, G and density: ");
            });
  }

  /** Extrusions yield in compression as in tension (Aluminum Design Manual, from memory). */
  @Test
  void everyTemperBelongsToAnAlloyRowAndYieldsAlike() {
    assertThat(TemperTables.standard().rows())
        .hasSize(9)
        .allSatisfy(
            temper -> {
              assertSound(temper.source());
              assertThat(AlloyTables.standard().rows())
                  .anySatisfy(
                      alloy -> {
                        assertThat(TemperTables.standard().find(alloy)).contains(temper);
                        assertThat(temper.compressiveYield()).isEqualTo(alloy.proofStrength());
                        assertThat(temper.weldedCompressiveYield())
                            .hasValue(alloy.heatAffected().orElseThrow().proofStrength());
                      });
            });
  }

  @Test
  void ruleSetsAreFoundById() {
    assertThat(RuleTables.ruleSets())
        .extracting(RuleSet::id)
        .containsExactly("as-1657", "en-iso-14122", "osha-1910", "osha-1910-asd");
    assertThat(RuleTables.ruleSet("as-1657").id()).isEqualTo("as-1657");
    assertThatThrownBy(() -> RuleTables.ruleSet("as-1675"))
        .hasMessage(
            "There is no rule set \"as-1675\". Did you mean as-1657? Known: as-1657, en-iso-14122, osha-1910, osha-1910-asd.");
    assertThatThrownBy(() -> CombinationTables.set("en1990"))
        .hasMessage(
            "There is no combination set \"en1990\". Did you mean en-1990? Known: as-nzs-1170.0, asce-7-asd, asce-7-lrfd, en-1990.");
  }

  /** Figures in core units: MPa, N, N/mm, mm; lbf = 4.448222 N, psf = 47.88026 Pa (NIST SP 811). */
  @ParameterizedTest
  @CsvSource({
    "as-1657, floor.area, 0.0025",
    "as-1657, guardrail.point, 600",
    "as-1657, limit.floor-deflection-ratio, 0.01",
    "as-1657, resistance.factor, 0.95",
    "as-1657, notional.sway, 0.015",
    "en-iso-14122, floor.area, 0.002",
    "en-iso-14122, guardrail.line, 0.3",
    "en-iso-14122, resistance.divisor, 1.1",
    "en-iso-14122, notional.sway, 0.005",
    "osha-1910, floor.area, 0.002872816",
    "osha-1910, guardrail.point, 889.6443",
    "osha-1910, guardrail.line, 0.7296951",
    "osha-1910, midrail.point, 667.2332",
    "osha-1910, guardrail.height-least, 990.6",
  })
  void figuresInCoreUnits(String set, String figure, double expected) {
    assertThat(RuleTables.ruleSet(set).figure(figure).value())
        .isCloseTo(expected, within(5e-7 * expected));
  }

  @ParameterizedTest
  @MethodSource("ruleSets")
  void everyRuleSetHasWhatEveryJobNeeds(RuleSet rules) {
    for (String id :
        List.of(
            RuleSet.FLOOR_AREA,
            RuleSet.FLOOR_POINT,
            RuleSet.GUARDRAIL_LINE,
            RuleSet.GUARDRAIL_POINT,
            RuleSet.MIDRAIL_POINT,
            RuleSet.FLOOR_DEFLECTION_RATIO,
            RuleSet.RAIL_DEFLECTION,
            RuleSet.SWAY_DEFLECTION_RATIO,
            RuleSet.NOTIONAL_SWAY)) {
      assertThat(rules.figure(id).value()).as(id).isPositive();
    }
    assertThat(rules.railDirections()).contains(RailDirection.OUTWARD);
    boolean factor = rules.find(RuleSet.RESISTANCE_FACTOR).isPresent();
    boolean divisor = rules.find(RuleSet.RESISTANCE_DIVISOR).isPresent();
    assertThat(factor ^ divisor).as("either φ or γ").isTrue();
  }

  @ParameterizedTest
  @MethodSource("ruleSets")
  void everyFigureHasItsSource(RuleSet rules) {
    assertThat(rules.inOrder()).allSatisfy(figure -> assertSound(figure.source()));
  }

  /** Where the sources disagree, the figure taken is the more onerous one and its note says so. */
  @Test
  void conflictsAreTakenOnTheSafeSideAndTold() {
    RuleSet rules = RuleTables.ruleSet("as-1657");
    for (String id : List.of(RuleSet.FLOOR_POINT, RuleSet.GUARDRAIL_LINE)) {
      Figure figure = rules.figure(id);
      assertThat(figure.source().confidence()).isEqualTo(Confidence.FROM_MEMORY);
      assertThat(figure.note()).contains("Sources differ", "the larger value is taken");
    }
    assertThat(rules.figure(RuleSet.FLOOR_POINT).value()).isEqualTo(1100);
    assertThat(rules.figure(RuleSet.GUARDRAIL_LINE).value()).isEqualTo(0.35);
  }

  /** EN 1990, worked example of expression 6.10: 1.35 G + 1.5 leading + 0.9 wind (psi_0 0.6). */
  @Test
  void europeanFactors() {
    CombinationTemplate wind = template("en-1990", "STR 1.35G+1.5Q+0.9W");
    assertThat(wind.factor(ActionCategory.PERMANENT)).isEqualTo(1.35);
    assertThat(wind.factor(ActionCategory.IMPOSED)).isEqualTo(1.5);
    assertThat(wind.factor(ActionCategory.OTHER)).isEqualTo(1.5);
    assertThat(wind.factor(ActionCategory.WIND)).isEqualTo(0.9);
    assertThat(wind.factor(ActionCategory.GUARDRAIL)).isZero();
    assertThat(template("en-1990", "EQU 0.90G+1.5R").factor(ActionCategory.PERMANENT))
        .isEqualTo(0.9);
  }

  /** AS/NZS 1170.0, 4.2.2: 1.35G; 1.2G + 1.5Q; 0.9G + Wu. */
  @Test
  void australianFactors() {
    assertThat(template("as-nzs-1170.0", "STR 1.35G").factor(ActionCategory.PERMANENT))
        .isEqualTo(1.35);
    CombinationTemplate floor = template("as-nzs-1170.0", "STR 1.2G+1.5Q");
    assertThat(floor.factor(ActionCategory.PERMANENT)).isEqualTo(1.2);
    assertThat(floor.factor(ActionCategory.IMPOSED)).isEqualTo(1.5);
    assertThat(floor.withNotionalSway()).isTrue();
    assertThat(template("as-nzs-1170.0", "STR 0.9G+Wu").factor(ActionCategory.WIND)).isEqualTo(1);
  }

  /**
   * New York City Building Code 1605.3.1, equations 16-13, 16-16 and 16-19: D + L, D + 0.6W, 0.6D +
   * 0.6W; ASCE 7-22, 2.4.1, line 6, as a public summary has it: D + 0.75L + 0.75(0.6W).
   */
  @Test
  void americanFactorsForAllowableStrength() {
    CombinationTemplate floor = template("asce-7-asd", "STR D+L");
    assertThat(floor.factor(ActionCategory.PERMANENT)).isEqualTo(1);
    assertThat(floor.factor(ActionCategory.IMPOSED)).isEqualTo(1);
    assertThat(template("asce-7-asd", "STR D+0.6W").factor(ActionCategory.WIND)).isEqualTo(0.6);
    CombinationTemplate lifting = template("asce-7-asd", "STR 0.6D+0.6W");
    assertThat(lifting.factor(ActionCategory.PERMANENT)).isEqualTo(0.6);
    assertThat(lifting.factor(ActionCategory.WIND)).isEqualTo(0.6);
    CombinationTemplate both = template("asce-7-asd", "STR D+0.45W+0.75L");
    assertThat(both.factor(ActionCategory.IMPOSED)).isEqualTo(0.75);
    assertThat(both.factor(ActionCategory.WIND)).isCloseTo(0.75 * 0.6, within(1e-12));
  }

  /** Each format has loads, a rule set and a member code. */
  @Test
  void combinationsHaveARuleSetAndACodeOfTheirFormat() {
    for (CombinationSet set : CombinationTables.sets()) {
      assertThat(set.format()).as(set.id()).isPresent();
      assertThat(RuleTables.ruleSets()).extracting(RuleSet::format).contains(set.format());
      assertThat(MemberRuleTables.all()).extracting(CodeFigures::format).contains(set.format());
    }
    RuleSet allowable = RuleTables.ruleSet("osha-1910-asd");
    assertThat(allowable.find(RuleSet.RESISTANCE_FACTOR)).isEmpty();
    assertThat(allowable.figure(RuleSet.GUARDRAIL_POINT))
        .isEqualTo(RuleTables.ruleSet("osha-1910").figure(RuleSet.GUARDRAIL_POINT));
  }

  @ParameterizedTest
  @MethodSource("combinationSets")
  void eachImposedActionLeadsInEachLimitStateInTurn(CombinationSet set) {
    for (LimitState state : LimitState.values()) {
      Set<LeadingAction> leading = EnumSet.noneOf(LeadingAction.class);
      set.templates().stream()
          .filter(t -> t.limitState() == state)
          .forEach(t -> leading.add(t.leading()));
      assertThat(leading)
          .as("%s, %s", set.id(), state)
          .contains(LeadingAction.FLOOR, LeadingAction.GUARDRAIL);
    }
  }

  @ParameterizedTest
  @MethodSource("combinationSets")
  void holdingDownHasNoMoreThanItsOwnWeight(CombinationSet set) {
    assertThat(set.templates())
        .filteredOn(t -> t.limitState() == LimitState.STABILITY)
        .anySatisfy(t -> assertThat(t.factor(ActionCategory.PERMANENT)).isLessThan(1));
    assertThat(set.templates())
        .filteredOn(t -> t.limitState() == LimitState.SERVICEABILITY)
        .allSatisfy(t -> assertThat(t.factor(ActionCategory.PERMANENT)).isEqualTo(1))
        .noneSatisfy(t -> assertThat(t.withNotionalSway()).isTrue());
  }

  /**
   * A name says its factors: "STR 1.2G+1.5Q" must have 1.2 and 1.5 in it, so that data and names
   * cannot drift apart.
   */
  @ParameterizedTest
  @MethodSource("combinationSets")
  void namesSayTheirFactors(CombinationSet set) {
    Set<String> names = new HashSet<>();
    for (CombinationTemplate template : set.templates()) {
      assertThat(names.add(template.name())).as(template.name()).isTrue();
      assertSound(template.source());
      String terms = template.name().substring(4);
      for (String term : terms.split("\\+", -1)) {
        String letter = term.replaceAll("[0-9.u]", "");
        String digits = term.replaceAll("[^0-9.]", "");
        double expected = digits.isEmpty() ? 1 : Double.parseDouble(digits);
        assertThat(template.factor(category(letter))).as(template.name()).isEqualTo(expected);
      }
      assertThat(template.factors().keySet().stream().filter(c -> c != ActionCategory.OTHER))
          .as(template.name())
          .hasSize(terms.split("\\+", -1).length);
      template.factors().values().forEach(factor -> assertSound(factor.source()));
    }
  }

  private static ActionCategory category(String letter) {
    return switch (letter) {
      case "G", "D" -> ActionCategory.PERMANENT;
      case "Q", "L" -> ActionCategory.IMPOSED;
      case "R" -> ActionCategory.GUARDRAIL;
      case "W" -> ActionCategory.WIND;
      default -> throw new IllegalArgumentException(letter);
    };
  }

  private static CombinationTemplate template(String set, String name) {
    return CombinationTables.set(set).templates().stream()
        .filter(t -> t.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static void assertSound(Source source) {
    assertThat(source.work()).isNotBlank();
    assertThat(source.confidence())
        .isIn(
            Confidence.PUBLISHED,
            Confidence.FROM_MEMORY,
            Confidence.DERIVED,
            Confidence.COMMON_PRACTICE);
    if (source.confidence() == Confidence.PUBLISHED) {
      assertThat(source.place()).as("where in %s", source.work()).isNotBlank();
    }
  }
}
