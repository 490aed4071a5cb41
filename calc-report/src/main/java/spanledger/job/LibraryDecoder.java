package spanledger.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
   * @param files paths from the directory of the job file
   */
  Tables decode(List<Located> files, Tables shipped) {
    Tables tables = shipped;
    for (Located file : files) {
      Optional<Library> library = library(file);
      if (library.isPresent()) {
        tables = tables.with(library.get());
      }
    }
    return tables;
  }

  private Optional<Library> library(Located file) {
    if (!(file instanceof LocatedText text)) {
      reading.gap(file.pointer());
      return Optional.empty();
    }
    try {
      Path path = reading.directory().resolve(text.text());
      try (InputStream content = Files.newInputStream(path)) {
        return Optional.of(Library.read(text.text(), content));
      }
    } catch (TableFormatException e) {
      for (String fault : String.valueOf(e.getMessage()).lines().toList()) {
        reading.error(
            file, fault, "rows as docs/how-to-add-data.md describes them", "correct the file");
      }
    } catch (NoSuchFileException | InvalidPathException e) {
      refuse(text, Quoted.text(text.text()) + ", which is no file");
    } catch (IOException | UncheckedIOException e) {
      refuse(text, Quoted.text(text.text()) + ", which cannot be read");
    }
    return Optional.empty();
  }

  private void refuse(LocatedText file, String found) {
    reading.error(
        file,
        found,
        "the path of a data file (CSV or JSON) from the directory of the job file",
        "check the path");
  }
}
