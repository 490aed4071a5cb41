package spanledger.verification.assembly;

import java.nio.file.Path;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;

/** The examples of the packing house. */
final class Examples {

  private Examples() {}

  static Path path(String name) {
    return Path.of(System.getProperty("spanledger.root", ".."))
        .resolve("docs/examples")
        .resolve(name + ".json");
  }

  /** The job of an example, read with the data that come with the program. */
  static Job job(String name) {
    ReadJob read = new JobReader(Tables.shipped()).read(path(name));
    if (read instanceof ReadJob.Accepted accepted) {
      return accepted.job();
    }
    throw new AssertionError(name + " was refused: " + read.problems());
  }
}
