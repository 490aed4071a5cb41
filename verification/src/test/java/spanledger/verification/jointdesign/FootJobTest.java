package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.AnchorDemand;
import spanledger.jointdesign.JointFinding;
import spanledger.resistance.member.Working;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * Feet from job file to verdict, against statics of structures that stand on one foot or on two.
 *
 * <p>Loads are permanent, with the factor 1.35 of EN 1990, Table A1.2(B). Bars weigh 4 N against 1
 * kN and more, so statics needs the loads alone.
 */
class FootJobTest {

  private static final double FACTOR = 1.35;

  /** Of a bar of 1 m, N: 12 mm by 12 mm of 2.7e-6 kg/mm³, g = 9.81 m/s². */
  private static final double WEIGHT = 144 * 2.7e-6 * 9.81 * 1000;

  /** A relative tolerance: up to two bars of 4 N are left out beside 1 kN. */
  private static final double CLOSE = 6e-3;

  private static final String POST = bar("post", "held", "top");
  private static final String PLATE =
      """
      "kind": "base-plate", "lengthX": "200 mm", "lengthY": "100 mm", "allowablePressure": "10 MPa",
      "friction": {"coefficient": "0.5", "source": "test"}, "source": "test\"""";

  @TempDir Path folder;

  /**
   * A fixed post of 1 m with 300 N level and 1000 N down at its top, and 200 N level and 500 N down
   * on the very node of the foot: 500 N level and 1500 N down come to the ground, and 300 N·m.
   */
  @Test
  void loadsOnTheNodeOfTheFootPassThroughIt() {
    Assessment found =
        assess(
            POST,
            load("top", 300, 0, -1000) + "," + load("held", 0, 200, -500),
            PLATE + ", \"anchors\": [[\"-75 mm\", \"0 mm\"], [\"75 mm\", \"0 mm\"]]",
            "");

    Working face = finding(found, "pressure on the ground").face().forces();
    assertNear(face.value("N"), -FACTOR * 1500);
    assertNear(face.value("V_y"), FACTOR * 300);
    assertNear(face.value("V_z"), FACTOR * 200);
    assertNear(face.value("M_z"), FACTOR * 300_000);
  }

  /**
   * A post and a strut that leans 45 deg end on one foot, each with 1000 N down at its top, the
   * strut's 800 mm along X. So 2000 N press, and -800 N·m turn about Y, the first side is X. A
   * second support would be needed for none of it.
   */
  @Test
  void whateverEndsOnAFootItTakesWhatTheSupportTakes() {
    Assessment found =
        assess(
            POST + "," + bar("strut", "held", "out"),
            load("top", 0, 0, -1000) + "," + load("out", 0, 0, -1000),
            PLATE + ", \"anchors\": [[\"-75 mm\", \"0 mm\"], [\"75 mm\", \"0 mm\"]]",
            "");

    Working face = finding(found, "pressure on the ground").face().forces();
    assertNear(face.value("N"), -FACTOR * 2000);
    assertNear(face.value("M_z"), FACTOR * 1000 * 800);
  }

  /**
   * The middle of the plate lies 60 mm along X from the node and 40 mm below it: 300 N level at 1 m
   * and 1000 N down turn by 300 N · (1000 + 40) mm + 1000 N · 60 mm about Y.
   */
  @Test
  void thePlateMayLieBesideItsNode() {
    Assessment found =
        assess(
            POST,
            load("top", 300, 0, -1000),
            PLATE
                + ", \"offset\": [\"-60 mm\", \"0 mm\", \"-40 mm\"],"
                + " \"anchors\": [[\"-75 mm\", \"0 mm\"], [\"75 mm\", \"0 mm\"]]",
            "");

    Working face = finding(found, "pressure on the ground").face().forces();
    assertNear(face.value("M_z"), FACTOR * (300 * 1040 + 1000 * 60));
  }

  /**
   * On ground that falls by 10 deg towards Y an upright load W slides by W sin 10 deg and presses
   * by W cos 10 deg, whatever the turn of the plate: friction of 0.5 is used by tan 10 deg/0.5.
   */
  @Test
  void onASlopeAFootSlidesByItsTangent() {
    String ground =
        ", \"turn\": \"30 deg\", \"ground\": {\"slope\": \"10 deg\", \"falls\": \"+Y\"}";

    Assessment found = assess(POST, load("top", 0, 0, -1000), PLATE, ground);

    JointFinding sliding = finding(found, "sliding of the foot");
    double expected = Math.tan(Math.toRadians(10)) / 0.5;
    assertThat(sliding.governing().value()).isCloseTo(expected, within(CLOSE));
    Working face = sliding.face().forces();
    double down = 1000 * Math.sin(Math.toRadians(10));
    double factor = face.value("N") / (-1000 * Math.cos(Math.toRadians(10)));
    // Turned by 30 deg towards Y, the first side has the sine of it down the slope.
    assertNear(face.value("V_y"), factor * down * Math.sin(Math.toRadians(30)));
    assertNear(face.value("V_z"), factor * down * Math.cos(Math.toRadians(30)));
  }

