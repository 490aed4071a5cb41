package spanledger.verification.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.cli.ExitCode;
import spanledger.cli.Main;
import spanledger.verification.workbook.PackingHouse;

/**
 * {@code check} from the job file to its files, its words and its exit code. No job can end with 0
 * yet: what is not checked at all, as the buckling of members, counts as not checked.
 */
class CheckTest {

  private static final Path FIRST_BEAM = PackingHouse.JOB.resolveSibling("first-beam.json");
  private static final List<String> CAUTIONS =
      List.of("People stand on these structures", "licensed engineer", "Local codes");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int run(Object... words) {
    return Main.run(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        Stream.of(words).map(Object::toString).toArray(String[]::new));
  }

  /** Users get messages, not the inside of the program. */
  @AfterEach
  void nothingOfTheProgramShows() {
    assertThat(out + "\n" + err).doesNotContain("Exception", "\tat ", "java.", "spanledger.cli");
  }

  private Path job(String... replacements) throws IOException {
    String text = Files.readString(FIRST_BEAM);
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    return Files.writeString(folder.resolve("job.json"), text);
  }

  private List<String> files(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(f -> f.getFileName() + "").sorted().toList();
    }
  }

  @Test
  void theExampleIsNotAllPassedBecauseSomeIsNotChecked() throws IOException {
    PackingHouse example = PackingHouse.checked();

    assertThat(example.exit()).isEqualTo(ExitCode.NOT_ALL_PASS);
    assertThat(example.err()).doesNotContain("Exception", "\tat ");
    assertThat(files(example.folder()))
        .containsExactly("parts.csv", "pictures", "results.json", "workbook.xlsx");
    assertThat(example.out())
        .contains(CAUTIONS)
        .contains("0 FAILED", "NOT CHECKED")
        .contains("Written: " + example.workbook(), example.results().toString());
    JsonNode results = new ObjectMapper().readTree(example.results().toFile());
    List<JsonNode> open =
        results
            .required("verdicts")
            .valueStream()
            .filter(v -> v.required("status").asText().equals("notChecked"))
            .toList();
    assertThat(open).hasSizeGreaterThanOrEqualTo(9);
    for (JsonNode verdict : open) {
      // Several that have the same said of them stand on one line, which names the first.
      String check = "  " + verdict.required("check").asText() + ", ";
      String remark = ": " + verdict.required("remark").asText();
      assertThat(example.out().lines())
          .anySatisfy(line -> assertThat(line).startsWith(check).endsWith(remark));
    }
    assertThat(results.required("cautions").valueStream().map(JsonNode::asText).toList().toString())
        .contains(CAUTIONS);
  }

  @Test
  void anOverloadedBeamFailsAndSaysSo() throws IOException {
    Path job = job("\"thickness\": \"3 mm\"", "\"thickness\": \"1 mm\"");

    assertThat(run("check", job, "--out", folder.resolve("out"))).isEqualTo(ExitCode.NOT_ALL_PASS);

    JsonNode results = new ObjectMapper().readTree(folder.resolve("out/results.json").toFile());
    assertThat(results.at("/counts/failed").asInt()).isPositive();
    assertThat(out.toString())
        .contains(results.at("/counts/failed").asText() + " FAILED")
        .containsPattern("\\d+\\.\\d% FAIL");
  }

  @Test
  void jsonOnStandardOutputIsTheResultsFile() throws IOException {
    assertThat(run("check", FIRST_BEAM, "--json", "--out", folder))
        .isEqualTo(ExitCode.NOT_ALL_PASS);

    assertThat(out.toString())
        .isEqualTo(Files.readString(folder.resolve("results.json"), StandardCharsets.UTF_8));
    assertThat(new ObjectMapper().readTree(out.toString()).required("format").asText())
        .isEqualTo("spanledger-results");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void quietPrintsNothingButWritesBoth() throws IOException {
    assertThat(run("check", FIRST_BEAM, "--quiet", "--out", folder))
        .isEqualTo(ExitCode.NOT_ALL_PASS);

    assertThat(out.toString() + err).isEmpty();
    assertThat(files(folder))
        .containsExactly("parts.csv", "pictures", "results.json", "workbook.xlsx");
  }

  @Test
  void picturesAreThoseOfTheLastRun() throws IOException {
    Path pictures = Files.createDirectories(folder.resolve("pictures"));
    Files.writeString(pictures.resolve("of-an-earlier-run.svg"), "<svg/>");
    Files.writeString(pictures.resolve("notes.txt"), "mine");

    run("check", FIRST_BEAM, "--quiet", "--out", folder);

    assertThat(files(pictures))
        .contains("general.svg", "utilisation.svg", "notes.txt")
        .doesNotContain("of-an-earlier-run.svg")
        .noneMatch(name -> name.endsWith(".part"));
    assertThat(picturesInWorkbook()).isEqualTo(files(pictures).size() - 1);
    String general = Files.readString(pictures.resolve("general.svg"));
    run("check", FIRST_BEAM, "--quiet", "--out", folder);
    assertThat(pictures.resolve("general.svg")).hasContent(general);

    run("check", FIRST_BEAM, "--quiet", "--no-pictures", "--out", folder);

    assertThat(files(pictures)).containsExactly("notes.txt");
    assertThat(picturesInWorkbook()).isZero();
  }

  private int picturesInWorkbook() throws IOException {
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(Files.newInputStream(folder.resolve("workbook.xlsx")))) {
      return workbook.getSheet("Pictures") == null ? 0 : workbook.getAllPictures().size();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'\"section\": \"beam\"' | '\"section\": \"baem\"' | the name of a section: \"beam\"",
        "'\"120 mm\"' | '\"120\"' | 120",
        "'[\"3 m\", \"0 m\", \"0 m\"]' | '[\"0 m\", \"0 m\", \"0 m\"]' | /nodes/A2",
        "'\"rules\"' | '\"rulez\"' | rulez",
        "'{\"alloy\"' | '{\"alloy' | a colon between key and value"
      })
  void aBadJobWritesNothingAndLeavesAnEarlierWorkbookAlone(
      String found, String put, String expected) throws IOException {
    Path job = job(found, put);
    Path results = Files.createDirectory(folder.resolve("issued"));
    Files.writeString(results.resolve("workbook.xlsx"), "issued earlier");
    Files.writeString(results.resolve("results.json"), "issued earlier");

    assertThat(run("check", job, "--out", results)).isEqualTo(ExitCode.BAD_INPUT);

    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains(job + ":", expected, "nothing was calculated");
    assertThat(files(results)).containsExactly("results.json", "workbook.xlsx");
    assertThat(results.resolve("workbook.xlsx")).hasContent("issued earlier");
    assertThat(results.resolve("results.json")).hasContent("issued earlier");
  }

  @ParameterizedTest
  @ValueSource(strings = {"missing.json", ""})
  void aJobThatIsNoFileIsToldByName(String name) {
    Path job = folder.resolve(name);

    assertThat(run("check", job, "--out", folder.resolve("out"))).isEqualTo(ExitCode.BAD_INPUT);

    assertThat(err.toString()).contains(job.toString());
    assertThat(folder.resolve("out")).doesNotExist();
  }

  /** Beam b rests on its west bearing only, so it turns down about it. */
  @Test
  void aStructureThatCanMoveIsRefusedByNodeAndDirection() throws IOException {
    Path job =
        job(
            "\"b-east\": {\"node\": \"B2\", \"shiftY\": \"fixed\", \"shiftZ\": \"fixed\"}",
            "\"b-east\": {\"node\": \"B2\", \"shiftY\": \"fixed\"}");
    Path results = folder.resolve("out");

    assertThat(run("check", job, "--out", results)).isEqualTo(ExitCode.BAD_INPUT);

    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .contains(job.toString(), "cannot be calculated")
        .containsPattern("\\bB[12]\\b")
        .containsPattern("along Z|about Y");
    assertThat(results).doesNotExist();
  }

  @Test
  void aDirectoryThatCannotBeMadeIsToldAndNothingIsLost() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "a file of the user");

    assertThat(run("check", FIRST_BEAM, "--out", file)).isEqualTo(ExitCode.BAD_INPUT);

    assertThat(err.toString()).contains("cannot be written", file.toString(), "--out");
    assertThat(out.toString()).isEmpty();
    assertThat(file).hasContent("a file of the user");
  }

  @Test
  void aWorkbookThatCannotBeReplacedLeavesTheResultsAsTheyWere() throws IOException {
    Path results = Files.createDirectory(folder.resolve("out"));
    Files.createDirectories(results.resolve("workbook.xlsx/inside"));
    Files.writeString(results.resolve("results.json"), "issued earlier");

    assertThat(run("check", FIRST_BEAM, "--out", results)).isEqualTo(ExitCode.BAD_INPUT);

    assertThat(err.toString()).contains("cannot be written", results.toString());
    assertThat(results.resolve("results.json")).hasContent("issued earlier");
    assertThat(files(results)).containsExactly("results.json", "workbook.xlsx");
  }

  @Test
  void helpTellsCommandsExitCodesAndCautions() {
    assertThat(run("--help")).isEqualTo(ExitCode.ALL_PASS);
    assertThat(out.toString())
        .contains("check", "rules", "Exit codes", "0", "1", "2", "3")
        .contains(CAUTIONS.subList(0, 2))
        .contains("govern");
    assertThat(run("check", "--help")).isEqualTo(ExitCode.ALL_PASS);
    assertThat(out.toString()).contains("--out", "--json", "--quiet");
  }

  @Test
  void versionIsOneLine() {
    assertThat(run("--version")).isEqualTo(ExitCode.ALL_PASS);
    assertThat(out.toString()).matches("spanledger \\d+\\.\\d+\\.\\d+\\S*\\R");
  }
}
