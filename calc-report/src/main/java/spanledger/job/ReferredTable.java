package spanledger.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.tables.TableFormatException;

/**
 * A table in a file of its own that a job refers to.
 *
 * @param what what it is, with its article
 * @param rows what its rows must be
 * @param mend what to do about a row that is otherwise
 */
record ReferredTable(String what, String rows, String mend) {

  /**
   * Makes something of the bytes of a table.
   *
   * @param <T> what is made
   */
  interface Parser<T> {
    T parse(byte[] bytes) throws IOException;
  }

  /** Reads a file from the directory of the job; problems go to the reading. */
  <T> Optional<T> read(Reading reading, LocatedText file, Parser<T> parser) {
    try {
      return Optional.of(
          parser.parse(Files.readAllBytes(reading.directory().resolve(file.text()))));
    } catch (TableFormatException e) {
      String.valueOf(e.getMessage())
          .lines()
          .forEach(fault -> reading.error(file, fault, rows, mend));
    } catch (InvalidPathException e) {
      refuse(reading, file, "no path");
    } catch (NoSuchFileException e) {
      refuse(reading, file, "no file");
    } catch (IOException e) {
      reading.error(
          file, Quoted.text(file.text()) + ", which cannot be read", path(), "check the path");
    }
    return Optional.empty();
  }

  private void refuse(Reading reading, LocatedText file, String found) {
    reading.error(file, Quoted.text(file.text()) + ", which is " + found, path(), "check the path");
  }

  private String path() {
    return "the path of " + what + " (CSV or JSON), from the directory of the job file";
  }
}
