package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.analysis.FrameAnalysis;
import spanledger.job.Job;
import spanledger.verdict.Assessor;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/** The span that is too wide fails, in strength and geometry; twice the bays mend it. */
class WideSpanTest {

  @Test
  void theWideSpanFails() {
    Set<String> failed = failed("packing-house-wide-span");

    assertThat(failed)
        .contains(
            "rail movement, level",
            "rail under guardrail loads",
            "distance between posts, at most",
            "support of the rails, at most");
  }

  @Test
  void twiceTheBaysMendIt() {
    assertThat(failed("packing-house-wide-span-mended")).isEmpty();
  }

  private static Set<String> failed(String name) {
    Job job = Examples.job(name);
    List<Verdict> verdicts =
        new Assessor(job.rules(), job.rails(), job.placesPerSegment())
            .withGeometry(job.assembly().map(built -> built.geometry(job.rules())))
            .assess(
                new FrameAnalysis(job.frame()),
                ActionPlanner.plan(
                    job.frame(),
                    job.surfaces(),
                    job.rails(),
                    job.userCases(),
                    job.rules(),
                    job.combinations()),
                job.combinations())
            .verdicts();
    return verdicts.stream()
        .filter(verdict -> verdict.status() == Status.FAILED)
        .map(Verdict::check)
        .collect(Collectors.toSet());
  }
}
