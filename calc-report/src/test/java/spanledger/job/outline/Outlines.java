package spanledger.job.outline;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.JobFile;

/** Outline files for tests. */
final class Outlines {

  static final String FILE = "outline.json";

  private static final OutlineReader READER = new OutlineReader();

  private Outlines() {}

  static Path root() {
    return Path.of(System.getProperty("spanledger.root", ".."));
  }

  /** The path of a file beside these tests. */
  static Path path(String name) {
    return root().resolve("calc-report/src/test/resources/spanledger/job/outline").resolve(name);
  }

  /** A file beside these tests as text. */
  static String resource(String name) {
    try {
      return Files.readString(path(name), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static ReadOutline read(String text) {
    return READER.read(new JobFile(text, "0".repeat(64)), path("."), new ProblemLog(FILE));
  }
}
