package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.JointFinding;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * The fixed end of the cantilever of {@link JointJobTest}, known by tests: play 0.002 rad, 40
 * kN·m/rad, and moments held of 4.0, 4.4 and 3.6 kN·m. The mean of the logarithms of 1, 1.1 and 0.9
 * is -0.00335, their standard deviation 0.10038.
 */
class TestedJointJobTest {

  private static final double MEAN = 4e6 * Math.exp(-0.003350);

  /** 1 kN at 1 m and the bar's own weight of 0.0662 N/mm, times 1.35 (EN 1990, Table A1.2(B)). */
  private static final double DEMAND = 1.35 * (1e6 + 2500 * 2.7e-6 * 9.81 * 1e6 / 2);

  private static final String FACTOR =
      "\"partialFactor\": {\"value\": \"1.25\", \"source\": \"approval\"},";

  @TempDir Path folder;

  /** EN 1990, Table D.1: k_n = 3.37 for three specimens, scatter unknown. */
  @Test
  void theMomentIsJudgedByTheCharacteristicValueOfTheTests() {
    JointFinding found = finding(assess(FACTOR, 3, true));

    double characteristic = MEAN * Math.exp(-3.3717 * 0.10038);
    assertThat(found.check().working().value("M_k"))
        .isCloseTo(characteristic, within(1e-3 * characteristic));
    assertThat(found.governing().value()).isCloseTo(DEMAND * 1.25 / characteristic, within(2e-3));
    assertThat(found.run().end().name()).isEqualTo("bar, start");
    assertThat(found.part()).isEqualTo("bar, start, bending about y");
  }

  /** EN 1990, Table D.1: k_n = 1.89 for three specimens, V known; s = √ln(1 + 0.05²) = 0.04997. */
  @Test
  void aScatterKnownBeforehandTakesThePlaceOfThatOfTheSpecimens() {
    JointFinding found =
        finding(
            assess(
                FACTOR + "\"knownVariation\": {\"moment\": \"0.05\", \"source\": \"report 5\"},",
                3,
                true));

    double characteristic = MEAN * Math.exp(-1.8993 * 0.04997);
    assertThat(found.check().working().value("M_k"))
        .isCloseTo(characteristic, within(1e-3 * characteristic));
  }

  /** EN 1990, Table D.1: k_n = 2.31 (the formula: 2.326) for one specimen, V known. */
  @Test
  void oneSpecimenIsEnoughWhereAllScatterIsKnown() {
    JointFinding found =
        finding(
            assess(
                FACTOR
                    + "\"knownVariation\": {\"moment\": \"0.05\", \"stiffness\": \"0.1\","
                    + " \"slip\": \"0.2\", \"source\": \"report 5\"},",
                1,
                true));

    double characteristic = 4e6 * Math.exp(-2.3262 * 0.04997);
    assertThat(found.check().working().value("M_k"))
        .isCloseTo(characteristic, within(1e-3 * characteristic));
  }

  @Test
  void withoutAPartialFactorTheMomentIsNotChecked() {
    Assessment found = assess("", 3, true);

    assertThat(found.joints().orElseThrow().findings())
        .noneMatch(f -> f.use().words().equals("moment that the tests resist"));
    assertThat(joints(found))
        .filteredOn(v -> v.status() == Status.NOT_CHECKED)
        .extracting(Verdict::remark)
        .anySatisfy(remark -> assertThat(remark).contains("partialFactor", "tests S1 to S3"));
  }

  @Test
  void testsAreJudgedWithoutACodeOfOtherJoints() {
    Assessment found = assess(FACTOR, 3, false);

    assertThat(joints(found))
        .singleElement()
        .satisfies(
            verdict -> {
              assertThat(verdict.check())
                  .isEqualTo("bending about y: moment that the tests resist, EN 1990, D.7.2");
              assertThat(verdict.status()).isEqualTo(Status.PASSED);
            });
    assertThat(found.verdicts())
        .anyMatch(v -> v.check().equals("joints") && v.remark().contains("bar, start"));
  }

  private static List<Verdict> joints(Assessment found) {
    return found.verdicts().stream().filter(v -> v.group() == CheckGroup.JOINTS).toList();
  }

  private static JointFinding finding(Assessment found) {
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals("moment that the tests resist"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * @param more what stands beside the tests
   * @param coded whether the job names a code for joints
   */
  private Assessment assess(String more, int specimens, boolean coded) {
    String files = "";
    double[] held = {4.0, 4.4, 3.6};
    for (int i = 0; i < specimens; i++) {
      write("s" + (i + 1) + ".csv", readings("S" + (i + 1), held[i]));
      files += (i > 0 ? ", " : "") + "\"s" + (i + 1) + ".csv\"";
    }
    String job =
        JointJobTest.text("", "start", "")
            .replace(
                "\"start\": \"rigid\"",
                "\"start\": {\"torsion\": \"rigid\", \"aboutZ\": \"rigid\", \"aboutY\": {\"tests\": ["
                    + files
                    + "], "
                    + more
                    + "\"source\": \"test report 7\"}}");
    if (!coded) {
      job =
          job.substring(0, job.lastIndexOf("\"jointChecks\"")).stripTrailing().replaceAll(",$", "")
              + "}";
    }
    return AssessedJob.of(folder, job);
  }

  /** Readings on three lines, every 0.01 rad up to 0.2. */
  private static String readings(String specimen, double held) {
    StringBuilder text = new StringBuilder("# table: moment-rotation\n# specimen: ");
    text.append(specimen).append("\nrotation [rad],moment [kN*m]\n");
    for (int i = 0; i <= 20; i++) {
      double rotation = 0.01 * i;
      double moment = Math.min(held, 40 * Math.max(0, rotation - 0.002));
      text.append(String.format(Locale.ROOT, "%.2f,%.4f%n", rotation, moment));
    }
    return text.toString();
  }

  private void write(String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