  /** Where the whole site slopes, a foot that says nothing lies on that slope. */
  @Test
  void aFootLiesAsTheSiteDoes() {
    String site =
        ", \"standing\": {\"anchored\": true,"
            + " \"ground\": {\"slope\": \"10 deg\", \"falls\": \"+Y\"}}";
    String text = text(POST, load("top", 0, 0, -1000), PLATE, "");
    int end = text.lastIndexOf('}');

    Assessment found = AssessedJob.of(folder, text.substring(0, end) + site + text.substring(end));

    assertThat(finding(found, "sliding of the foot").governing().value())
        .isCloseTo(Math.tan(Math.toRadians(10)) / 0.5, within(CLOSE));
  }

  /**
   * A clamp holds a post that leans 3:4, with 400 N along X and 500 N down at its top: along its
   * axis (0.6, 0, 0.8) come 400 · 0.6 - 500 · 0.8 = -160 N, and 0.8 of its weight.
   */
  @Test
  void aClampHoldsAPostAlongItsAxis() {
    Assessment found =
        assess(bar("post", "held", "leaning"), load("leaning", 400, 0, -500), CLAMP, "");

    JointFinding slip = finding(found, "slip of faces");
    assertNear(slip.check().working().value("V"), FACTOR * (160 + 0.8 * WEIGHT));
  }

  /** A strut of 45 deg and less is no second post; two posts are. */
  @Test
  void aClampHoldsOnePost() {
    String loads = load("leaning", 400, 0, -500);
    String two = bar("post", "held", "leaning") + "," + bar("other", "held", "top");
    String one = bar("post", "held", "leaning") + "," + bar("strut", "held", "low");

    assertThat(assess(two, loads, CLAMP, "").verdicts())
        .filteredOn(FootJobTest::isOpenJoint)
        .extracting(Verdict::remark)
        .anySatisfy(remark -> assertThat(remark).contains("a clamp holds one post"));
    assertNear(
        finding(assess(one, loads, CLAMP, ""), "slip of faces").check().working().value("V"),
        FACTOR * (160 + 0.8 * (WEIGHT + WEIGHT)));
  }

  /** A pinned foot gives no moment to its plate, so with 1000 N down all pieces press alike. */
  @Test
  void aPinnedSupportGivesItsFootNoMoment() {
    Assessment found =
        AssessedJob.of(
            folder,
            text(
                    POST + "," + bar("beam", "top", "across") + "," + bar("leg", "low", "across"),
                    load("top", 0, 0, -1000),
                    PLATE,
                    "")
                .replace(
                    "\"supports\": {\"wall\": {\"node\": \"held\", \"type\": \"fixed\"}}",
                    "\"supports\": {\"wall\": {\"node\": \"held\", \"type\": \"pinned\"},"
                        + " \"far\": {\"node\": \"low\", \"type\": \"fixed\"}}"));

    Working face = finding(found, "pressure on the ground").face().forces();
    assertThat(face.value("M_y")).isZero();
    assertThat(face.value("M_z")).isZero();
    assertThat(face.value("T")).isZero();
    assertThat(face.value("N")).isNegative();
  }

  /**
   * A plate 200 mm by 200 mm, 10 mm thick, of 170 MPa, under a stem of 40 mm: f_od = 170/1.1 MPa by
   * EN 1999-1-1. On ground of 4 MPa it presses c = 10 sqrt(f_od/(3 · 4)) = 35.9 mm beyond the stem,
   * so 1000 N down press on a square of 111.8 mm.
   */
  @Test
  void aThinPlatePressesOnlyBesideItsStem() {
    String thin =
        PLATE.replace("100 mm", "200 mm").replace("10 MPa", "4 MPa")
            + ", \"plate\": {\"thickness\": \"10 mm\", \"material\": \"own\","
            + " \"stem\": [\"40 mm\", \"40 mm\"]}";

    JointFinding pressure =
        finding(assess(POST, load("top", 0, 0, -1000), thin, ""), "pressure on the ground");

    double side = 40 + 2 * 10 * Math.sqrt(170 / 1.1 / (3 * 4));
    assertThat(side).isCloseTo(111.8, within(0.05));
    double expected = FACTOR * (1000 + WEIGHT) / (side * side) / 4;
    assertThat(pressure.governing().value()).isCloseTo(expected, within(1e-3 * expected));
  }

