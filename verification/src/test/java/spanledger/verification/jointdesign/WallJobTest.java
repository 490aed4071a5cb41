package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.FaceRun;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.member.Working;
import spanledger.verdict.Assessment;
import spanledger.verification.check.AssessedJob;

/**
 * The wall behind an end plate, from job file to checks, on the cantilever of {@link JointJobTest}:
 * bolts at ±25 mm and ±40 mm on a wall 70 mm wide and 4 mm thick that runs upright. Its hinge bears
 * 4²/4 · 170/1.1 N per mm of length (EN 1999-1-1, γ_M1).
 */
class WallJobTest {

  private static final double HINGE = 4 * 4 / 4.0 * 170 / 1.1;

  @TempDir Path folder;

  /**
   * Two bolts of a row, each 35 - 25 = 10 mm from its web: 0.69 · 10 = 6.9 mm of wall to each side.
   * A supported strip has T 10 · 60/70 of each of them.
   */
  @Test
  void boltsOfARowBendTheWallTogether() {
    FaceRun face = face(50, "support");
    double pulled = face.demands().stream().mapToDouble(d -> d.value("F_t")).max().orElseThrow();

    JointCheck worst = worst(face);
    assertThat(worst.working().label()).contains("wall pulled");
    assertThat(worst.working().value("S"))
        .isCloseTo(2 * pulled * 10 * 60 / 70 / 13.8, within(1e-9 * pulled));
    assertThat(worst.working().value("S_Rd")).isCloseTo(HINGE, within(1e-9 * HINGE));
    assertThat(worst(face(50, "clamp")).working().value("S_Rd"))
        .isCloseTo(2 * HINGE, within(1e-9 * HINGE));
  }

  /**
   * A plate over both webs presses into them. One that is 60 mm wide presses the wall between them,
   * and all its rows together as much as the bolts pull.
   */
  @Test
  void aNarrowPlatePressesTheWall() {
    assertThat(rows(face(50, "support"), "pressed")).isEmpty();

    FaceRun narrow = face(30, "support");
    double pressed = 0;
    double moments = 0;
    for (Working contact : narrow.contacts()) {
      double x = 35 - Math.abs(contact.value("y"));
      // Rows 30 mm apart; the outermost go on beyond the plate.
      double side = 0.69 * x;
      boolean inner = Math.abs(contact.value("z")) < 30;
      double length = Math.min(side, 15) + (inner ? Math.min(side, 15) : side);
      pressed += contact.value("C");
      moments += contact.value("C") * x * (70 - x) / 70 / length;
    }
    double pulled = narrow.demands().stream().mapToDouble(d -> d.value("F_t")).sum();
    assertThat(pressed).isCloseTo(pulled, within(1e-6 * pulled));
    double found = rows(narrow, "pressed").stream().mapToDouble(c -> c.working().value("S")).sum();
    assertThat(found).isCloseTo(moments, within(1e-9 * moments));
  }

  /** A soft wall takes its part of the spring of a bolt: 1/k = 1/k of the bolt and 1/k_w. */
  @Test
  void theWallMakesBoltsSofter() {
    double stiff = spring(AssessedJob.of(folder, JointJobTest.text(plate(50, ""), "start", "")));
    double soft = spring(assess(50, "support"));

    // 10/70 = 0.143 of the width: 0.0053 of w²/D, by the line between 0.00313 and 0.005604.
    double deflection = 0.00313 + (10 / 70.0 - 0.1) / 0.05 * (0.005604 - 0.00313);
    double wall = 70_000 * 64 / 10.92 / (deflection * 70 * 70);
    double expected = 1 / (1 / stiff + 1 / wall);
    assertThat(soft).isCloseTo(expected, within(1e-6 * expected));
  }

  private static double spring(Assessment found) {
    return face(found).tensions().get(0).value("k_x");
  }

  private static List<JointCheck> rows(FaceRun face, String how) {
    return face.checks().stream().filter(c -> c.working().label().contains("wall " + how)).toList();
  }

  private static JointCheck worst(FaceRun face) {
    return rows(face, "").stream()
        .reduce((one, other) -> one.utilisation() >= other.utilisation() ? one : other)
        .orElseThrow();
  }

  private FaceRun face(int half, String webs) {
    return face(assess(half, webs));
  }

  private static FaceRun face(Assessment found) {
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals("bolt in tension"))
        .findFirst()
        .orElseThrow()
        .face();
  }

  private Assessment assess(int half, String webs) {
    String wall =
        """
        "wall": {"along": "w", "width": "70 mm", "thickness": "4 mm", "material": "own",
          "webs": "%s", "source": "test"},
        """
            .formatted(webs);
    return AssessedJob.of(folder, JointJobTest.text(plate(half, wall), "start", ""));
  }

  private static String plate(int half, String wall) {
    return """
        {"name": "end", "normal": "u", %s
         "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon",
           "places": [["-%d mm", "-40 mm"], ["%d mm", "-40 mm"], ["%d mm", "40 mm"], ["-%d mm", "40 mm"]]},
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "11 mm",
           "from": ["-%d mm", "-60 mm"], "to": ["%d mm", "60 mm"]}]}
        """
        .formatted(wall, bolt(half), bolt(half), bolt(half), bolt(half), half, half);
  }

  /** Bolts at 25 mm, or as far out as a narrow plate lets them. */
  private static int bolt(int half) {
    return Math.min(25, half - 8);
  }
}
