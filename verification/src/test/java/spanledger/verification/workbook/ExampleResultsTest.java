package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The results file says what the sheet Summary says. */
class ExampleResultsTest {

  private static final String SHEET = "Summary";
  private static final int USED = 2;
  private static final int VERDICT = 3;
  private static final int REMARK = 4;
  private static final int ALIKE = 7;

  private static Book book;
  private static List<JsonNode> verdicts;

  /** A judged row of the sheet, with the title of its table. */
  private record Row(String group, BookCell first) {
    String text(int column) {
      return book.at(SHEET, first.row(), column).text();
    }

    boolean covers(String subject) {
      return text(1).equals(subject) || List.of(text(ALIKE).split(", ")).contains(subject);
    }
  }

  @BeforeAll
  static void read() throws IOException {
    book = Book.read(PackingHouse.checked().workbook());
    verdicts =
        new ObjectMapper()
            .readTree(PackingHouse.checked().results().toFile())
            .required("verdicts")
            .valueStream()
            .toList();
  }

  private static List<Row> judged() {
    List<Row> rows = new ArrayList<>();
    for (List<BookCell> table : book.tables(SHEET)) {
      for (BookCell cell : table) {
        String outcome = book.at(SHEET, cell.row(), VERDICT).text();
        if (cell.column() == 0 && List.of("pass", "FAIL", "NOT CHECKED").contains(outcome)) {
          rows.add(new Row(table.get(0).text(), cell));
        }
      }
    }
    return rows;
  }

  /** Checks of the frame as a whole have a table of their own. */
  private static String group(Row row) {
    return row.group().equals("Stability of the frame") ? "Sway and stability" : row.group();
  }

  private static Optional<JsonNode> verdict(String group, String check, String subject) {
    return verdicts.stream()
        .filter(v -> group.isEmpty() || v.required("group").asText().equals(group))
        .filter(v -> v.required("check").asText().equals(check))
        .filter(v -> v.required("subject").asText().equals(subject))
        .findFirst();
  }

  /** Tolerance: the file has the demand and the capacity, the sheet the ratio by formula. */
  @Test
  void everyJudgedRowIsAVerdictOfTheFile() {
    assertThat(judged()).hasSizeGreaterThan(50);
    for (Row row : judged()) {
      if (row.text(VERDICT).equals("NOT CHECKED") && row.text(USED).isEmpty()) {
        JsonNode open = verdict("", row.text(0), row.text(1)).orElseThrow();
        assertThat(open.required("status").asText()).isEqualTo("notChecked");
        assertThat(open.required("remark").asText()).isEqualTo(row.text(REMARK));
        continue;
      }
      JsonNode same =
          verdict(group(row), row.text(0), row.text(1))
              .orElseThrow(() -> new AssertionError("No verdict for " + row));
      double used = book.at(SHEET, row.first().row(), USED).number();
      assertThat(same.required("utilisation").asDouble())
          .as(row.toString())
          .isCloseTo(used, within(1e-9 * used));
      assertThat(same.required("status").asText())
          .as(row.toString())
          .isEqualTo(row.text(VERDICT).equals("pass") ? "passed" : "failed");
    }
  }

  @Test
  void everyVerdictOfTheFileIsOnTheSheetOrCoveredByOneNotBetter() {
    List<Row> rows = judged();
    List<String> missing = new ArrayList<>();
    for (JsonNode verdict : verdicts) {
      if (verdict.required("status").asText().equals("demand")) {
        continue;
      }
      double used = verdict.path("utilisation").asDouble();
      String check = verdict.required("check").asText();
      String subject = verdict.required("subject").asText();
      boolean shown =
          rows.stream()
              .filter(r -> r.text(0).equals(check) && r.covers(subject))
              .anyMatch(
                  r ->
                      r.text(USED).isEmpty()
                          || book.at(SHEET, r.first().row(), USED).number() >= used * (1 - 1e-9));
      if (!shown) {
        missing.add(check + ", " + subject + ", " + used);
      }
    }
    assertThat(missing).isEmpty();
  }

  /** Every member has its forces, every force its cause, and no end is beyond its member. */
  @Test
  void everyMemberHasItsForcesWithWhatCausesThem() throws IOException {
    JsonNode envelope =
        new ObjectMapper()
            .readTree(PackingHouse.checked().results().toFile())
            .required("forceEnvelope");
    int loadings = envelope.required("loadings").size();
    int ends = 0;
    for (JsonNode member : envelope.required("members")) {
      JsonNode governing = member.required("governing");
      assertThat(governing.properties()).hasSize(6);
      for (JsonNode end : member.required("ends")) {
        ends++;
        for (String side : List.of("greatest", "least")) {
          end.required(side)
              .properties()
              .forEach(
                  force -> {
                    JsonNode most = governing.required(force.getKey()).required(side);
                    double sign = side.equals("greatest") ? 1 : -1;
                    assertThat(sign * force.getValue().required(0).asDouble())
                        .as(member.required("member") + " " + force)
                        .isLessThanOrEqualTo(sign * most.required("value").asDouble() + 1e-6);
                    assertThat(force.getValue().required(1).asInt()).isBetween(0, loadings - 1);
                    assertThat(most.required("loading").asInt()).isBetween(0, loadings - 1);
                  });
        }
      }
    }
    assertThat(envelope.required("members")).hasSize(83);
    assertThat(ends).isGreaterThan(2 * 83);
    for (JsonNode cause : envelope.required("loadings")) {
      assertThat(cause.required("combination").asText()).startsWith("STR");
    }
  }

  @Test
  void theDigestIsThatOfTheJobFileAndBalanceIsProved() throws IOException {
    JsonNode results = new ObjectMapper().readTree(PackingHouse.checked().results().toFile());
    assertThat(results.required("inputSha256").asText()).isEqualTo(sha256(PackingHouse.JOB));
    // Rounding in a frame of 88 nodes; a wrong solution leaves over a share of the load itself.
    assertThat(results.at("/proof/worstResidualPerLoad").asDouble()).isPositive().isLessThan(1e-9);
    assertThat(book.cells().filter(c -> c.text().equals("NOT BALANCED"))).isEmpty();
    assertThat(book.cells().filter(c -> c.text().equals("balanced")))
        .hasSizeGreaterThanOrEqualTo(4);
  }

  private static String sha256(Path file) throws IOException {
    try {
      byte[] digest =
          java.security.MessageDigest.getInstance("SHA-256")
              .digest(java.nio.file.Files.readAllBytes(file));
      return java.util.HexFormat.of().formatHex(digest);
    } catch (java.security.NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
