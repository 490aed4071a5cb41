package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.verification.check.AssessedJob;

/** Figures of a joint code that a job replaces, by a national annex for example. */
class JointFiguresTest {

  @TempDir static Path folder;
  private static JointJudgement asPublished;
  private static JointJudgement byAnnex;

  @BeforeAll
  static void judge() {
    String job = JointJobTest.text("", "start", "");
    asPublished = judged(job);
    byAnnex =
        judged(
            job.replace(
                "\"surroundings\":",
                "\"figures\": {\"gamma.M2\": {\"value\": \"1.5\", \"source\": \"an annex\"}},"
                    + " \"surroundings\":"));
  }

  /** EN 1999-1-1, Table 8.5: F_v,Rd = α_v f_ub A/γ_M2, so the use grows as γ_M2, 1.25 to 1.5. */
  @Test
  void aLargerPartialFactorUsesMoreOfABolt() {
    double before = use(asPublished, "bolt in shear");

    assertThat(use(byAnnex, "bolt in shear")).isCloseTo(before * 1.5 / 1.25, within(1e-12));
  }

  /** EN 1999-1-1, Table 8.2: distances of holes know no partial factor. */
  @Test
  void whatDoesNotHangOnTheFigureStays() {
    String sizes = "least end distance";

    assertThat(use(byAnnex, sizes)).isEqualTo(use(asPublished, sizes));
  }

  @Test
  void theJudgementKnowsWhatWasReplaced() {
    assertThat(asPublished.figures().orElseThrow().replaced()).isEmpty();
    assertThat(byAnnex.figures().orElseThrow().replaced().get("gamma.M2").value()).isEqualTo(1.25);
    assertThat(byAnnex.figures().orElseThrow().figure("gamma.M2").source().citation())
        .isEqualTo("an annex");
  }

  private static double use(JointJudgement judgement, String words) {
    return judgement.findings().stream()
        .filter(finding -> finding.use().words().equals(words))
        .map(JointFinding::governing)
        .findFirst()
        .orElseThrow()
        .value();
  }

  private static JointJudgement judged(String text) {
    return AssessedJob.of(folder, text).joints().orElseThrow();
  }
}
