package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.jointdesign.JointFinding;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * Slots of a described joint from job file to verdict, on the cantilever of {@link JointJobTest}.
 * Its metal has f_o = 170 MPa, which EN 1999-1-1 divides by γ_M1 = 1.1.
 */
class SlotJobTest {

  private static final double DESIGN_STRENGTH = 170 / 1.1;

  @TempDir Path folder;

  /**
   * A nut turned with 10 N·m by a tool that scatters 10 %: the sides of the slot hold a head 18 mm
   * long and 6 mm high with two blocks of pressure, f h b²/4.
   */
  @Test
  void theSlotKeepsAHeadFromTurningWhileItsNutIsTightened() {
    JointFinding turning = finding(assess(TORQUE, ""), "head turned out of its place");

    double resistance = DESIGN_STRENGTH * 6 * 18 * 18 / 4;
    assertThat(turning.governing().value()).isCloseTo(1.1 * 10_000 / resistance, within(1e-9));
    assertThat(turning.hangsOnLoads()).isFalse();
  }

  /**
   * The greatest preload of that torque, F = 1.1 T/(P/2π + d_2 μ/√3 + D_km μ/2) after VDI 2230: M8
   * has P = 1.25, d_2 = 8 - 0.6495 · 1.25, 13 mm across flats and a hole of 9 mm, so D_km = 11 mm;
   * μ = 0.12. The wings of the head shear on 2 b h f_yd/√3; A4-70 has 450 MPa, γ_M2 = 1.25.
   */
  @Test
  void theWingsOfAHeadBearTheGreatestPreload() {
    double mu = 0.12;
    double lever = 1.25 / (2 * Math.PI) + (8 - 0.6495 * 1.25) * mu / Math.sqrt(3) + 11 * mu / 2;
    double preload = 1.1 * 10_000 / lever;
    double shear = 2 * 18 * 6 * 450 / 1.25 / Math.sqrt(3);

    List<Double> wings =
        finding(assess(TORQUE, ""), "wings of the head in shear").face().checks().stream()
            .filter(check -> check.working().label().contains("tightened"))
            .filter(check -> check.working().procedure().procedure().name().contains("head"))
            .filter(check -> !check.working().procedure().procedure().name().contains("turning"))
            .map(check -> check.working().value("η_hv"))
            .toList();

    assertThat(wings)
        .singleElement()
        .satisfies(use -> assertThat(use).isCloseTo(preload / shear, within(1e-3)));
  }

  /**
   * A slot along v, level, without keys: the load is across it, half on each bolt M8. The metal
   * behind half a diameter of a lip of 4 mm yields at 4 · 4 · f_od; the bolts have 0.5 mm of play.
   */
  @Test
  void withoutKeysShanksBearOnTheLipsAcrossTheSlot() {
    JointFinding edge = finding(assess(across("")), "bolt on the edge of a lip");

    double expected = JointJobTest.SHEAR / 2 / (4 * 4 * DESIGN_STRENGTH);
    assertThat(edge.governing().value()).isCloseTo(expected, within(1e-3 * expected));
    assertThat(edge.check().working().value("g")).isEqualTo(0.5);
    assertThat(assess(TORQUE, KEYS).joints().orElseThrow().findings())
        .noneMatch(f -> f.use().words().equals("bolt on the edge of a lip"));
  }

  /**
   * Held by friction as well, the face must not slip across the slot in use: half of the load of
   * use on a bolt against 0.4 of the least preload, 6 kN, less 0.8 of its tension, over γ_M3,ser =
   * 1.1 (EN 1999-1-1, 8.5.9.3, from memory, confirm against the standard).
   */
  @Test
  void slipAcrossASlotIsAMatterOfUse() {
    String friction = "\"friction\": {\"coefficient\": \"0.4\", \"source\": \"test\"},";
    Assessment found = assess(across(friction));
    JointFinding slip = finding(found, "slip of faces in use");

    double pull = slip.check().working().value("F_t");
    double expected = 1.1 * JointJobTest.SHEAR / 1.35 / 2 / (0.4 * (6000 - 0.8 * pull));
    assertThat(slip.governing().value()).isCloseTo(expected, within(1e-3 * expected));
    assertThat(found.joints().orElseThrow().findings())
        .anyMatch(f -> f.use().words().equals("bolt on the edge of a lip"));
    // Nothing pushes along the slot.
    assertThat(finding(found, "slip of faces").governing().value()).isCloseTo(0, within(1e-9));
  }

