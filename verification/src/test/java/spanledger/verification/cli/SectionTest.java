package spanledger.verification.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.cli.ExitCode;
import spanledger.cli.Main;
import spanledger.job.Tables;

/** {@code section} from the outline file to its files, its words and its exit code. */
class SectionTest {

  private static final String TUBE =
      """
      {
        "formatVersion": 1, "name": "box", "source": "drawn for this test", "unit": "mm",
        "outer": [[0, 0], [60, 0], [60, 100], [0, 100]],
        "holes": [[[3, 4], [57, 4], [57, 96], [3, 96]]]
      }
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int run(Object... words) {
    return Main.run(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        Stream.of(words).map(Object::toString).toArray(String[]::new));
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("box.json"), text);
  }

  @AfterEach
  void nothingOfTheProgramShows() {
    assertThat(out + "\n" + err).doesNotContain("Exception", "\tat ", "java.", "spanledger.cli");
  }

  private static Stream<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList().stream();
    }
  }

  /** A box 60 x 100 with walls 3 and 4: A = 60·100 − 54·92 = 1032 mm², by hand. */
  @Test
  void printsPropertiesAndWritesFilesBesideTheOutline() throws IOException {
    int exit = run("section", file(TUBE));

    assertThat(exit).isEqualTo(ExitCode.ALL_PASS);
    assertThat(out.toString())
        .contains("box", "1032.00 mm²", "area", "torsion constant", "± 0.0", "internal")
        .contains("People stand on these structures", "Local codes")
        .doesNotContain("UNSURE");
    assertThat(err.toString()).isEmpty();
    assertThat(names(folder))
        .containsExactly(
            "box-outline.svg",
            "box-plates.svg",
            "box-section.json",
            "box-section.xlsx",
            "box-shear-y.svg",
            "box-shear-z.svg",
            "box-torsion.svg",
            "box-warping.svg",
            "box.json");
  }

  @Test
  void printsJsonThatAgreesWithTheFile() throws IOException {
    int exit = run("section", file(TUBE), "--json", "--out", folder.resolve("results"));

    assertThat(exit).isEqualTo(ExitCode.ALL_PASS);
    String written = Files.readString(folder.resolve("results/box-section.json"));
    assertThat(out.toString()).isEqualTo(written);
    JsonNode root = new ObjectMapper().readTree(written);
    assertThat(root.get("format").asText()).isEqualTo("spanledger-section");
    assertThat(root.get("exact").get(0).get("value").asDouble()).isCloseTo(1032, within(1e-9));
    assertThat(root.get("platesSure").asBoolean()).isTrue();
    assertThat(root.get("mesh").get("targetMet").asBoolean()).isTrue();
    assertThat(root.get("mesh").get("torsionError").asDouble()).isBetween(0.0, 0.001);
  }

  /** Density of EN AW-6063: 2700 kg/m³, EN 1999-1-1 (from memory); 1032 mm² give 2.7864 kg/m. */
  @Test
  void massPerMetreNeedsAnAlloy() throws IOException {
    run("section", file(TUBE), "--alloy", "6063-T6");

    assertThat(out.toString()).contains("2.7864 kg/m");
  }

  @Test
  void unsurePlatesAreSaidAloudAndEndWithZero() throws IOException {
    String lipped =
        """
        {
          "formatVersion": 1, "name": "lipped", "source": "drawn for this test", "unit": "mm",
          "outer": [[0, 0], [30, 0], [30, 8], [28, 8], [28, 2], [2, 2], [2, 60], [0, 60]]
        }
        """;
    int exit = run("section", file(lipped));

    assertThat(exit).isEqualTo(ExitCode.ALL_PASS);
    assertThat(out.toString()).contains("!! UNSURE", "NOT CHECKED", "unsure, because");
    assertThat(Files.readString(folder.resolve("box-plates.svg"))).contains("UNSURE");
    JsonNode root = new ObjectMapper().readTree(folder.resolve("box-section.json").toFile());
    assertThat(root.get("platesSure").asBoolean()).isFalse();
  }

  /** Two bars that act together: exact properties, but nobody can know the torsion; exit code 1. */
  @Test
  void piecesActingTogetherHaveNoTorsion() throws IOException {
    String bars =
        """
        {
          "formatVersion": 1, "name": "bars", "source": "drawn for this test", "unit": "mm",
          "parts": {
            "low": {"outer": {"rectangle": {"from": [0, 0], "to": [20, 2]}}},
            "high": {"outer": {"rectangle": {"from": [0, 18], "to": [20, 20]}}}
          },
          "composite": {"together": true, "by": "the author of this test"}
        }
        """;
    int exit = run("section", file(bars));

    assertThat(exit).isEqualTo(ExitCode.NOT_ALL_PASS);
    assertThat(out.toString()).contains("80.0000 mm²", "NOT worked out", "author of this test");
    assertThat(folder.resolve("box-section.xlsx")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [57, 4] | [67, 4]  | hole
          "outer" | "outre"  | outre
          60, 100 | 60, 10O  | box.json
          """)
  void wrongOutlinesAreRefusedAndNothingIsWritten(String old, String wrong, String says)
      throws IOException {
    int exit = run("section", file(TUBE.replace(old, wrong)));

    assertThat(exit).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains(says);
    assertThat(names(folder)).containsExactly("box.json");
  }

  @ParameterizedTest
  @CsvSource({
    "--target,0.0001,expected from",
    "--target,7,expected from",
    "--poisson,0.7,expected from 0 to 0.5",
    "--alloy,6063-T99,6063-T99"
  })
  void wrongOptionsAreRefused(String option, String value, String says) throws IOException {
    int exit = run("section", file(TUBE), option, value);

    assertThat(exit).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains(says);
    assertThat(names(folder)).containsExactly("box.json");
  }

  /** Standard channel 4 x 1.74: area 1.48 in² = 954.8 mm² as published, to the table's digits. */
  @Test
  void catalogueSectionsAreFoundByName() throws IOException {
    String name =
        Tables.shipped().sections().keySet().stream()
            .filter(known -> known.contains("4x1.74"))
            .findFirst()
            .orElseThrow();
    int exit = run("section", name, "--out", folder, "--json");

    assertThat(exit).isEqualTo(ExitCode.ALL_PASS);
    JsonNode root = new ObjectMapper().readTree(out.toString());
    assertThat(root.get("exact").get(0).get("value").asDouble()).isCloseTo(954.8, within(7.0));
    assertThat(root.has("inputSha256")).isFalse();
    assertThat(names(folder)).hasSize(8);
  }

  @Test
  void wrongCatalogueNamesAreRefusedWithANearOne() {
    String name = Tables.shipped().sections().keySet().iterator().next();
    int exit = run("section", name + "x");

    assertThat(exit).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("neither a file nor a catalogue section", name);
  }

  @Test
  void missingFileIsSaid() {
    int exit = run("section", folder.resolve("none.json"));

    assertThat(exit).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("none.json");
  }

  @Test
  void aFileInTheWayIsSaidAndNothingIsHalfWritten() throws IOException {
    Path blocked = Files.writeString(folder.resolve("blocked"), "");
    int exit = run("section", file(TUBE), "--out", blocked);

    assertThat(exit).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("cannot be written", "--out");
    assertThat(names(folder)).containsExactly("blocked", "box.json");
  }
}
