package spanledger.picture.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.FrameSolution;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.envelope.Instance;
import spanledger.frame.Segment;
import spanledger.job.Job;
import spanledger.picture.Drawing;
import spanledger.picture.SvgFile;
import spanledger.picture.page.Box;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

class StructurePicturesTest {

  private static final class Beams {
    static final Job JOB = Example.job("first-beam");
    static final Assessment ASSESSMENT = Example.assessment(JOB);
    static final Subject SUBJECT = Subject.of(JOB, Example.LETTERING);
  }

  private static Map<String, Drawing> shapes(Subject subject) {
    Map<String, Drawing> all = new LinkedHashMap<>();
    all.put("general", GeneralPicture.of(subject));
    all.putAll(PlanPicture.all(subject));
    all.putAll(ElevationPicture.all(subject));
    all.putAll(StairPicture.all(subject));
    all.putAll(GuardrailPicture.all(subject));
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {"packing-house-two-flight-walkway", "packing-house-sorting-stand"})
  void everySegmentOfEveryMemberIsDrawnOnce(String name) {
    Subject subject = Example.subject(name);
    List<String> segments =
        subject.frame().segments().stream()
            .map(s -> s.member().name() + s.from() + s.to())
            .toList();
    MemberUses nothing = new MemberUses(Map.of(), Map.of());

    for (Scene scene :
        List.of(GeneralPicture.scene(subject), UtilisationPicture.scene(subject, nothing))) {
      assertThat(scene.bars().stream().map(b -> b.member() + b.from() + b.to()))
          .containsExactlyInAnyOrderElementsOf(segments);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-beam",
        "packing-house-sorting-stand",
        "packing-house-maintenance-stand",
        "packing-house-two-flight-walkway",
        "packing-house-inspection-platform-by-parts"
      })
  void wordsDoNotOverlapAndStayOnThePaper(String name) {
    shapes(Example.subject(name)).forEach(StructurePicturesTest::requireLegible);
  }

  @Test
  void wordsOfPicturesOfResultsDoNotOverlap() {
    StructureAlbum.of(Beams.JOB, Beams.ASSESSMENT, Example.LETTERING)
        .pictures()
        .forEach(StructurePicturesTest::requireLegible);
  }

  private static void requireLegible(String name, Drawing drawing) {
    List<Box> boxes = LabelsTest.boxes(drawing);
    List<String> words = Example.words(drawing);
    for (int i = 0; i < boxes.size(); i++) {
      Box box = boxes.get(i);
      assertThat(
              box.left() >= 0 && box.right() <= drawing.width() && box.bottom() <= drawing.height())
          .as("%s: %s is on the paper", name, words.get(i))
          .isTrue();
      for (int j = 0; j < i; j++) {
        assertThat(box.meets(boxes.get(j)))
            .as("%s: %s over %s", name, words.get(i), words.get(j))
            .isFalse();
      }
    }
  }

  /**
   * Given a walkway of 4 bays of 1500 mm, 1000 mm wide, and flights of 8 rises over 1500 mm, the
   * lower with a going of 250 mm, rails at 500 and 1000 mm. Expected: R = 1500/8 = 187.5, atan(R/g)
   * = 36.87 degrees, 2R + g = 625.
   */
  @Test
  void dimensionsAreThoseOfTheDescription() {
    Map<String, Drawing> pictures = shapes(Example.subject("packing-house-two-flight-walkway"));

    assertThat(Example.words(picture(pictures, "plan-2")))
        .contains("4 × 1500 = 6000", "8 × 750 = 6000", "1000", "up");
    assertThat(Example.words(picture(pictures, "elevation-south")))
        .contains("11200", "4 × 1500 = 6000", "4100", "+3000 floor", "+1500 floor", "±0 feet");
    assertThat(Example.words(picture(pictures, "stair-2")))
        .contains("8 × 187.5 = 1500", "8 × 250 = 2000", "36.9°", "500", "1000")
        .anyMatch(words -> words.contains("625 mm"));
    assertThat(Example.words(picture(pictures, "guardrails-1")))
        .contains("4 × 1500 = 6000", "525", "500", "1100");
  }

  private static Drawing picture(Map<String, Drawing> pictures, String name) {
    Drawing found = pictures.get(name);
    assertThat(pictures).containsKey(name);
    return Objects.requireNonNull(found);
  }

  /** The picture draws a state; the sum over load cases with their factors is another way there. */
  @Test
  void momentsAreThoseOfTheSumOverLoadCases() {
    Governed governed = Governed.strength(Beams.ASSESSMENT).orElseThrow();
    Instance instance = governed.governing().instance();
    List<LoadCase> cases = new ArrayList<>();
    List<Double> factors = new ArrayList<>();
    for (Combination.Term term : instance.terms()) {
      cases.add(term.loadCase());
      factors.add(instance.combination().factor(term));
    }
    cases.add(new LoadCase("standing", List.of(), instance.standing().orElseThrow().placed()));
    factors.add(instance.standingFactor());
    FrameSolution solution = new FrameAnalysis(Beams.JOB.frame()).solve(cases);
    double greatest = 0;
    for (SegmentShape shape : governed.shapes(Beams.JOB.frame())) {
      Segment segment = shape.segment();
      SegmentResponse sum =
          SegmentResponse.sum(
              cases.stream().map(c -> solution.response(segment, c)).toList(),
              factors.stream().mapToDouble(f -> f).toArray());
      for (MomentPicture.Ordinate ordinate : MomentPicture.ordinates(shape)) {
        double expected = sum.at(ordinate.x(), Side.BEFORE).momentY();
        // Both solve the same equations; rounding of sums of about 1e6 N·mm.
        assertThat(ordinate.aboutY()).isEqualTo(expected, within(1e-3));
        assertThat(ordinate.stretchedByY().norm()).isEqualTo(Math.abs(expected), within(1e-3));
        // A beam between two bearings is stretched below.
        assertThat(ordinate.stretchedByY().z()).isLessThan(1e-3);
        greatest = Math.max(greatest, Math.abs(expected));
      }
    }
    // Bending of a beam: the stress of the verdict times the section modulus is the moment.
    double modulus =
        governed.governing().station().segment().member().section().properties().elasticModulusY();
    assertThat(governed.verdict().demand() * modulus).isEqualTo(greatest, within(1e-6 * greatest));
  }

