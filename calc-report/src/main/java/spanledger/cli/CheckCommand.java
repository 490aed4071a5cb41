package spanledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spanledger.job.FrameFile;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.job.problem.ProblemReport;

/** Reads a job file, tells all that is wrong with it, or calculates it. */
@Command(
    name = "check",
    description = "Checks a structure: reads the job file, calculates it and writes the results.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class)
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "The job file; see docs/job-file.md.")
  private Path job;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the results are written; beside the job file if left out.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print results and problems as JSON.")
  private boolean json;

  @Option(names = "--quiet", description = "Print problems only.")
  private boolean quiet;

  @Option(
      names = "--no-pictures",
      description = "Draw no pictures of the structure, and remove those of an earlier run.")
  private boolean noPictures;

  @Option(
      names = "--show-frame",
      description =
          "Write the frame that the job's assembly makes as a job file of its own, frame.json, and"
              + " calculate nothing.")
  private boolean showFrame;

  private final JobRunner runner;

  /**
   * The command.
   *
   * @param runner calculates jobs that were read without errors
   */
  @SuppressWarnings("NullAway.Init") // picocli injects spec and job before it calls the command
  CheckCommand(JobRunner runner) {
    this.runner = runner;
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter results = spec.commandLine().getOut();
    PrintWriter messages = spec.commandLine().getErr();
    ReadJob read = new JobReader(Tables.shipped()).read(job);
    ProblemReport report = new ProblemReport(job.toString(), read.problems());
    if (read instanceof ReadJob.Refused) {
      if (json) {
        results.print(report.json());
      } else {
        messages.print(report.text());
      }
      results.flush();
      messages.flush();
      return ExitCode.BAD_INPUT;
    }
    messages.print(report.text());
    messages.flush();
    ReadJob.Accepted accepted = (ReadJob.Accepted) read;
    if (showFrame) {
      return showFrame(accepted.job(), messages);
    }
    return runner.run(
        job,
        accepted.jobs(),
        accepted.warnings(),
        new JobRunner.Output(directory(), json, quiet, !noPictures, results, messages));
  }

  /** Writes the frame beside its place, then moves it in. */
  private int showFrame(Job read, PrintWriter messages) throws IOException {
    if (read.assembly().isEmpty()) {
      messages.println(job + " has no assembly; its frame is in it already.");
      messages.flush();
      return ExitCode.BAD_INPUT;
    }
    String frame =
        FrameFile.of(Files.readString(job, StandardCharsets.UTF_8), read.assembly().get());
    Path directory = directory();
    try {
      Files.createDirectories(directory);
      Path beside = directory.resolve(".frame.json.part");
      Files.writeString(beside, frame, StandardCharsets.UTF_8);
      Files.move(beside, directory.resolve("frame.json"), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      messages.println("The frame cannot be written to " + directory + ": " + e.getMessage());
      messages.flush();
      return ExitCode.BAD_INPUT;
    }
    if (!quiet) {
      messages.println("Written: " + directory.resolve("frame.json"));
      messages.flush();
    }
    return ExitCode.ALL_PASS;
  }

  private Path directory() {
    if (out != null) {
      return out;
    }
    Path parent = job.getParent();
    return parent == null ? Path.of("") : parent;
  }
}
