package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.action.ActionPlanner;
import spanledger.action.CombinationSet;
import spanledger.action.RuleSet;
import spanledger.analysis.FrameAnalysis;
import spanledger.assembly.Assembly;
import spanledger.assembly.Bracing;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.Deck;
import spanledger.assembly.EdgeBeams;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Generation;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.assembly.Platform;
import spanledger.assembly.PlatformSite;
import spanledger.assembly.Posts;
import spanledger.assembly.ProductLimits;
import spanledger.assembly.Side;
import spanledger.assembly.Stair;
import spanledger.assembly.StairSite;
import spanledger.deck.PanelRow;
import spanledger.deck.TestedPanel;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.geometry.GeometryFinding;
import spanledger.geometry.GeometryReview;
import spanledger.material.Alloy;
import spanledger.material.ProductForm;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.tables.AlloyTables;
import spanledger.tables.CombinationTables;
import spanledger.tables.RuleTables;
import spanledger.verdict.Assessor;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/**
 * Facts of the trade, each common practice, no source: whether the program, given plausible
 * sections of its own, comes to conclusions that agree with them. No figure here is an answer to
 * aim at; all sections are invented.
 */
class TradeFactsTest {

  private static final Part POST = part("post", new RectangularHollow(60, 60, 4, 4), "6082-T6");
  private static final Part EDGE = part("edge", new RectangularHollow(150, 50, 4, 4), "6082-T6");
  private static final Part BEARER = part("bearer", new RectangularHollow(80, 40, 3, 3), "6082-T6");
  private static final Part RAIL = pinned("rail", new RoundHollow(48, 4), "6063-T6");

  private static Part part(String name, Shape shape, String alloy) {
    Alloy chosen = AlloyTables.standard().select(alloy, ProductForm.HOLLOW_PROFILE, 3, 4);
    return new Part(name, new Section(name, shape), alloy, chosen, 0, MemberEnd.RIGID);
  }

  private static Part pinned(String name, Shape shape, String alloy) {
    Part rigid = part(name, shape, alloy);
    MemberEnd end =
        new MemberEnd(
            Restraint.FIXED, Restraint.FREE, Restraint.FREE, Restraint.FIXED, Vector.ZERO);
    return new Part(name, rigid.section(), alloy, rigid.alloy(), 0, end);
  }

