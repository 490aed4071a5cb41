package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The files of a table that is anchored, with all that a job can say of how it stands: ballast,
 * wind, sloping ground, permanent forces, and stays without which a mast on it falls.
 */
class StandingWorkbookTest {

  private static final Path JOB =
      Path.of(System.getProperty("spanledger.root", ".."))
          .resolve("verification/src/test/resources/spanledger/verification/standing/table.json");

  private static final List<String> SHEETS =
      List.of("Whole structure!", "Braces left out!", "Summary!");

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static Book book;
  private static JsonNode results;

  @BeforeAll
  static void check() throws IOException {
    checked = CheckedJob.of(JOB, folder, "--no-pictures");
    assertThat(checked.exit()).as(checked.said()).isEqualTo(1);
    book = checked.book();
    results = new ObjectMapper().readTree(folder.resolve("results.json").toFile());
  }

  @Test
  void anotherProgramWorksOutTheSameInEveryFormulaCell() throws IOException {
    // All sheets are compared on the examples. Here forces that are zero but for rounding differ.
    assertThat(checked.recalculation().disagreements())
        .filteredOn(words -> SHEETS.stream().anyMatch(words::startsWith))
        .isEmpty();
  }

  @Test
  void everyNumberIsAFormulaOrSaysWhereItComesFrom() {
    assertThat(new Origins(book).unexplained()).isEmpty();
  }

  /**
   * About the line C0 - D0, 1000 mm from A0 - B0: the rail load of EN ISO 14122-3, 300 N/m · 2 m at
   * 2.1 m height, times 1.5, and nothing of the floor, which lies within: 1.89e6 N·mm (statics; the
   * load is that of the rule set).
   */
  @Test
  void theFileNamesWhatTipsAndWhatHolds() {
    JsonNode line =
        results
            .at("/standing/lines")
            .valueStream()
            .filter(l -> l.required("outward").required(1).asDouble() > 0.9)
            .findFirst()
            .orElseThrow();
    JsonNode rail =
        line.required("rules")
            .valueStream()
            .filter(r -> r.required("rule").asText().equals("EQU G+1.5R+1.05Q"))
            .findFirst()
            .orElseThrow();

    assertThat(rail.required("destabilising").asDouble()).isCloseTo(1.89e6, within(1e5));
    assertThat(rail.required("leading").asText()).contains("outward");
    assertThat(rail.required("factor").asDouble())
        .isCloseTo(
            rail.required("stabilising").asDouble() / rail.required("destabilising").asDouble(),
            within(1e-12));
  }

  /** Anchored, so that tipping is no failure, but nothing that was checked either. */
  @Test
  void whatItsAnchorsKeepFromTippingIsNotChecked() {
    assertThat(results.required("verdicts").valueStream())
        .filteredOn(v -> v.required("check").asText().equals("tipping about"))
        .isNotEmpty()
        .allMatch(
            v ->
                v.required("status").asText().equals("passed")
                    == v.required("utilisation").asDouble() <= 1)
        .anyMatch(v -> v.required("status").asText().equals("notChecked"));
    assertThat(results.required("verdicts").valueStream())
        .noneMatch(v -> v.required("check").asText().equals("ballast needed"));
  }

  /** A mast on a hinge falls without either of its stays; the frame stands without any brace. */
  @Test
  void staysWithoutWhichAMastFallsFailOnTheSummary() {
    assertThat(results.at("/standing/bracesLeftOut/without").valueStream())
        .hasSize(3)
        .allMatch(
            loss ->
                loss.required("member").asText().startsWith("stay-")
                    == (loss.required("criticalFactor").asDouble() == 0));
    assertThat(book.cells())
        .filteredOn(c -> c.sheet().equals("Summary") && c.text().equals("stands without"))
        .hasSize(3)
        .allMatch(
            c ->
                book.at("Summary", c.row(), 3)
                    .text()
                    .equals(
                        book.at("Summary", c.row(), 1).text().startsWith("stay-")
                            ? "FAIL"
                            : "pass"));
  }
}