  /**
   * An anchor 75 mm from the middle, 60 mm beyond a stem of 30 mm, bends a line at the stem's side
   * over 2 · 60 mm, of which the plate has 100 mm: σ = 6 F 60/(100 t²).
   */
  @Test
  void anAnchorBendsThePlateBesideTheStem() {
    String plate =
        PLATE
            + ", \"anchors\": [[\"-75 mm\", \"0 mm\"], [\"75 mm\", \"0 mm\"]],"
            + " \"plate\": {\"thickness\": \"8 mm\", \"steelYield\": \"235 MPa\","
            + " \"stem\": [\"30 mm\", \"30 mm\"]}";

    Assessment found = assess(POST, load("top", 300, 0, -1000), plate, "");

    JointFinding bent = finding(found, "base plate bent by its anchors");
    double pull = found.joints().orElseThrow().anchors().get(0).tension();
    assertThat(pull).isPositive();
    double stress = 6 * pull * 60 / (100 * 8.0 * 8.0);
    assertThat(bent.governing().value()).isCloseTo(stress / (235 / 1.1), within(1e-9));
    assertThat(open(found)).isEmpty();
  }

  /**
   * Four anchors at the corners, 75 mm either way, beside a stem of 80 mm: each lies 35 mm beyond
   * both sides, 35 √2 mm from the corner, and its pull spreads over twice that along the diagonal
   * line, which the plate of 200 mm has. So σ = 6 F · 49.5/(99 t²) = 3 F/t², for every corner.
   */
  @Test
  void anAnchorAtACornerBendsTheDiagonal() {
    String plate =
        PLATE.replace("100 mm", "200 mm")
            + ", \"anchors\": [[\"-75 mm\", \"-75 mm\"], [\"75 mm\", \"-75 mm\"],"
            + " [\"75 mm\", \"75 mm\"], [\"-75 mm\", \"75 mm\"]],"
            + " \"plate\": {\"thickness\": \"15 mm\", \"steelYield\": \"235 MPa\","
            + " \"stem\": [\"80 mm\", \"80 mm\"]}";

    Assessment found = assess(POST, load("top", 300, 200, -1000), plate, "");

    double pull = found.joints().orElseThrow().anchors().get(0).tension();
    double stress = 3 * pull / (15.0 * 15.0);
    assertThat(finding(found, "base plate bent by its anchors").governing().value())
        .isCloseTo(stress / (235 / 1.1), within(1e-9));
  }

  /**
   * A level force along X at the top pulls the anchor at -X alone; the other lies where the plate
   * presses. Both share the level force evenly: 300/2 N along the first side.
   */
  @Test
  void everyAnchorIsHandedOnWithWhatActsAtTheSameTime() {
    Assessment found =
        assess(
            POST,
            load("top", 300, 0, -1000),
            PLATE + ", \"anchors\": [[\"-75 mm\", \"0 mm\"], [\"75 mm\", \"0 mm\"]]",
            "");

    List<AnchorDemand> anchors = found.joints().orElseThrow().anchors();
    assertThat(anchors).hasSize(4);
    assertThat(anchors.get(0).anchor()).isEqualTo("anchor 1");
    assertThat(anchors.get(0).first()).isEqualTo(-75);
    assertThat(anchors.get(0).tension()).isPositive();
    assertThat(anchors.get(1).tension()).isZero();
    assertNear(anchors.get(0).shear(), FACTOR * 150);
    assertNear(anchors.get(2).shearFirst(), FACTOR * 150);
    assertThat(anchors)
        .extracting(AnchorDemand::ofTension)
        .containsExactly(true, true, false, false);
  }

  /** Who does not say how thick the plate is does not know whether it bends. */
  @Test
  void aPlateOfUnknownThicknessIsNotCheckedForBending() {
    assertThat(open(assess(POST, load("top", 0, 0, -1000), PLATE, "")))
        .anySatisfy(remark -> assertThat(remark).contains("whether its plate bends is not known"));
  }

  /**
   * A spindle of 17 mm root 120 mm above the ground, guided by a post that is fixed on the ground,
   * with 100 N level and 2000 N down at 1 m: about the guide M = 100 · (1000 - 120) N·mm. With 3 mm
   * of eccentricity and N_cr = π² E I/(2 · 120 mm)², of steel with 210 GPa (EN 1993-1-1, 3.2.6).
   */
  @Test
  void aSpindleBendsOnItsBentShape() {
    String screwed =
        PLATE
            + ", \"spindle\": {\"rootDiameter\": \"17 mm\", \"extension\": \"120 mm\","
            + " \"eccentricity\": \"3 mm\", \"steelYield\": \"450 MPa\", \"source\": \"test\"}";

    JointFinding found =
        finding(
            assess(POST, load("top", 100, 0, -2000), screwed, ""),
            "spindle in compression and bending");

    double area = Math.PI * 17 * 17 / 4;
    double modulus = Math.PI * Math.pow(17, 3) / 32;
    double critical =
        Math.PI * Math.PI * 210_000 * Math.PI * Math.pow(17, 4) / 64 / (240.0 * 240.0);
    double force = FACTOR * (2000 + WEIGHT);
    double moment = FACTOR * 100 * 880 + force * 3;
    double stress = force / area + moment / (1 - force / critical) / modulus;
    double expected = stress / (450 / 1.1);
    assertThat(found.governing().value()).isCloseTo(expected, within(1e-3 * expected));
  }