  @Test
  void whatIsLabelledIsTheDemandOfTheWorstVerdicts() {
    Verdict strength = worst("MPa");
    Verdict deflection = worst("mm");

    List<String> moments =
        Example.words(MomentPicture.of(Beams.SUBJECT, Beams.ASSESSMENT).orElseThrow());
    List<String> moved =
        Example.words(DeflectionPicture.of(Beams.SUBJECT, Beams.ASSESSMENT).orElseThrow());

    assertThat(String.join(" ", moments))
        .contains("demand " + Overlay.three(strength.demand()) + " MPa");
    assertThat(moved)
        .contains(deflection.check() + " " + Overlay.three(deflection.demand()) + " mm");
  }

  private static Verdict worst(String unit) {
    return Beams.ASSESSMENT.verdicts().stream()
        .filter(v -> v.unit().equals(unit) && v.status() != Status.DEMAND)
        .filter(v -> v.group() != CheckGroup.GEOMETRY)
        .reduce((one, other) -> other.utilisation() > one.utilisation() ? other : one)
        .orElseThrow();
  }

  /** Whatever else it passes, a member that fails one check is drawn as failing. */
  @Test
  void aMemberThatFailsCannotBeMistaken() {
    Verdict sound =
        Beams.ASSESSMENT.verdicts().stream()
            .filter(v -> v.subject().equals("beam-b") && v.unit().equals("mm"))
            .findFirst()
            .orElseThrow();
    List<Verdict> verdicts = new ArrayList<>(Beams.ASSESSMENT.verdicts());
    verdicts.add(
        new Verdict(
            sound.group(),
            sound.check(),
            "beam-b",
            Status.FAILED,
            30,
            15,
            "mm",
            sound.governing(),
            ""));
    List<Bar> bars =
        UtilisationPicture.scene(Beams.SUBJECT, MemberUses.of(Beams.JOB.frame(), verdicts)).bars();
    List<String> words = Example.words(UtilisationPicture.of(Beams.SUBJECT, verdicts));

    assertThat(bars)
        .allSatisfy(
            bar ->
                assertThat(bar.style().equals(UseBand.FAILS.style()))
                    .isEqualTo(bar.member().equals("beam-b")));
    assertThat(words).contains("1: 2.00 FAILS", "over 1: FAILS (1)");
  }

  /** The ends of the beams do not move, so the deflection from the chord is the movement down. */
  @Test
  void theMovementDrawnIsTheDeflectionJudged() {
    Governed governed = Governed.deflection(Beams.ASSESSMENT).orElseThrow();

    double down = -governed.shape().movement(governed.governing().station().x()).z();

    // The judged value is found by a sum over load cases; rounding.
    assertThat(down).isEqualTo(governed.verdict().demand(), within(1e-6));
  }

  /**
   * Given an unloaded beam whose start turns by θ about y and whose other end is clamped: w(x) = -θ
   * (x - 2x²/L + x³/L²), the cubic of elementary beam theory. Tolerance: shear deformation, which
   * the program counts and the cubic does not, is less than 2 % here.
   */
  @Test
  void betweenNodesAModeIsTheCubicOfItsEnds() {
    Segment segment = Beams.JOB.frame().segments().get(0);
    double[] movements = new double[12];
    movements[4] = 0.01;
    double length = segment.length();

    SegmentShape shape = SegmentShape.of(segment, movements);

    for (double t : new double[] {0.25, 1.0 / 3, 0.5, 0.75}) {
      double expected = -0.01 * length * (t - 2 * t * t + t * t * t);
      assertThat(shape.movement(t * length).z())
          .isEqualTo(expected, within(0.02 * Math.abs(expected)));
    }
    assertThat(shape.movement(length).norm()).isZero();
  }

  @Test
  void theSameJobGivesTheSameBytes() {
    Map<String, Drawing> once =
        StructureAlbum.of(Beams.JOB, Beams.ASSESSMENT, Example.LETTERING).pictures();
    Map<String, Drawing> again =
        StructureAlbum.of(
                Example.job("first-beam"), Example.assessment(Beams.JOB), Example.LETTERING)
            .pictures();

    assertThat(once.keySet())
        .containsExactly(
            "general",
            "plan",
            "elevation-south",
            "elevation-east",
            "utilisation",
            "moments",
            "deflection");
    once.forEach(
        (name, drawing) ->
            assertThat(SvgFile.of(picture(again, name))).isEqualTo(SvgFile.of(drawing)));
  }

  @Test
  void thePictureOfTheReadmeIsTheOneThatTheProgramDraws() throws IOException {
    Drawing general = GeneralPicture.of(Example.subject("packing-house-inspection-platform"));

    assertThat(Example.ROOT.resolve("docs/pictures/inspection-platform-general.svg"))
        .content(StandardCharsets.UTF_8)
        .isEqualTo(SvgFile.of(general));
    assertThat(Files.readString(Example.ROOT.resolve("README.md")))
        .contains("docs/pictures/inspection-platform-general.svg");
  }
}
