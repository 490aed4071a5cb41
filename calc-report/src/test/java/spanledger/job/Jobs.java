package spanledger.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.JobFile;

/** Job files for tests. */
final class Jobs {

  static final String FILE = "job.json";

  private static final JobReader READER = new JobReader(SmallTables.tables());

  private Jobs() {}

  /** An example of docs/examples as text. */
  static String example(String name) {
    return text(root().resolve("docs/examples").resolve(name));
  }

  /** A file beside these tests as text. */
  static String resource(String name) {
    return text(root().resolve("calc-report/src/test/resources/spanledger/job").resolve(name));
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

  static ReadJob read(String text) {
    ProblemLog log = new ProblemLog(FILE);
    return READER.read(new JobFile(text, "0".repeat(64)), log, new Reading(log));
  }
}
