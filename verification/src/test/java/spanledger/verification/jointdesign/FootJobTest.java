package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.verification.jointdesign.FootJob.CLOSE;
import static spanledger.verification.jointdesign.FootJob.FACTOR;
import static spanledger.verification.jointdesign.FootJob.PLATE;
import static spanledger.verification.jointdesign.FootJob.POST;
import static spanledger.verification.jointdesign.FootJob.WEIGHT;
import static spanledger.verification.jointdesign.FootJob.assertNear;
import static spanledger.verification.jointdesign.FootJob.bar;
import static spanledger.verification.jointdesign.FootJob.finding;
import static spanledger.verification.jointdesign.FootJob.load;
import static spanledger.verification.jointdesign.FootJob.open;
import static spanledger.verification.jointdesign.FootJob.text;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.JointFinding;
import spanledger.resistance.member.Working;
import spanledger.verdict.Assessment;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * Feet from job file to verdict, against statics of structures that stand on one foot or on two.
 */
class FootJobTest {

  private static final String CLAMP =
      """
      "kind": "clamp-foot", "size": "M10", "grade": "A4-70", "bolts": 2, "surfaces": 2,
      "tightening": {"lower": "8 kN", "upper": "12 kN", "source": "test"},
      "friction": {"coefficient": "0.2", "source": "test"}, "source": "test\"""";

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
        .filteredOn(FootJob::isOpenJoint)
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

  private Assessment assess(String members, String loads, String foot, String lie) {
    return FootJob.assess(folder, members, loads, foot, lie);
  }
}
