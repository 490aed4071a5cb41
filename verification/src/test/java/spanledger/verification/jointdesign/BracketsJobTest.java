package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.joint.JointAxis;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.member.Feed;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verification.check.AssessedJob;

/**
 * The cantilever of {@link JointJobTest} held by a corner bracket below, or by two, from job file
 * to verdict.
 */
class BracketsJobTest {

  private static final double MOMENT = JointJobTest.MOMENT;
  private static final double SHEAR = JointJobTest.SHEAR;

  /** A relative tolerance: the acceleration of gravity may be 9.80665 m/s². */
  private static final double CLOSE = 1e-3;

  /** Of balances. */
  private static final double EXACT = 1e-8;

  @TempDir Path folder;

  /** A leg on the wall below the bar, and one under the bar. */
  private static final String CORNER =
      """
      {"name": "wall", "normal": "u", "origin": ["0 mm", "0 mm", "-65 mm"],
       "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon",
         "places": [["-25 mm", "-15 mm"], ["25 mm", "-15 mm"], ["25 mm", "15 mm"], ["-25 mm", "15 mm"]]},
       "plies": [{"name": "leg", "thickness": "10 mm", "material": "own", "hole": "11 mm",
         "from": ["-50 mm", "-40 mm"], "to": ["50 mm", "40 mm"]}]},
      {"name": "bar", "normal": "w", "origin": ["60 mm", "0 mm", "-25 mm"],
       "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon",
         "places": [["-20 mm", "-20 mm"], ["30 mm", "-20 mm"], ["30 mm", "20 mm"], ["-20 mm", "20 mm"]]},
       "plies": [{"name": "leg", "thickness": "10 mm", "material": "own", "hole": "11 mm",
         "from": ["-50 mm", "-50 mm"], "to": ["60 mm", "50 mm"]}]}
      """;

  private static final String BELOW = "{\"name\": \"below\", \"bracket\": \"corner\"}";
  private static final String ABOVE =
      "{\"name\": \"above\", \"bracket\": \"corner\", \"mirror\": \"w\"}";

  /** One bracket that is listed is one bracket: every use the same to the last digit. */
  @Test
  void oneBracketListedIsNoDifferentFromTheBracket() {
    Map<String, Double> plain = uses(assess(""), "");
    Map<String, Double> listed = uses(assess(BELOW), "below, ");

    assertThat(plain).hasSizeGreaterThan(10);
    assertThat(listed).isEqualTo(plain);
  }

  /**
   * Brackets above and below: the forces of both make up those of the end. Of a moment that bends
   * the bar down, the upper is pulled and the lower pressed by a pair of equal forces, as nothing
   * pulls at the bar; what the pair does not hold, each holds by itself.
   */
  @Test
  void bracketsAboveAndBelowShareTheMomentAsAPairOfForces() {
    JointRun run = finding(assess(BELOW + "," + ABOVE), "bolt in shear").run();
    BracketRun below = run.brackets().get(0);
    BracketRun above = run.brackets().get(1);

    assertThat(run.brackets()).extracting(BracketRun::name).containsExactly("below", "above");
    assertThat(sum(run, "P_w")).isCloseTo(run.forces().value("P_w"), within(EXACT * SHEAR));
    assertThat(sum(run, "C_v")).isCloseTo(run.forces().value("C_v"), within(EXACT * MOMENT));
    assertThat(Math.abs(run.forces().value("C_v"))).isCloseTo(MOMENT, within(CLOSE * MOMENT));
    assertThat(below.share().value("P_u"))
        .isCloseTo(-above.share().value("P_u"), within(EXACT * MOMENT / 65));
    assertThat(above.share().value("P_u")).isPositive();
    assertThat(run.faces()).hasSize(4).allMatch(face -> face.shared().residual() < 1e-9);
  }

  /**
   * Both bounds of the sharing are kept: some check is worst where the faces are soft, some where
   * what is off them is.
   */
  @Test
  void theWorseOfBothBoundsIsKept() {
    assertThat(assess(BELOW + "," + ABOVE).joints().orElseThrow().findings())
        .filteredOn(JointFinding::hangsOnLoads)
        .extracting(finding -> finding.run().bound().name())
        .contains("SOFT_IN_FACES", "SOFT_OFF_FACES");
  }

  /**
   * The end moves alike by every bracket. The last row of each tells how far, from movements of its
   * faces alone.
   */
  @Test
  void theEndMovesAlikeByEveryBracket() {
    JointRun run = finding(assess(BELOW + "," + ABOVE), "bolt in shear").run();

    for (JointAxis axis : JointAxis.values()) {
      double shift = value(run.brackets().get(0).shift(axis));
      double turn = value(run.brackets().get(0).turn(axis));
      assertThat(value(run.brackets().get(1).shift(axis))).isCloseTo(shift, within(1e-10));
      assertThat(value(run.brackets().get(1).turn(axis))).isCloseTo(turn, within(1e-12));
    }
  }

