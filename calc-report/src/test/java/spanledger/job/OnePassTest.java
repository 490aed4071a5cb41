package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemReport;

/**
 * Faults of all kinds in one file are all told in one pass, each once, in the order of the file.
 */
class OnePassTest {

  private static final List<String[]> EDITS =
      List.of(
          new String[] {"\"formatVersion\": 1", "\"formatVersion\": 3"},
          new String[] {"\"date\": \"2026-03-31\"", "\"date\": \"soon\""},
          new String[] {"\"rules\": \"en-iso-14122\"", "\"rules\": \"en-iso-14123\""},
          new String[] {"\"depth\": \"120 mm\"", "\"depth\": \"120\""},
          new String[] {"\"diameter\": \"20 mm\"", "\"diamter\": \"20 mm\""},
          new String[] {"\"bucklingClass\": \"A\"", "\"bucklingClass\": \"C\""},
          new String[] {"\"B2\": [\"1500 mm\", \"600 mm\"", "\"B2\": [\"1500 mm\", \"603 mm\""},
          new String[] {
            "\"role\": \"brace\", \"nodes\": [\"A1\"", "\"role\": \"brce\", \"nodes\": [\"A1\""
          },
          new String[] {"\"node\": \"A3\", \"type\"", "\"node\": \"A7\", \"type\""},
          new String[] {"\"at\": \"500 mm\"", "\"at\": \"9 m\""});

  @Test
  void tenFaultsGiveTenErrors() {
    String text = Jobs.resource("complete.json");
    for (String[] edit : EDITS) {
      assertThat(text).contains(edit[0]);
      text = text.replace(edit[0], edit[1]);
    }

    ReadJob read = Jobs.read(text);

    assertThat(read).isInstanceOf(ReadJob.Refused.class);
    assertThat(read.problems())
        .as(new ProblemReport(Jobs.FILE, read.problems()).text())
        .extracting(problem -> problem.pointer().text())
        .containsExactly(
            "/formatVersion",
            "/job/date",
            "/rules",
            "/sections/beam/depth",
            "/sections/rod/diamter",
            "/materials/own/bucklingClass",
            "/members/beam-b/nodes/1",
            "/members/brace-1/role",
            "/supports/a-east/node",
            "/userCases/tools/loads/0/at");
    assertThat(read.problems()).allMatch(Problem::isError);
    assertThat(read.problems()).isSortedAccordingTo(Problem.IN_FILE_ORDER);
  }
}
