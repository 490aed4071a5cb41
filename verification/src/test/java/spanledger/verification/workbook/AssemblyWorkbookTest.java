package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a job that is described in the words of the trade: the maintenance stand. */
class AssemblyWorkbookTest {

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;

  @BeforeAll
  static void check() throws IOException {
    checked = CheckedJob.of(CheckedJob.example("packing-house-maintenance-stand.json"), folder);
    assertThat(checked.exit()).as(checked.said()).isEqualTo(1);
    book = checked.book();
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    assertThat(checked.recalculation().disagreements()).isEmpty();
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
  }

  /**
   * A light stand on a narrow base tips and slides when people lean on its rails; all else holds.
   */
  @Test
  void onlyItsStandingFailsAndGeometryIsJudged() throws IOException {
    JsonNode results = new ObjectMapper().readTree(folder.resolve("results.json").toFile());
    long geometry = 0;
    for (JsonNode verdict : results.path("verdicts")) {
      assertThat(verdict.path("check").asText()).isNotEqualTo("geometry rules");
      if (verdict.path("group").asText().equals("Geometry")) {
        geometry++;
      }
      if (verdict.path("status").asText().equals("failed")) {
        assertThat(verdict.path("group").asText()).isEqualTo("Whole structure");
      }
    }

    assertThat(geometry).isGreaterThanOrEqualTo(20);
  }

  /** One line for each kind of piece; their masses add up to that of the structure. */
  @Test
  void thePiecesAreListed() throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("parts.csv"));

    assertThat(lines.get(0))
        .isEqualTo("section,alloy,role,length_mm,count,mass_each_kg,mass_all_kg,members");
    assertThat(lines).hasSizeGreaterThan(10);
    double mass =
        lines.stream()
            .skip(1)
            .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[6]))
            .sum();
    // A stand of 1.5 m2 of light tubes weighs tens of kilograms; common practice, no source.
    assertThat(mass).isBetween(50.0, 300.0);
  }
}