  /** Two bolts in a slot along v, and a plate high enough to press against their pull. */
  private static String across(String friction) {
    return """
        {"name": "post", "normal": "u", "origin": ["0 mm", "0 mm", "0 mm"],
         "bolts": {"size": "M8", "grade": "A4-70",
           "head": {"shape": "hammer head", "length": "18 mm", "width": "16 mm", "height": "6 mm"},
           "places": [["-40 mm", "0 mm"], ["40 mm", "0 mm"]],
           "tightening": {"lower": "6 kN", "upper": "9 kN", "source": "test"}},
         %s
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "9 mm",
           "from": ["-60 mm", "-150 mm"], "to": ["60 mm", "150 mm"]}],
         "lips": {"reach": "6 mm", "thickness": "4 mm", "opening": "9 mm", "along": "v",
           "material": "own", "toEnd": "60 mm", "source": "test"}}
        """
        .formatted(friction);
  }

  private Assessment assess(String face) {
    return AssessedJob.of(folder, JointJobTest.text(face, "start", ""));
  }

  @Test
  void aPreloadWithoutItsTorqueLeavesTheTurningOfHeadsOpen() {
    assertThat(open(assess("{\"lower\": \"6 kN\", \"upper\": \"9 kN\", \"source\": \"test\"}", "")))
        .anySatisfy(remark -> assertThat(remark).contains("not the torque"));
  }

  /** Keys of 10 mm beside lips of 4 mm press on 4 mm, whatever the job does not say. */
  @Test
  void aKeyPressesOnNoMoreThanTheSideOfItsSlot() {
    JointFinding pressed = finding(assess(TORQUE, KEYS), "key on the side of the slot");

    assertThat(pressed.check().working().value("h_b")).isEqualTo(4);
  }

  /** The same end plate, told from its other side: first and second axis change places. */
  @Test
  void theStiffnessOfAFaceIsTheSameFromBothSides() throws IOException {
    MemberEnd towards = end(plate("u", "[\"-25 mm\", \"-40 mm\"], [\"25 mm\", \"40 mm\"]", 50, 60));
    MemberEnd against =
        end(plate("-u", "[\"-40 mm\", \"-25 mm\"], [\"40 mm\", \"25 mm\"]", 60, 50));

    for (int i = 0; i < 4; i++) {
      double one = ((Restraint.Spring) towards.holds().get(i)).stiffness();
      double other = ((Restraint.Spring) against.holds().get(i)).stiffness();
      assertThat(other).isCloseTo(one, within(1e-9 * one));
    }
    assertThat(((Restraint.Spring) towards.aboutY()).stiffness())
        .isNotCloseTo(((Restraint.Spring) towards.aboutZ()).stiffness(), within(1.0));
  }

  private MemberEnd end(String face) throws IOException {
    Path file = folder.resolve("stiff.json");
    Files.writeString(
        file,
        JointJobTest.text(face, "start", "")
            .replace("\"start\": \"rigid\"", "\"start\": {\"fromJoint\": \"joint\"}"));
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    assertThat(read.problems()).isEmpty();
    return ((ReadJob.Accepted) read).job().frame().members().get(0).start();
  }

  private static String plate(String normal, String places, int halfA, int halfB) {
    return """
        {"name": "end", "normal": "%s",
         "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon", "places": [%s]},
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "11 mm",
           "from": ["-%d mm", "-%d mm"], "to": ["%d mm", "%d mm"]}]}
        """
        .formatted(normal, places, halfA, halfB, halfA, halfB);
  }

  private static final String TORQUE =
      """
      {"torque": "10 N*m", "scatter": "0.1", "lowerFriction": "0.12", "upperFriction": "0.2",
       "source": "test"}""";

  private static final String KEYS =
      """
      "keys": {"places": [["0 mm", "0 mm"]], "bearsAlong": "v", "depth": "10 mm", "length": "60 mm",
        "thickness": "9 mm", "material": "own", "slotMaterial": "own"},""";

  private Assessment assess(String tightening, String keys) {
    String face =
        """
        {"name": "post", "normal": "u",
         "bolts": {"size": "M8", "grade": "A4-70",
           "head": {"shape": "hammer head", "length": "18 mm", "width": "16 mm", "height": "6 mm"},
           "places": [["0 mm", "-40 mm"], ["0 mm", "40 mm"]], "tightening": %s},
         %s
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "9 mm",
           "from": ["-25 mm", "-60 mm"], "to": ["25 mm", "60 mm"]}],
         "lips": {"reach": "6 mm", "thickness": "4 mm", "opening": "9 mm", "along": "w",
           "material": "own", "toEnd": "60 mm", "source": "test"},
         "friction": {"coefficient": "0.18", "source": "test"}}
        """
            .formatted(tightening, keys);
    return AssessedJob.of(folder, JointJobTest.text(face, "start", ""));
  }

  private static JointFinding finding(Assessment found, String words) {
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> open(Assessment found) {
    return found.verdicts().stream()
        .filter(v -> v.group() == CheckGroup.JOINTS && v.status() == Status.NOT_CHECKED)
        .map(Verdict::remark)
        .toList();
  }
}
