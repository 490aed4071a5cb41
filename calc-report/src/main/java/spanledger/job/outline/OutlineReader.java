package spanledger.job.outline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.job.dxf.DxfOptions;
import spanledger.job.dxf.DxfReader;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.job.reading.Reading;
import spanledger.job.schema.PublishedSchema;
import spanledger.job.source.JobFile;
import spanledger.job.source.JsonTreeReader;
import spanledger.job.source.Located;
import spanledger.section.Extrusion;
import spanledger.section.ExtrusionPart;
import spanledger.section.outline.Outline;

/** Reads outline files and finds all that is wrong with them in one pass. */
public final class OutlineReader {

  /** Units of drawings, mm. */
  public static final Map<String, Double> UNITS = OutlineDecoder.UNITS;

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
    return read(path, DxfOptions.USUAL);
  }

  /**
   * Reads an outline file.
   *
   * @param path the file
   * @param options how a drawing is to be read, if it is one
   * @return as {@link #read(Path)}
   */
  public ReadOutline read(Path path, DxfOptions options) {
    ProblemLog log = new ProblemLog(path.toString());
    if (isDrawing(path)) {
      return drawing(path, options, log);
    }
    Optional<JobFile> file =
        JobFile.load(path, "an outline file", "see docs/outline-file.md for its form", log);
    return file.map(loaded -> read(loaded, Reading.directoryOf(path), log))
        .orElseGet(() -> new ReadOutline.Refused(log.inOrder()));
  }

  /** Whether a file is taken for a drawing, by the end of its name. */
  public static boolean isDrawing(Path path) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(".dxf");
  }

  private static ReadOutline drawing(Path path, DxfOptions options, ProblemLog log) {
    Optional<DxfReader.Drawing> read = DxfReader.read(path, options, log);
    if (read.isEmpty()) {
      return new ReadOutline.Refused(log.inOrder());
    }
    String file = String.valueOf(path.getFileName());
    String name = file.substring(0, file.length() - ".dxf".length());
    List<Outline> pieces = read.get().pieces();
    List<ExtrusionPart> parts = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      parts.add(new ExtrusionPart(String.valueOf(i + 1), pieces.get(i)));
    }
    String source = "drawing " + file;
    Extrusion extrusion =
        pieces.size() == 1
            ? Extrusion.of(name, source, pieces.get(0))
            : Extrusion.ofParts(name, source, parts, Optional.empty(), List.of());
    return new ReadOutline.Accepted(extrusion, read.get().sha256(), log.inOrder());
  }

  /** Reads a loaded file. */
  ReadOutline read(JobFile file, Path directory, ProblemLog log) {
    Optional<Located> root = JsonTreeReader.read(file.text(), log);
    Optional<Extrusion> extrusion = root.flatMap(r -> decode(r, directory, log));
    if (extrusion.isEmpty() || log.hasErrors()) {
      return new ReadOutline.Refused(log.inOrder());
    }
    return new ReadOutline.Accepted(extrusion.get(), file.sha256(), log.inOrder());
  }

  /**
   * Decodes an outline that stands in a document.
   *
   * @param value the outline
   * @param directory where paths in it begin
   * @param log takes its faults
   * @return the section, unless it has faults
   * @throws IllegalStateException if the schema lets something pass that the decoders cannot use
   */
  public Optional<Extrusion> decode(Located value, Path directory, ProblemLog log) {
    int before = log.errors();
    Reading reading = new Reading(log, directory);
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
