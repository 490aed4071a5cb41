package spanledger.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.job.reading.Reading;
import spanledger.job.schema.PublishedSchema;
import spanledger.job.source.JobFile;
import spanledger.job.source.JsonTreeReader;
import spanledger.job.source.Located;

/** Reads job files and finds all that is wrong with them in one pass. */
public final class JobReader {

  private final Tables tables;
  private final SolvedOutlines solved = new SolvedOutlines();
  private final PublishedSchema schema = PublishedSchema.job();

  /**
   * A reader.
   *
   * @param tables the published data to which job files refer
   */
  public JobReader(Tables tables) {
    this.tables = tables;
  }

  /**
   * Reads a job file.
   *
   * @param path the file
   * @return the job with warnings, or all reasons why there is none
   * @throws IllegalStateException if the schema lets something pass that the decoders cannot use; a
   *     fault of the program
   */
  public ReadJob read(Path path) {
    ProblemLog log = new ProblemLog(path.toString());
    Optional<JobFile> file = JobFile.load(path, log);
    return file.map(loaded -> read(loaded, log, new Reading(log, Reading.directoryOf(path))))
        .orElseGet(() -> new ReadJob.Refused(log.inOrder()));
  }

  /** Reads a loaded file; {@code reading} keeps the account of the keys. */
  ReadJob read(JobFile file, ProblemLog log, Reading reading) {
    Optional<Located> root = JsonTreeReader.read(file.text(), log);
    if (root.isEmpty()) {
      return new ReadJob.Refused(log.inOrder());
    }
    Optional<Job> job =
        new JobDecoder(reading, tables, solved, StiffnessBound.LOWER, file.sha256())
            .decode(root.get());
    schema.report(root.get(), log);
    if (log.hasErrors()) {
      return new ReadJob.Refused(log.inOrder());
    }
    Set<Pointer> unused = reading.unused();
    if (job.isEmpty() || !unused.isEmpty()) {
      throw new IllegalStateException(
          "The schema accepts what the decoders cannot use: " + unused + ".");
    }
    return accepted(job.get(), root.get(), file, log, reading);
  }

  /** The job at the bounds it asks for. What is wrong with the file is known by now. */
  private ReadJob accepted(Job lower, Located root, JobFile file, ProblemLog log, Reading reading) {
    List<StiffnessBound> bounds = lower.analysis().bounds();
    if (!bounds.contains(StiffnessBound.UPPER)) {
      return new ReadJob.Accepted(lower, Optional.empty(), log.inOrder());
    }
    Reading again = new Reading(new ProblemLog(""), reading.directory());
    Job upper =
        new JobDecoder(again, tables, solved, StiffnessBound.UPPER, file.sha256())
            .decode(root)
            .orElseThrow(() -> new IllegalStateException("A sound job cannot be read again."));
    if (!bounds.contains(StiffnessBound.LOWER)) {
      return new ReadJob.Accepted(upper, Optional.empty(), log.inOrder());
    }
    boolean differ =
        !lower.frame().members().equals(upper.frame().members())
            || !lower.frame().supports().equals(upper.frame().supports());
    return new ReadJob.Accepted(
        lower, differ ? Optional.of(upper) : Optional.empty(), log.inOrder());
  }
}
