package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.jointdesign.JointJudgement;
import spanledger.summary.TextSummary;
import spanledger.verdict.Assessment;
import spanledger.verdict.Status;
import spanledger.verification.check.AssessedJob;

/** A cantilever that the analysis holds far more softly than the parts of its end plate do. */
class KeptStiffnessTest {

  private static final String ANOTHER = "the analysis takes this end as 1.00 kN·m/rad about y";

  @TempDir private Path folder;

  private Assessment assess(String use) {
    String text = JointJobTest.text("", "start", "");
    String joint = "\"joint\": \"joint\"";
    String rigid = "\"start\": \"rigid\"";
    assertThat(text).contains(joint).contains(rigid);
    return AssessedJob.of(
        folder,
        text.replace(joint, joint + use)
            .replace(
                rigid,
                "\"start\": {\"torsion\": \"rigid\", \"aboutY\": \"1 kN*m/rad\","
                    + " \"aboutZ\": \"rigid\"}"));
  }

  private static List<String> notChecked(Assessment found) {
    return found.verdicts().stream()
        .filter(v -> v.status() == Status.NOT_CHECKED && v.check().equals("joint"))
        .map(v -> v.remark())
        .toList();
  }

  @Test
  void anotherStiffnessThanThatOfThePartsIsNotChecked() {
    Assessment found = assess("");

    assertThat(notChecked(found)).anySatisfy(r -> assertThat(r).startsWith(ANOTHER));
    assertThat(found.joints().orElseThrow().kept()).isEmpty();
  }

  @Test
  void itStandsOnTheWordOfTheJobAndIsShown() {
    Assessment found =
        assess(", \"asAnalysed\": {\"reason\": \"stiff enough\", \"source\": \"note 4\"}");

    assertThat(notChecked(found)).noneSatisfy(r -> assertThat(r).startsWith(ANOTHER));
    assertThat(found.joints().orElseThrow().kept())
        .extracting(JointJudgement.Kept::what)
        .anySatisfy(what -> assertThat(what).startsWith(ANOTHER));
    assertThat(TextSummary.of("title", "rules", found))
        .contains("bar, start: stiff enough (note 4)");
  }
}
