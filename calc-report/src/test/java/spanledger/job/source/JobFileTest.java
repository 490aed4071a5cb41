package spanledger.job.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.job.problem.Place;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemLog;

class JobFileTest {

  @TempDir private Path directory;
  private final ProblemLog log = new ProblemLog("job.json");

  @Test
  void theDigestIsThatOfTheBytes() throws IOException {
    JobFile file = load("abc".getBytes(StandardCharsets.UTF_8)).orElseThrow();

    // SHA-256 of "abc": FIPS 180-2, appendix B.1
    assertThat(file.sha256())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(log.inOrder()).isEmpty();
  }

  @Test
  void aMissingFileIsToldWithTheOneProbablyMeant() throws IOException {
    Files.writeString(directory.resolve("platform.json"), "{}");

    assertThat(JobFile.load(directory.resolve("platfrom.json"), log)).isEmpty();
    assertThat(only().found()).isEqualTo("no file of this name");
    assertThat(only().remedy()).contains("did you mean \"platform.json\"");
    assertThat(only().place()).isEqualTo(Place.WHOLE_FILE);
  }

  @Test
  void aMissingDirectoryIsTold() {
    assertThat(JobFile.load(directory.resolve("no/job.json"), log)).isEmpty();
    assertThat(only().remedy()).contains("directory does not exist");
  }

  @Test
  void aDirectoryIsTold() {
    assertThat(JobFile.load(directory, log)).isEmpty();
    assertThat(only().found()).isEqualTo("a directory");
  }

  @Test
  void aFileThatIsTooLargeIsTold() throws IOException {
    assertThat(load(new byte[JobFile.LARGEST + 1])).isEmpty();
    assertThat(only().found()).contains("more than 16 MiB");
  }

  @Test
  void anEmptyFileIsTold() throws IOException {
    assertThat(load(" \n".getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(only().found()).isEqualTo("an empty file");
  }

  /** 0xE4 is ä in Latin-1 and no complete character in UTF-8. */
  @Test
  void aFileInAnotherEncodingIsToldWithThePlaceOfTheByte() throws IOException {
    assertThat(load("{\n  \"a\": \"B\u00e4r\"}".getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    assertThat(only().found()).contains("0xE4");
    assertThat(only().place()).isEqualTo(new Place(2, 10));
  }

  /** A multi-byte character that the end of the file cuts in two. */
  @Test
  void aCutOffCharacterIsTold() throws IOException {
    assertThat(load(new byte[] {'{', (byte) 0xC3})).isEmpty();
    assertThat(only().found()).contains("0xC3");
  }

  @Test
  void aFileInUtf16IsTold() throws IOException {
    assertThat(load("\uFEFF{}".getBytes(StandardCharsets.UTF_16LE))).isEmpty();
    assertThat(only().found()).contains("UTF-16");
  }

  @Test
  void aByteOrderMarkIsPassedOverWithAWarning() throws IOException {
    Optional<JobFile> file = load("\uFEFF{}".getBytes(StandardCharsets.UTF_8));

    assertThat(file.map(JobFile::text)).hasValue("{}");
    assertThat(only().isError()).isFalse();
    assertThat(only().found()).contains("byte order mark");
  }

  private Optional<JobFile> load(byte[] bytes) throws IOException {
    Path path = directory.resolve("job.json");
    Files.write(path, bytes);
    return JobFile.load(path, log);
  }

  private Problem only() {
    assertThat(log.inOrder()).hasSize(1);
    return log.inOrder().get(0);
  }
}
