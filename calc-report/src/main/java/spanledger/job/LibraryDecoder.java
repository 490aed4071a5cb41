package spanledger.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.tables.Library;
import spanledger.tables.TableFormatException;

/** Adds the data files that a job names to the shipped tables. */
final class LibraryDecoder {

  private final Reading reading;

  LibraryDecoder(Reading reading) {
    this.reading = reading;
  }

  /**
   * The tables with what the job's files add; of one name, the later file's row counts.
   *
   * @param files paths of files, or of directories of them, from the directory of the job file
   */
  Tables decode(List<Located> files, Tables shipped) {
    Tables tables = shipped;
    for (Located file : files) {
      for (Library library : libraries(file)) {
        tables = with(library, tables, file);
      }
    }
    return tables;
  }

  private Tables with(Library library, Tables tables, Located file) {
    try {
      return tables.with(library);
    } catch (TableFormatException e) {
      reading.error(
          file,
          String.valueOf(e.getMessage()),
          "the id of a rule set that comes with the program, or in a library named before",
          "correct \"inherits\", or the order of the libraries");
      return tables;
    }
  }

  private List<Library> libraries(Located file) {
    if (!(file instanceof LocatedText text)) {
      reading.gap(file.pointer());
      return List.of();
    }
    try {
      Path path = reading.directory().resolve(text.text());
      if (!Files.isDirectory(path)) {
        return library(path, text.text(), text).stream().toList();
      }
      List<Library> all = new ArrayList<>();
      for (Path each : dataFiles(path)) {
        library(each, text.text() + "/" + each.getFileName(), text).ifPresent(all::add);
      }
      return all;
    } catch (InvalidPathException e) {
      refuse(text, Quoted.text(text.text()) + ", which is no path");
    } catch (IOException e) {
      refuse(text, Quoted.text(text.text()) + ", which cannot be read");
    }
    return List.of();
  }

  /** The data files of a directory, in the order of their names. */
  private static List<Path> dataFiles(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files
          .filter(file -> file.toString().endsWith(".csv") || file.toString().endsWith(".json"))
          .sorted()
          .toList();
    }
  }

  private Optional<Library> library(Path path, String name, LocatedText file) {
    try (InputStream content = Files.newInputStream(path)) {
      return Optional.of(Library.read(name, content));
    } catch (TableFormatException e) {
      for (String fault : String.valueOf(e.getMessage()).lines().toList()) {
        reading.error(
            file, fault, "rows as docs/how-to-add-data.md describes them", "correct the file");
      }
    } catch (NoSuchFileException e) {
      refuse(file, Quoted.text(name) + ", which is no file");
    } catch (IOException | UncheckedIOException e) {
      refuse(file, Quoted.text(name) + ", which cannot be read");
    }
    return Optional.empty();
  }

  private void refuse(LocatedText file, String found) {
    reading.error(
        file,
        found,
        "the path of a data file (CSV or JSON), or of a directory of them, from the directory of the"
            + " job file",
        "check the path");
  }
}
