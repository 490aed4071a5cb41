package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file on disk. */
class DeterministicPackageTest {

  @TempDir Path folder;

  private static byte[] bytes() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      new SampleWorkbook(book, 8);
      return book.toBytes();
    }
  }

  @Test
  void theSameContentGivesTheSameBytes() {
    assertThat(bytes()).isEqualTo(bytes());
  }

  @Test
  void theBytesDoNotDependOnTheTimeZone() {
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      byte[] east = bytes();
      TimeZone.setDefault(TimeZone.getTimeZone("America/Los_Angeles"));
      assertThat(bytes()).isEqualTo(east);
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @Test
  void parsingFormulasDoesNotChangeTheFile() {
    try (LedgerWorkbook book = LedgerWorkbook.parsingFormulas(SampleWorkbook.IDENTITY)) {
      new SampleWorkbook(book, 8);
      assertThat(book.toBytes()).isEqualTo(bytes());
    }
  }

  @Test
  void theFileBearsTheDateOfTheJob() throws IOException {
    try (ReadBack back = ReadBack.of(bytes())) {
      var core = back.workbook().getProperties().getCoreProperties();
      assertThat(core.getCreated().toInstant()).hasToString("2026-03-02T00:00:00Z");
      assertThat(core.getModified().toInstant()).hasToString("2026-03-02T00:00:00Z");
      assertThat(core.getCreator()).isEqualTo("Spanledger");
    }
  }

  @Test
  void aNewFileReplacesTheOldOne() throws IOException {
    Path file = Files.writeString(folder.resolve("proof.xlsx"), "the old one");
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      new SampleWorkbook(book, 8);
      book.save(file);
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes());
    assertOnlyFile(file);
  }

  @Test
  void theOldFileStaysIfTheNewOneCannotBeWritten() throws IOException {
    Path file = Files.writeString(folder.resolve("proof.xlsx"), "the old one");
    LedgerWorkbook closed = LedgerWorkbook.of(SampleWorkbook.IDENTITY);
    closed.sheet("Basis");
    closed.close();
    assertThatThrownBy(() -> closed.save(file)).isInstanceOf(IOException.class);
    assertThat(file).hasContent("the old one");
    assertOnlyFile(file);
  }

  private void assertOnlyFile(Path file) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }
}
