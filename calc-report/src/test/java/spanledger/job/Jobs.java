package spanledger.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import spanledger.job.problem.ProblemLog;
import spanledger.job.reading.Reading;
import spanledger.job.source.JobFile;

/** Job files for tests. */
final class Jobs {

  static final String FILE = "job.json";

  private static final JobReader SMALL = new JobReader(SmallTables.tables());
  private static final JobReader SHIPPED = new JobReader(Tables.shipped());

  private Jobs() {}

  /** An example of docs/examples as text. */
  static String example(String name) {
    return text(root().resolve("docs/examples").resolve(name));
  }

  /** A file beside these tests as text. */
  static String resource(String name) {
    return text(beside().resolve(name));
  }

  /** The directory of the files beside these tests, where paths in their job files begin. */
  static Path beside() {
    return root().resolve("calc-report/src/test/resources/spanledger/job");
  }

  static Path root() {
    return Path.of(System.getProperty("spanledger.root", ".."));
  }

  static String text(Path path) {
    try {
      return Files.readString(path, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads with the small tables of these tests. */
  static ReadJob read(String text) {
    return read(SMALL, text);
  }

  /** Reads with the data that come with the program. */
  static ReadJob readShipped(String text) {
    return read(SHIPPED, text);
  }

  private static ReadJob read(JobReader reader, String text) {
    ProblemLog log = new ProblemLog(FILE);
    return reader.read(new JobFile(text, "0".repeat(64)), log, new Reading(log, beside()));
  }
}