  /**
   * Brackets on both sides, one the mirror image of the other: of a load in their plane each
   * carries half, and no check is worse than with one of them alone. The bracket of this test is
   * turned to the side: by 90 deg its leg below comes to lie at +v.
   */
  @Test
  void bracketsOnBothSidesCarryHalfEach() {
    String left = "{\"name\": \"left\", \"bracket\": \"corner\", \"turn\": \"90 deg\"}";
    String right =
        "{\"name\": \"right\", \"bracket\": \"corner\", \"turn\": \"90 deg\", \"mirror\": \"w\"}";
    Assessment both = assess(left + "," + right);
    JointRun run = finding(both, "bolt in shear").run();

    assertThat(run.brackets().get(0).share().value("P_w"))
        .isCloseTo(run.forces().value("P_w") / 2, within(EXACT * SHEAR));
    assertThat(run.brackets().get(0).share().value("C_v"))
        .isCloseTo(run.forces().value("C_v") / 2, within(EXACT * MOMENT));
    assertThat(run.brackets().get(1).share().value("P_v"))
        .isCloseTo(-run.brackets().get(0).share().value("P_v"), within(EXACT * MOMENT / 65));
    assertThat(run.brackets().get(1).share().value("C_u"))
        .isCloseTo(-run.brackets().get(0).share().value("C_u"), within(EXACT * MOMENT));
    assertThat(worst(both)).isLessThan(worst(assess(left)));
  }

  /** Turned by 90 and by 180 and by 270: after a mirror at w twice it stands as it stood. */
  @Test
  void aBracketTurnedByHalfIsOneMirroredTwice() {
    Map<String, Double> half =
        uses(
            assess("{\"name\": \"one\", \"bracket\": \"corner\", \"turn\": \"180 deg\"}"), "one, ");
    Map<String, Double> above =
        uses(assess("{\"name\": \"one\", \"bracket\": \"corner\", \"mirror\": \"w\"}"), "one, ");

    // The corner bracket is its own image in the plane of u and w.
    assertThat(half.keySet()).isEqualTo(above.keySet());
    half.forEach((check, use) -> assertThat(above.get(check)).isCloseTo(use, within(1e-9)));
  }

  /** Two corner brackets as springs: far stiffer in bending than twice one. */
  @Test
  void twoBracketsApartAreFarStifferThanTwice() {
    double one = aboutY(BELOW);
    double two = aboutY(BELOW + "," + ABOVE);

    assertThat(two).isGreaterThan(2 * one);
  }

  /**
   * Legs of an angle bend where they meet, and bolts on them are pried. Nobody who reads the result
   * may take that as checked where the job does not say where each leg begins.
   */
  @Test
  void anAngleWhoseLegsAreNotDescribedIsNotChecked() {
    Assessment found = AssessedJob.of(folder, fromParts(BELOW));

    assertThat(found.verdicts())
        .filteredOn(verdict -> verdict.status() == Status.NOT_CHECKED)
        .extracting(verdict -> verdict.remark())
        .filteredOn(remark -> remark.contains("bending of this leg"))
        .hasSize(2)
        .anySatisfy(remark -> assertThat(remark).contains("below, wall", "add \"leg\""))
        .anySatisfy(remark -> assertThat(remark).contains("below, bar", "add \"leg\""));
  }

  /** A member end takes the stiffness by which the check shares: nothing is said of it. */
  @Test
  void theStiffnessOfAnalysisAndCheckIsOne() {
    Assessment taken = AssessedJob.of(folder, fromParts(BELOW + "," + ABOVE));

    assertThat(taken.verdicts())
        .filteredOn(verdict -> verdict.group() == CheckGroup.JOINTS)
        .filteredOn(verdict -> verdict.status() == Status.NOT_CHECKED)
        .extracting(verdict -> verdict.remark())
        .noneMatch(remark -> remark.contains("stiff"));
  }

  private double aboutY(String brackets) {
    Path file = folder.resolve("stiff.json");
    try {
      Files.writeString(file, fromParts(brackets));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    assertThat(read.problems()).isEmpty();
    MemberEnd end = ((ReadJob.Accepted) read).job().frame().members().get(0).start();
    return ((Restraint.Spring) end.aboutY()).stiffness();
  }

  private static String fromParts(String brackets) {
    return text(brackets).replace("\"start\": \"rigid\"", "\"start\": {\"fromJoint\": \"joint\"}");
  }

  private static double value(Feed.Result of) {
    return of.from().value(of.symbol());
  }

  private static double sum(JointRun run, String symbol) {
    return run.brackets().stream().mapToDouble(own -> own.share().value(symbol)).sum();
  }

  private static double worst(Assessment found) {
    return found.joints().orElseThrow().findings().stream()
        .filter(JointFinding::hangsOnLoads)
        .mapToDouble(finding -> finding.governing().value())
        .max()
        .orElseThrow();
  }

  private static Map<String, Double> uses(Assessment found, String prefix) {
    Map<String, Double> uses = new TreeMap<>();
    for (JointFinding finding : found.joints().orElseThrow().findings()) {
      assertThat(finding.face().name()).startsWith(prefix);
      uses.put(
          finding.face().name().substring(prefix.length()) + ": " + finding.use().words(),
          finding.governing().value());
    }
    return uses;
  }

  private static JointFinding finding(Assessment found, String words) {
    List<JointFinding> all = found.joints().orElseThrow().findings();
    return all.stream().filter(f -> f.use().words().equals(words)).findFirst().orElseThrow();
  }

  private Assessment assess(String brackets) {
    return AssessedJob.of(folder, text(brackets));
  }

  /**
   * @param brackets as they are listed; the bracket itself if empty
   */
  private static String text(String brackets) {
    String job = JointJobTest.text(CORNER, "start", "");
    return brackets.isEmpty()
        ? job
        : job.replace("\"joint\": {\"kind\"", "\"corner\": {\"kind\"")
            .replace(
                "\"foot\": {",
                "\"joint\": {\"kind\": \"brackets\", \"source\": \"test\", \"brackets\": ["
                    + brackets
                    + "]}, \"foot\": {");
  }
}
