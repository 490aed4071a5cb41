package spanledger.job.outline;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemReport;

/**
 * One fault at a time, put into a sound outline file: outline-faults.json says which edit makes the
 * fault and what must be reported, and nothing else may be.
 */
class OutlineFaultTableTest {

  static Stream<Named<JsonNode>> faults() throws IOException {
    List<Named<JsonNode>> faults = new ArrayList<>();
    new ObjectMapper()
        .readTree(Outlines.resource("outline-faults.json"))
        .forEach(row -> faults.add(Named.of(row.path("fault").asText(), row)));
    return faults.stream();
  }

  @ParameterizedTest
  @MethodSource("faults")
  void eachFaultIsToldOnceAndInPlace(JsonNode row) {
    ReadOutline read = Outlines.read(edited(row));

    List<Problem> problems = read.problems();
    String report = new ProblemReport(Outlines.FILE, problems).text();
    JsonNode expected = row.path("problems");
    assertThat(read).as(report).isInstanceOf(ReadOutline.Refused.class);
    assertThat(problems).as(report).hasSize(expected.size());
    for (int i = 0; i < expected.size(); i++) {
      assertProblem(problems.get(i), expected.get(i), report);
    }
  }

  private static void assertProblem(Problem problem, JsonNode expected, String report) {
    assertThat(problem.isError()).as(report).isTrue();
    assertThat(problem.pointer().text()).as(report).isEqualTo(expected.path("pointer").asText());
    assertThat(problem.place().line()).as(report).isEqualTo(expected.path("line").asInt());
    String said = problem.found() + " | " + problem.expected() + " | " + problem.remedy();
    for (JsonNode piece : expected.path("says")) {
      assertThat(said).contains(piece.asText());
    }
  }

  private static String edited(JsonNode row) {
    String text = Outlines.resource(row.path("file").asText());
    for (JsonNode edit : row.path("edits")) {
      String find = edit.path("find").asText();
      assertThat(text).as("the edit finds its place").contains(find);
      text = text.replace(find, edit.path("with").asText());
    }
    return text;
  }
}
