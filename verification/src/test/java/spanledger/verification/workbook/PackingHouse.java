package spanledger.verification.workbook;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import spanledger.cli.Main;

/**
 * The example of the packing house, checked once for all tests of this run.
 *
 * @param exit the exit code
 * @param out what was printed as result
 * @param err what was printed as message
 * @param folder where the files are
 */
public record PackingHouse(int exit, String out, String err, Path folder) {

  /** The job file. */
  public static final Path JOB =
      Path.of(System.getProperty("spanledger.root", ".."))
          .resolve("docs/examples/packing-house-inspection-platform.json");

  /** Runs when first asked for. */
  private static final class Once {
    static final PackingHouse CHECKED = check();
  }

  /** The example as {@code check} leaves it; not to be changed. */
  public static PackingHouse checked() {
    return Once.CHECKED;
  }

  /** The workbook. */
  public Path workbook() {
    return folder.resolve("workbook.xlsx");
  }

  /** The results file. */
  public Path results() {
    return folder.resolve("results.json");
  }

  private static PackingHouse check() {
    try {
      Path folder = Files.createTempDirectory("spanledger-example");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      int exit =
          Main.run(
              new PrintWriter(out),
              new PrintWriter(err),
              List.of("check", JOB.toString(), "--out", folder.toString()).toArray(String[]::new));
      return new PackingHouse(exit, out.toString(), err.toString(), folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
