package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemReport;

/**
 * One fault at a time in a described structure: it is told once, says where and what, and which
 * range would work; nothing that follows from it is told besides.
 */
class AssemblyFaultsTest {

  private static final String SOUND = Jobs.resource("complete-assembly.json");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "\"lengths\": [\"900 mm\", \"1200 mm\"] | \"lengths\": [] | /assembly/platforms/deck-a/bays/lengths | a list of at least 1",
        "\"length\": \"4200 mm\" | \"length\": \"4300 mm\" | /assembly/platforms/deck-a/bays | bays that make the length of the platform, 4300 mm",
        "\"width\": \"800 mm\"}] | \"width\": \"1100 mm\"}] | /assembly/platforms/deck-a/guardrail/gates/0 | at most 1000 mm",
        "\"bay\": 2, \"from\": \"200 mm\" | \"bay\": 5, \"from\": \"200 mm\" | /assembly/platforms/deck-a/guardrail/gates/0 | a bay from 1 to 4",
        "\"at\": \"1300 mm\" | \"at\": \"4300 mm\" | /assembly/platforms/deck-a/guardrail/posts/0 | from 0 mm to 4200 mm",
        "\"at\": \"1300 mm\" | \"at\": \"950 mm\" | /assembly/platforms/deck-a/guardrail/posts/0 | at least 100 mm from it",
        "\"roll\": \"90 deg\" | \"roll\": 90 | /assembly/parts/leg/roll | write \"90 deg\"",
        "\"start\": \"pinned\", \"end\": \"pinned\" | \"start\": \"pinned\" | /assembly/parts/strut/start | either \"joint\", for both ends, or both",
        "\"start\": \"pinned\", \"end\": \"pinned\" | \"joint\": \"pinned\", \"end\": \"pinned\" | /assembly/parts/strut/joint | \"joint\" together with",
        "\"start\": \"pinned\", \"end\": \"pinned\", | | /assembly/parts/strut | a part without joints",
        "\"inset\": \"20 mm\" | \"inset\": \"20\" | /assembly/parts/strut/inset | has no unit",
        "\"inset\": \"20 mm\" | \"inset\": \"600 mm\" | /assembly/parts/strut/inset | which leaves no length of",
        "\"panel\": \"plank\"} | \"panel\": \"plunk\"} | /assembly/platforms/deck-a/deck/panel | no panel has this name",
        "\"treadPanel\": \"plank\" | \"treadPanel\": \"plunk\" | /assembly/stairs/steps-b/treadPanel | no panel has this name",
        "\"from\": \"deck-b\", \"width\" | \"from\": \"deck-c\", \"width\" | /assembly/stairs/steps-a/from | deck-b",
        "\"rises\": 5, \"pitch\": \"38 deg\" | \"rises\": 5, \"pitch\": \"95 deg\" | /assembly/stairs/steps-c/pitch | between 0 deg and 90 deg",
        "\"offset\": \"200 mm\", \"ground\" | \"offset\": \"900 mm\", \"ground\" | /assembly/stairs/steps-b/width | from 200 mm to 300 mm wide",
        "bay4-down\" | bay5-down\" | /assembly/without/0 | the name of a generated brace or tie",
        "\"sides\": [\"north\", \"south\", \"east\", \"west\"],\\n          \"railPost\": \"leg\", | \"sides\": [\"north\", \"south\", \"east\", \"west\"], | /assembly/platforms/deck-a/guardrail | railPost",
      })
  void isToldOnceInItsPlace(String find, String with, String pointer, String says) {
    String found = find.replace("\\n", "\n");
    assertThat(SOUND).contains(found);

    ReadJob read = Jobs.read(SOUND.replace(found, with == null ? "" : with));

    String report = new ProblemReport(Jobs.FILE, read.problems()).text();
    assertThat(read).as(report).isInstanceOf(ReadJob.Refused.class);
    assertThat(read.problems().stream().filter(Problem::isError)).as(report).hasSize(1);
    Problem problem = read.problems().stream().filter(Problem::isError).findFirst().orElseThrow();
    assertThat(problem.pointer().text()).as(report).isEqualTo(pointer);
    assertThat(problem.found() + " | " + problem.expected() + " | " + problem.remedy())
        .contains(says);
  }
}