  /**
   * Declared are 3 kN down and 0.5 kN level; 1500 N down and 100 N level, on the node itself, use
   * 1500/3000 + 100/500 of them. The same level force at 1 m turns the foot, of which nothing is
   * declared.
   */
  @Test
  void aDeclaredFootAddsThePartsOfItsCapacities() {
    String castor =
        "\"kind\": \"declared-foot\", \"compression\": \"3 kN\", \"shear\": \"0.5 kN\","
            + " \"source\": \"test\"";
    Assessment turned = assess(POST, load("top", 100, 0, -1000), castor, "");
    Assessment found =
        AssessedJob.of(
            folder,
            text(POST, load("top", 0, 0, -1500) + "," + load("held", 100, 0, 0), castor, ""));

    double expected = FACTOR * ((1500 + WEIGHT) / 3000 + 100 / 500.0);
    assertThat(finding(found, "foot beside its declared capacities").governing().value())
        .isCloseTo(expected, within(1e-3 * expected));
    assertThat(open(found)).isEmpty();
    assertThat(open(turned)).anySatisfy(remark -> assertThat(remark).contains("moments"));
  }

  private static List<String> open(Assessment found) {
    return found.verdicts().stream().filter(FootJobTest::isOpenJoint).map(Verdict::remark).toList();
  }

  private static final String CLAMP =
      """
      "kind": "clamp-foot", "size": "M10", "grade": "A4-70", "bolts": 2, "surfaces": 2,
      "tightening": {"lower": "8 kN", "upper": "12 kN", "source": "test"},
      "friction": {"coefficient": "0.2", "source": "test"}, "source": "test\"""";

  private static boolean isOpenJoint(Verdict verdict) {
    return verdict.group() == CheckGroup.JOINTS && verdict.status() == Status.NOT_CHECKED;
  }

  private static void assertNear(double found, double expected) {
    assertThat(found).isCloseTo(expected, within(CLOSE * Math.abs(expected)));
  }

  private static JointFinding finding(Assessment found, String words) {
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals(words))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(words + " not in " + found.joints().orElseThrow().open()));
  }

  private static String bar(String name, String from, String to) {
    return """
        "%s": {"role": "other", "nodes": ["%s", "%s"], "section": "bar", "material": "own",
          "start": "rigid", "end": "rigid"}"""
        .formatted(name, from, to);
  }

  private static String load(String node, int x, int y, int z) {
    return "{\"node\": \"%s\", \"force\": [\"%d N\", \"%d N\", \"%d N\"]}".formatted(node, x, y, z);
  }

  private Assessment assess(String members, String loads, String foot, String lie) {
    return AssessedJob.of(folder, text(members, loads, foot, lie));
  }

  /**
   * @param foot the kind of foot
   * @param lie how it lies, after the other keys of its use
   */
  static String text(String members, String loads, String foot, String lie) {
    return """
        {"formatVersion": 1,
         "job": {"title": "feet", "reference": "F-1", "date": "2026-11-25"},
         "rules": "en-iso-14122", "combinations": "en-1990",
         "analysis": {"secondOrder": "never"},
         "overrides": {"notional.sway": {"value": "1e-9", "source": "no sway in this test"}},
         "sections": {"bar": {"shape": "solid-rectangle", "depth": "12 mm", "width": "12 mm"}},
         "materials": {"own": {"proofStrength": "170 MPa", "ultimateStrength": "215 MPa",
           "bucklingClass": "A", "youngsModulus": "70 GPa", "shearModulus": "27 GPa",
           "density": "2700 kg/m3", "source": "test"}},
         "nodes": {"held": ["0 mm", "0 mm", "0 mm"], "top": ["0 mm", "0 mm", "1 m"],
           "out": ["800 mm", "0 mm", "800 mm"], "leaning": ["600 mm", "0 mm", "800 mm"],
           "low": ["1 m", "0 mm", "0 mm"], "across": ["1 m", "0 mm", "1 m"]},
         "members": {%s},
         "supports": {"wall": {"node": "held", "type": "fixed"}},
         "userCases": {"load": {"category": "permanent", "loads": [%s]}},
         "jointDetails": {"foot": {%s}},
         "jointChecks": {"code": "en-1999-1-1",
           "feet": [{"supports": ["wall"], "joint": "foot"%s}]}}
        """
        .formatted(members, loads, foot, lie);
  }
}
