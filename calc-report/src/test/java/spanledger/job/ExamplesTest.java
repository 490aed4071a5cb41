package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.action.RuleSet;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.job.problem.ProblemReport;
import spanledger.provenance.Confidence;

/** The examples, read with the data that come with the program. */
class ExamplesTest {

  private static final JobReader READER = new JobReader(Tables.shipped());

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-beam.json",
        "walkway-of-extrusions.json",
        "packing-house-hoist-frame.json",
        "packing-house-inspection-platform.json",
        "packing-house-washing-line-stand.json"
      })
  void examplesAreAcceptedWithoutAnyProblem(String name) {
    ReadJob read = READER.read(Jobs.root().resolve("docs/examples").resolve(name));

    assertThat(new ProblemReport(name, read.problems()).text()).isEmpty();
    assertThat(read).isInstanceOf(ReadJob.Accepted.class);
  }

  @Test
  void theFirstBeamIsWhatItsFileSays() {
    Job job = accepted("first-beam.json");

    assertThat(job.title().reference()).isEqualTo("FIRST-1");
    assertThat(job.title().date()).hasToString("2026-03-31");
    assertThat(job.rules().id()).isEqualTo("en-iso-14122");
    assertThat(job.combinations().id()).isEqualTo("en-1990");
    assertThat(job.frame().members()).extracting(Member::name).containsExactly("beam-a", "beam-b");
    assertThat(job.frame().members()).extracting(Member::length).containsOnly(3000.0);
    assertThat(job.frame().members()).extracting(Member::start).containsOnly(MemberEnd.RIGID);
    assertThat(job.frame().supports()).hasSize(4);
    assertThat(job.surfaces()).hasSize(1);
    assertThat(job.surfaces().get(0).finishes()).isCloseTo(1e-4, within(1e-18));
    assertThat(job.placesPerSegment()).isEqualTo(8);
  }

  @Test
  void thePlatformIsWhatItsFileSays() {
    Job job = accepted("packing-house-inspection-platform.json");

    assertThat(job.frame().members()).hasSizeGreaterThanOrEqualTo(80);
    assertThat(job.rails()).hasSize(12);
    assertThat(job.userCases()).hasSize(3);
    assertThat(job.placesPerSegment()).isEqualTo(4);
  }

  @Test
  void anOverrideTakesThePlaceOfTheFigureAndStaysVisible() {
    Job job = accepted("packing-house-inspection-platform.json");

    // 3 kN/m2 = 0.003 N/mm2, given in the file
    assertThat(job.rules().figure(RuleSet.FLOOR_AREA).value()).isEqualTo(0.003);
    assertThat(job.rules().figure(RuleSet.FLOOR_AREA).source().confidence())
        .isEqualTo(Confidence.DECLARED);
    assertThat(job.overrides()).hasSize(1);
    assertThat(job.overrides().get(0).given().text()).isEqualTo("3 kN/m2");
    assertThat(job.overrides().get(0).replaced())
        .hasValueSatisfying(figure -> assertThat(figure.text()).isEqualTo("2.5 kN/m2"));
  }

  private static Job accepted(String name) {
    return ((ReadJob.Accepted) READER.read(Jobs.root().resolve("docs/examples").resolve(name)))
        .job();
  }
}
