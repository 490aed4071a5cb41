package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemReport;

/**
 * One fault at a time, put into a sound file: faults.json says which edit makes the fault and what
 * must be reported, and nothing else may be.
 */
class FaultTableTest {

  private static final String SOUND = Jobs.resource("complete.json");

  static Stream<Named<JsonNode>> faults() throws IOException {
    try (InputStream table =
        Objects.requireNonNull(FaultTableTest.class.getResourceAsStream("faults.json"))) {
      List<Named<JsonNode>> faults = new ArrayList<>();
      new ObjectMapper()
          .readTree(table)
          .forEach(row -> faults.add(Named.of(row.path("fault").asText(), row)));
      return faults.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("faults")
  void eachFaultIsToldOnceAndInPlace(JsonNode row) {
    ReadJob read = Jobs.read(edited(row));

    List<Problem> problems = read.problems();
    String report = new ProblemReport(Jobs.FILE, problems).text();
    JsonNode expected = row.path("problems");
    assertThat(problems).as(report).hasSize(expected.size());
    for (int i = 0; i < expected.size(); i++) {
      assertProblem(problems.get(i), expected.get(i), report);
    }
    boolean refused =
        Stream.of(expected).flatMap(all -> severities(all).stream()).anyMatch("error"::equals);
    assertThat(read instanceof ReadJob.Refused).as(report).isEqualTo(refused);
  }

  private static void assertProblem(Problem problem, JsonNode expected, String report) {
    assertThat(problem.severity().words()).as(report).isEqualTo(expected.path("severity").asText());
    assertThat(problem.pointer().text()).as(report).isEqualTo(expected.path("pointer").asText());
    assertThat(problem.place().line()).as(report).isEqualTo(expected.path("line").asInt());
    String said = problem.found() + " | " + problem.expected() + " | " + problem.remedy();
    for (JsonNode piece : expected.path("says")) {
      assertThat(said).contains(piece.asText());
    }
  }

  private static List<String> severities(JsonNode problems) {
    List<String> severities = new ArrayList<>();
    problems.forEach(problem -> severities.add(problem.path("severity").asText()));
    return severities;
  }

  private static String edited(JsonNode row) {
    String text = SOUND;
    for (JsonNode edit : row.path("edits")) {
      String find = edit.path("find").asText();
      assertThat(text).as("the edit finds its place").contains(find);
      text = text.replace(find, edit.path("with").asText());
    }
    return text;
  }
}
