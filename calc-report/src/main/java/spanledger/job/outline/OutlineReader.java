package spanledger.job.outline;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.job.reading.Reading;
import spanledger.job.schema.PublishedSchema;
import spanledger.job.source.JobFile;
import spanledger.job.source.JsonTreeReader;
import spanledger.job.source.Located;
import spanledger.section.Extrusion;

/** Reads outline files and finds all that is wrong with them in one pass. */
public final class OutlineReader {

  private final PublishedSchema schema = PublishedSchema.outline();

  /** A reader. */
  public OutlineReader() {}

  /**
   * Reads an outline file.
   *
   * @param path the file
   * @return the section with warnings, or all reasons why there is none
   * @throws IllegalStateException if the schema lets something pass that the decoders cannot use; a
   *     fault of the program
   */
  public ReadOutline read(Path path) {
    ProblemLog log = new ProblemLog(path.toString());
    Optional<JobFile> file =
        JobFile.load(path, "an outline file", "see docs/outline-file.md for its form", log);
    return file.map(loaded -> read(loaded, log))
        .orElseGet(() -> new ReadOutline.Refused(log.inOrder()));
  }

  /** Reads a loaded file. */
  ReadOutline read(JobFile file, ProblemLog log) {
    Optional<Located> root = JsonTreeReader.read(file.text(), log);
    Optional<Extrusion> extrusion = root.flatMap(r -> decode(r, log));
    if (extrusion.isEmpty() || log.hasErrors()) {
      return new ReadOutline.Refused(log.inOrder());
    }
    return new ReadOutline.Accepted(extrusion.get(), file.sha256(), log.inOrder());
  }

  /**
   * Decodes an outline that stands in a document.
   *
   * @param value the outline
   * @param log takes its faults
   * @return the section, unless it has faults
   * @throws IllegalStateException if the schema lets something pass that the decoders cannot use
   */
  public Optional<Extrusion> decode(Located value, ProblemLog log) {
    int before = log.errors();
    Reading reading = new Reading(log);
    Optional<Extrusion> extrusion = new OutlineDecoder(reading).decode(value);
    schema.report(value, log);
    if (log.errors() > before) {
      return Optional.empty();
    }
    Set<Pointer> unused = reading.unused();
    if (extrusion.isEmpty() || !unused.isEmpty()) {
      throw new IllegalStateException(
          "The schema accepts what the decoders cannot use: " + unused + ".");
    }
    return extrusion;
  }
}
