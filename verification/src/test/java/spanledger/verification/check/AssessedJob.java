package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import spanledger.action.ActionPlanner;
import spanledger.analysis.FrameAnalysis;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.verdict.Assessment;
import spanledger.verdict.Assessor;

/** From the text of a job file to its verdicts, without files of results. */
public final class AssessedJob {

  private AssessedJob() {}

  /**
   * Reads and assesses a job as {@code check} does.
   *
   * @param folder where the text is put as a file
   */
  public static Assessment of(Path folder, String text) {
    Path file = folder.resolve("job.json");
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    // Warnings are allowed: small test frames have some.
    assertThat(read).as(read.problems().toString()).isInstanceOf(ReadJob.Accepted.class);
    Job job = ((ReadJob.Accepted) read).job();
    return new Assessor(job.rules(), job.rails(), job.placesPerSegment())
        .inOrder(job.analysis().secondOrder())
        .byCode(job.memberDesign())
        .withJoints(job.jointDesign())
        .assess(
            new FrameAnalysis(job.frame()),
            ActionPlanner.plan(
                job.frame(),
                job.surfaces(),
                job.rails(),
                job.userCases(),
                job.rules(),
                job.combinations()),
            job.combinations());
  }
}