  /** One bay, feet fixed, a guardrail on the north side only. */
  private static Platform bay(double length, double railSpacing) {
    return new Platform(
        "floor1",
        Vector.ZERO,
        length,
        1000,
        1000,
        List.of(length),
        new Posts(POST, true, Collections.nCopies(6, Restraint.FIXED), Map.of()),
        new EdgeBeams(EDGE, 1),
        Optional.empty(),
        new CrossBearers(BEARER, 600, 0),
        new Deck(1.2e-4, 1, Optional.empty(), Optional.empty()),
        new Bracing(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
        Optional.of(
            new Guardrail(
                900,
                RAIL,
                List.of(),
                Optional.empty(),
                Set.of(Side.NORTH),
                Optional.of(POST),
                railSpacing,
                List.of(),
                List.of())),
        PlatformSite.UNKNOWN);
  }

  private static List<Verdict> judged(Platform platform) {
    GeneratedFrame made = Described.generate(platform).frame().orElseThrow();
    RuleSet rules = RuleTables.ruleSet("as-1657");
    CombinationSet combinations = CombinationTables.set("as-nzs-1170.0");
    return new Assessor(rules, made.rails(), 2)
        .assess(
            new FrameAnalysis(made.frame()),
            ActionPlanner.plan(
                made.frame(), made.surfaces(), made.rails(), List.of(), rules, combinations),
            combinations)
        .verdicts();
  }

  private static double greatest(List<Verdict> verdicts, String check, String subject) {
    return verdicts.stream()
        .filter(v -> v.check().equals(check) && v.subject().startsWith(subject))
        .filter(v -> v.status() == Status.PASSED || v.status() == Status.FAILED)
        .mapToDouble(Verdict::utilisation)
        .max()
        .orElseThrow();
  }

  private static List<Verdict> fourApart = List.of();
  private static List<Verdict> fourWithPostBetween = List.of();
  private static List<Verdict> threeApart = List.of();

  @BeforeAll
  static void judge() {
    fourApart = judged(bay(4000, Double.POSITIVE_INFINITY));
    fourWithPostBetween = judged(bay(4000, 3000));
    threeApart = judged(bay(3000, 3000));
  }

  /** Floor posts may stand up to 4 m apart: a usual edge beam bears that. */
  @Test
  void floorPostsMayStandFourMetresApart() {
    assertThat(greatest(fourApart, "combined stress", "floor1/edge-")).isLessThan(1);
    assertThat(greatest(fourApart, "deflection", "floor1/edge-")).isLessThan(1);
  }

  /** A usual top rail wants support every 3 m, so a rail post stands between posts 4 m apart. */
  @Test
  void aTopRailWantsSupportEveryThreeMetres() {
    String rail = "rail under guardrail loads";

    assertThat(greatest(threeApart, rail, "floor1/top-")).isLessThan(1);
    assertThat(greatest(fourApart, rail, "floor1/top-")).isGreaterThan(1);
    assertThat(greatest(fourWithPostBetween, rail, "floor1/top-")).isLessThan(1);
  }

  /** A top rail about 900 mm above the floor: what each rule set says of it, by its own figures. */
  @ParameterizedTest
  @CsvSource({
    // as-1657 900 to 1100 mm, en-iso-14122 1100 mm, osha-1910 39 to 45 in (991 to 1143 mm)
    "as-1657, 900, true",
    "as-1657, 890, false",
    "as-1657, 1110, false",
    "en-iso-14122, 900, false",
    "en-iso-14122, 1100, true",
    "osha-1910, 900, false",
    "osha-1910, 1000, true",
    "osha-1910, 1150, false",
  })
  void topRailsOfNineHundred(String rules, double height, boolean kept) {
    Guardrail plain = Described.guardrail(List.of());
    Platform platform =
        Described.with(
            Described.platform(2400, 1000, 2000, 2),
            new Guardrail(
                height,
                plain.topRail(),
                List.of(),
                plain.toeBoard(),
                plain.sides(),
                plain.railPost(),
                plain.postSpacing(),
                List.of(),
                List.of()));

    assertThat(
            geometry(platform, Optional.empty(), Optional.empty(), rules).stream()
                .filter(f -> f.check().equals("height of the guardrail"))
                .allMatch(f -> f.utilisation() <= 1))
        .isEqualTo(kept);
  }

  /** Openings in decking over people stay under 10 mm. */
  @ParameterizedTest
  @CsvSource({
    "as-1657, 8, true, true",
    "as-1657, 12, true, false",
    "en-iso-14122, 12, true, true",
    "en-iso-14122, 22, true, false",
    "en-iso-14122, 22, false, true",
    "en-iso-14122, 36, false, false",
  })
  void openingsOverPeople(String rules, double opening, boolean people, boolean kept) {
    Platform platform = opened(opening, people);

    assertThat(
            geometry(platform, Optional.empty(), Optional.empty(), rules).stream()
                .filter(f -> f.check().startsWith("opening in the decking"))
                .allMatch(f -> f.isChecked() && f.utilisation() <= 1))
        .isEqualTo(kept);
  }

  /** AS 1657 has no figure where nobody is below: that is said, and not passed. */
  @Test
  void openingsWithoutPeopleBelowAreNotPassedWhereTheRulesAreSilent() {
    assertThat(
            geometry(opened(200, false), Optional.empty(), Optional.empty(), "as-1657").stream()
                .filter(f -> f.check().startsWith("opening in the decking")))
        .isNotEmpty()
        .noneMatch(GeometryFinding::isChecked);
  }

  /** The opening of the panels counts where it is wider than the one that the place has. */
  @Test
  void theOpeningOfThePanelsCounts() {
    Platform place = opened(8, true);
    Platform wide =
        PlatformVariant.of(place)
            .with(new Deck(1e-4, 1, Optional.of("grating"), Optional.of(12.0)))
            .platform();

    assertThat(
            geometry(wide, Optional.empty(), Optional.empty(), "as-1657").stream()
                .filter(f -> f.check().startsWith("opening in the decking"))
                .findFirst()
                .orElseThrow()
                .size())
        .contains(12.0);
  }

  /** Cross bearers stand at most 700 mm from the ends. */
  @ParameterizedTest
  @CsvSource({"500, true", "700, true", "705, false"})
  void firstBearersStandAtMostSevenHundredFromTheEnds(double fromEnds, boolean kept) {
    Platform plain = Described.platform(4800, 1000, 2000, 2);
    Platform platform =
        Described.with(plain, new CrossBearers(Described.PART, 800, fromEnds), plain.bracing());
    ProductLimits limits = product();

    Guardrail rail = Described.guardrail(List.of());
    Platform open =
        Described.with(
            platform,
            new Guardrail(
                rail.height(),
                rail.topRail(),
                rail.middleRails(),
                rail.toeBoard(),
                Set.of(Side.NORTH, Side.SOUTH),
                rail.railPost(),
                rail.postSpacing(),
                List.of(),
                List.of()));

    assertThat(
            geometry(open, Optional.of(limits), Optional.empty(), "as-1657").stream()
                .filter(f -> f.check().equals("bearer from the end"))
                .allMatch(f -> f.utilisation() <= 1))
        .isEqualTo(kept);
  }

  /**
   * Rises of one flight are equal to a few millimetres: treads are pre-drilled, so all but the
   * first are equal, and levelling the first to the second makes all equal.
   */
  @ParameterizedTest
  @CsvSource({"220, true", "217, true", "214, false", "232, false"})
  void levellingTheFirstRiseMakesAllEqual(double first, boolean kept) {
    List<Double> rises = new ArrayList<>(Collections.nCopies(10, 220.0));
    rises.set(0, first);
    Stair plain = Described.stair(Side.EAST, 0, 1000, 10, 240);
    Stair built =
        new Stair(
            plain.name(),
            plain.to(),
            plain.side(),
            plain.offset(),
            plain.from(),
            plain.ground(),
            plain.width(),
            plain.rises(),
            plain.going(),
            plain.pitch(),
            plain.stringer(),
            plain.tread(),
            plain.treadPanel(),
            plain.foot(),
            plain.rails(),
            new StairSite(Optional.empty(), Optional.empty(), rises));

    List<GeometryFinding> findings =
        geometry(
            Described.platform(2400, 1000, 2200, 2),
            Optional.empty(),
            Optional.of(built),
            "as-1657");

    assertThat(
            findings.stream()
                .filter(f -> f.check().equals("difference of rises"))
                .allMatch(f -> f.isChecked() && f.utilisation() <= 1))
        .isEqualTo(kept);
    // Ten rises over 2.2 m, going 240 mm: 42.5 degrees, within 30 to 45.
    assertThat(findings)
        .filteredOn(f -> f.check().equals("pitch"))
        .allMatch(f -> f.utilisation() <= 1);
  }

  /**
   * A panel that is rated to 700 mm goes with bearers that are no farther apart, and no farther.
   */
  @Test
  void panelsAreRatedForTheDistanceOfTheBearers() {
    TestedPanel panel =
        new TestedPanel(
            "grating",
            List.of(row(400, 0.02), row(700, 0.006)),
            true,
            1,
            Optional.empty(),
            Optional.empty(),
            "invented",
            0,
            Optional.empty());

    assertThat(panel.rowBefore(700)).isPresent();
    assertThat(panel.rowBefore(705)).isEmpty();
  }

  private static PanelRow row(double span, double uniform) {
    return new PanelRow(span, uniform, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static ProductLimits product() {
    return new ProductLimits(
        Optional.of(700.0),
        Optional.of(4000.0),
        Optional.of(3000.0),
        Optional.empty(),
        Optional.empty(),
        "common practice, no source");
  }

  private static Platform opened(double opening, boolean people) {
    return PlatformVariant.of(Described.platform(2400, 1000, 2000, 2))
        .with(new PlatformSite(Optional.empty(), Optional.empty(), Optional.of(opening), people))
        .platform();
  }

  private static List<GeometryFinding> geometry(
      Platform platform, Optional<ProductLimits> product, Optional<Stair> stair, String rules) {
    Assembly assembly = new Assembly(List.of(platform), stair.stream().toList(), Set.of(), product);
    Generation generation = spanledger.assembly.AssemblyGenerator.generate(assembly);
    return GeometryReview.of(assembly, generation.frame().orElseThrow(), RuleTables.ruleSet(rules));
  }
}
