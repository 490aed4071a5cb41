package spanledger.verification.calc;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * LibreOffice Calc without a window, as a second opinion on workbooks.
 *
 * <p>Found by the system property {@code spanledger.soffice}, else as {@code soffice} or {@code
 * libreoffice} on the path. Every run has its own profile, so runs neither see the user's settings
 * nor each other.
 */
public final class CalcEngine {

  /** The program to use instead of the one on the path. */
  public static final String PROGRAM_PROPERTY = "spanledger.soffice";

  /** When this environment variable is 1, a test that needs the program fails without it. */
  public static final String REQUIRED_VARIABLE = "SPANLEDGER_REQUIRE_CALC";

  private static final int LONGEST_RUN_SECONDS = 300;

  private static final String ABSENT =
      "LibreOffice Calc was not found: no soffice or libreoffice on the path and no -D"
          + PROGRAM_PROPERTY
          + "=/path/to/soffice. Workbooks were not recalculated by a second program.";

  /** Formulas are always worked out on loading, whatever program the file says it comes from. */
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry">
      <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
      <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
      </oor:items>
      """;

  private final Path program;

  private CalcEngine(Path program) {
    this.program = program;
  }

  /**
   * The engine on this machine, if any.
   *
   * @throws IllegalStateException if {@value #PROGRAM_PROPERTY} names no program
   */
  public static Optional<CalcEngine> find() {
    String named = System.getProperty(PROGRAM_PROPERTY);
    if (named != null) {
      Path program = Path.of(named);
      if (!Files.isExecutable(program)) {
        throw new IllegalStateException(
            "-D" + PROGRAM_PROPERTY + "=" + named + " is not a program that can be run.");
      }
      return Optional.of(new CalcEngine(program));
    }
    String path = System.getenv("PATH");
    return Arrays.stream(path == null ? new String[0] : path.split(File.pathSeparator))
        .flatMap(folder -> Stream.of("soffice", "libreoffice").map(n -> Path.of(folder, n)))
        .filter(Files::isExecutable)
        .findFirst()
        .map(CalcEngine::new);
  }

  /**
   * The engine for a test that needs it. Without one the test is skipped; it fails instead if the
   * environment says {@code SPANLEDGER_REQUIRE_CALC=1}.
   */
  public static CalcEngine required() {
    Optional<CalcEngine> engine = find();
    if (engine.isEmpty() && "1".equals(System.getenv(REQUIRED_VARIABLE))) {
      Assertions.fail(ABSENT);
    }
    Assumptions.assumeTrue(engine.isPresent(), ABSENT);
    return engine.orElseThrow();
  }

  /**
   * Loads a workbook, works out its formulas and saves it.
   *
   * @param workbook an xlsx file, not modified; should hold no results of formulas (see {@link
   *     CachedValues}), so that none can be mistaken for the engine's own
   * @return the recalculated xlsx file, in a new folder under the system's temporary folder that is
   *     removed when the tests end
   * @throws IOException if the program fails or takes longer than five minutes, with its output
   */
  public Path recalculate(Path workbook) throws IOException {
    return convert(workbook, "xlsx", "xlsx:Calc MS Excel 2007 XML");
  }

  /**
   * Prints a workbook, all sheets of it, as they are set to be printed.
   *
   * @param workbook an xlsx file, not modified
   * @return the PDF file, in a new folder that is removed when the tests end
   * @throws IOException if the program fails or takes longer than five minutes, with its output
   */
  public Path print(Path workbook) throws IOException {
    return convert(workbook, "pdf", "pdf:calc_pdf_Export");
  }

  private Path convert(Path workbook, String ending, String filter) throws IOException {
    Path folder = Files.createTempDirectory("spanledger-calc");
    Path profile = folder.resolve("profile");
    Path output = folder.resolve("converted");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
    Path settings = Files.createDirectories(profile.resolve("user"));
    Files.writeString(settings.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
    try {
      run(
          folder.resolve("output.txt"),
          List.of(
              program.toString(),
              "-env:UserInstallation=" + profile.toUri(),
              "--headless",
              "--norestore",
              "--convert-to",
              filter,
              "--outdir",
              output.toString(),
              workbook.toAbsolutePath().toString()));
    } finally {
      delete(profile);
    }
    Path name = workbook.getFileName();
    String stem = name == null ? "" : name.toString().replaceFirst("\\.[^.]*$", "");
    Path converted = output.resolve(stem + "." + ending);
    if (!Files.isRegularFile(converted)) {
      throw new IOException(
          program
              + " wrote nothing from "
              + workbook
              + ": "
              + Files.readString(folder.resolve("output.txt")));
    }
    return converted;
  }

  private static void run(Path printed, List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectErrorStream(true).redirectOutput(printed.toFile());
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process = builder.start();
    try {
      if (!process.waitFor(LONGEST_RUN_SECONDS, TimeUnit.SECONDS)) {
        throw new IOException(
            command.get(0)
                + " did not finish in "
                + LONGEST_RUN_SECONDS
                + " s: "
                + Files.readString(printed));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while waiting for " + command.get(0), e);
    } finally {
      // The program starts another; both go.
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
    if (process.exitValue() != 0) {
      throw new IOException(
          command.get(0) + " ended with " + process.exitValue() + ": " + Files.readString(printed));
    }
  }

  private static void delete(Path folder) {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
