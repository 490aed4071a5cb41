package spanledger.job.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spanledger.job.problem.Finding;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;

/**
 * What the decoders of one file share: the log, and the account of which keys they asked for.
 *
 * <p>Decoders report what a value means; how the file is built (missing and unknown keys, wrong
 * kinds of values) is reported by the schema. A decoder that meets a wrongly built value returns
 * empty and notes a gap. A gap or an unread key in a file without errors means that schema and
 * decoders disagree, which is a fault of the program.
 */
public final class Reading {

  private final ProblemLog log;
  private final Path directory;
  private final Map<String, Set<String>> asked = new TreeMap<>();
  private final List<Fields> objects = new ArrayList<>();
  private final Set<Pointer> gaps = new TreeSet<>();

  /** The reading of a file without a directory. */
  public Reading(ProblemLog log) {
    this(log, Path.of(""));
  }

  /**
   * The reading of a file.
   *
   * @param directory where paths in the file begin
   */
  public Reading(ProblemLog log, Path directory) {
    this.log = log;
    this.directory = directory;
  }

  /** The directory of a file, where paths in it begin. */
  public static Path directoryOf(Path file) {
    Path parent = file.getParent();
    return parent == null ? Path.of("") : parent;
  }

  /** Where paths in the file begin. */
  public Path directory() {
    return directory;
  }

  /** The log that all decoders of the file report to. */
  public ProblemLog log() {
    return log;
  }

  /**
   * The keys of an object.
   *
   * @param kind its name among the definitions of the schema
   */
  public Optional<Fields> fields(String kind, Located value) {
    if (value instanceof LocatedObject object) {
      Fields fields = new Fields(this, object, asked.computeIfAbsent(kind, k -> new TreeSet<>()));
      objects.add(fields);
      return Optional.of(fields);
    }
    gap(value.pointer());
    return Optional.empty();
  }

  /** The entries of an object whose keys are names. */
  public List<Located.Entry> named(Located value) {
    if (value instanceof LocatedObject object) {
      return object.entries();
    }
    gap(value.pointer());
    return List.of();
  }

  /** Whether nothing was reported yet at the place of a value. */
  public boolean isFree(Located value) {
    return !log.hasReported(value.place());
  }

  /** Notes a value that could not be used and that the schema is to report. */
  public void gap(Pointer pointer) {
    gaps.add(pointer);
  }

  /** Reports an error of a value. */
  public void error(Located value, String found, String expected, String remedy) {
    log.error(value.pointer(), value.place(), new Finding(found, expected, remedy));
  }

  /** Reports a warning about a value. */
  public void warning(Located value, String found, String expected, String remedy) {
    log.warning(value.pointer(), value.place(), new Finding(found, expected, remedy));
  }

  /** Reports an error of a name. */
  public void error(Located.Entry entry, String found, String expected, String remedy) {
    log.error(entry.value().pointer(), entry.keyPlace(), new Finding(found, expected, remedy));
  }

  /** Reports a warning about a named thing. */
  public void warning(Located.Entry entry, String found, String expected, String remedy) {
    log.warning(entry.value().pointer(), entry.keyPlace(), new Finding(found, expected, remedy));
  }

  /** The keys that decoders asked for, by kind of object. */
  public Map<String, Set<String>> asked() {
    return asked;
  }

  /** Values that could not be used, and keys that no decoder asked for. */
  public Set<Pointer> unused() {
    Set<Pointer> unused = new TreeSet<>(gaps);
    objects.forEach(fields -> unused.addAll(fields.unread()));
    return unused;
  }
}
