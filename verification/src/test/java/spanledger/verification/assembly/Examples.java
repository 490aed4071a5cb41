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
    return read(path(name));
  }

  /** The job of a file. */
  static Job read(Path file) {
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    if (read instanceof ReadJob.Accepted accepted) {
      return accepted.job();
    }
    throw new AssertionError(file + " was refused: " + read.problems());
  }
}
