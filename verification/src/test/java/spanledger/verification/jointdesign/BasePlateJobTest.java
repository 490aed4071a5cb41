package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.verification.jointdesign.FootJob.FACTOR;
import static spanledger.verification.jointdesign.FootJob.PLATE;
import static spanledger.verification.jointdesign.FootJob.POST;
import static spanledger.verification.jointdesign.FootJob.WEIGHT;
import static spanledger.verification.jointdesign.FootJob.assertNear;
import static spanledger.verification.jointdesign.FootJob.finding;
import static spanledger.verification.jointdesign.FootJob.load;
import static spanledger.verification.jointdesign.FootJob.open;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.AnchorDemand;
import spanledger.jointdesign.JointFinding;
import spanledger.resistance.member.Feed;
import spanledger.verdict.Assessment;

/** Base plates, their anchors and spindles from job file to verdict, against statics. */
class BasePlateJobTest {

  @TempDir Path folder;

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
    assertThat(found.check().working().feeds())
        .filteredOn(feed -> feed instanceof Feed.Given given && given.value() == 210_000)
        .extracting(feed -> ((Feed.Given) feed).source().citation())
        .singleElement()
        .asString()
        .contains("EN 1993-1-1:2005, 3.2.6");
  }

  private Assessment assess(String members, String loads, String foot, String lie) {
    return FootJob.assess(folder, members, loads, foot, lie);
  }
}
