package spanledger.job.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemReportTest {

  private static final Problem LATER =
      new Problem(
          Severity.WARNING,
          "job.json",
          new Pointer("/sections/spare"),
          new Place(12, 5),
          "section \"spare\", which nothing uses",
          "only what the structure needs",
          "remove it");
  private static final Problem EARLIER =
      new Problem(
          Severity.ERROR,
          "job.json",
          Pointer.ROOT.child("nodes").child("a/b~c").child(0),
          new Place(3, 14),
          "\"3\" has no unit",
          "a length, for example 1200 mm",
          "correct the number or its unit");

  @Test
  void theTextHasABlockForEachProblemInTheOrderOfTheFile() {
    assertThat(new ProblemReport("job.json", List.of(LATER, EARLIER)).text())
        .isEqualTo(
            """
            job.json:3:14  error  /nodes/a~1b~0c/0
                found     "3" has no unit
                expected  a length, for example 1200 mm
                to mend   correct the number or its unit

            job.json:12:5  warning  /sections/spare
                found     section "spare", which nothing uses
                expected  only what the structure needs
                to mend   remove it

            1 error and 1 warning; nothing was calculated.
            """);
  }

  @Test
  void warningsAloneDoNotRefuse() {
    ProblemReport report = new ProblemReport("job.json", List.of(LATER));

    assertThat(report.refuses()).isFalse();
    assertThat(report.text()).endsWith("1 warning.\n");
    assertThat(report.json()).contains("\"outcome\" : \"accepted\"");
  }

  @Test
  void theJsonFormHoldsEveryPart() {
    assertThat(new ProblemReport("job.json", List.of(EARLIER)).json())
        .isEqualTo(
            """
            {
              "format" : "spanledger-problems",
              "formatVersion" : 1,
              "file" : "job.json",
              "outcome" : "refused",
              "errors" : 1,
              "warnings" : 0,
              "problems" : [ {
                "severity" : "error",
                "pointer" : "/nodes/a~1b~0c/0",
                "line" : 3,
                "column" : 14,
                "found" : "\\"3\\" has no unit",
                "expected" : "a length, for example 1200 mm",
                "remedy" : "correct the number or its unit"
              } ]
            }
            """);
  }

  @Test
  void noProblemsGiveNoText() {
    assertThat(new ProblemReport("job.json", List.of()).text()).isEmpty();
  }

  @Test
  void aPointerGivesBackItsLastKey() {
    assertThat(Pointer.ROOT.child("nodes").child("a/b~c").last()).isEqualTo("a/b~c");
  }
}
