package spanledger.verification.behaviour;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.verdict.Assessment;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/** Loads and resistances of different formats are not left to go together unsaid. */
class FormatOfSafetyTest {

  private static final String TOGETHER = "safety of loads and resistances together";
  private static final String STABILITY = "stability at allowable strength";

  /** 2 m high, EI = 7e10 N·mm²: the Euler load by π² EI/(4 h²) is 43.2 kN. */
  private static final double EULER = Math.PI * Math.PI * StateJob.RIGIDITY / (4 * 4e6);

  @TempDir static Path folder;

  /** A column fixed at its foot under a load at its top. */
  private static Assessment column(String rules, String combinations, double load) {
    String text =
        StateJob.text(
            StateJob.UPRIGHT,
            "\"foot\": [\"0 m\", \"0 m\", \"0 m\"], \"top\": [\"0 m\", \"0 m\", \"2 m\"]",
            StateJob.member("column", "leg", "\"foot\", \"top\""),
            "\"base\": {\"node\": \"foot\", \"type\": \"fixed\"}",
            StateJob.force("top", 0, -load),
            "auto");
    return AssessedJob.of(
        folder,
        text.replace("\"rules\": \"en-iso-14122\"", "\"rules\": \"" + rules + "\"")
            .replace(
                "\"combinations\": \"en-1990\"", "\"combinations\": \"" + combinations + "\""));
  }

  private static List<Verdict> said(Assessment found, String check) {
    return found.verdicts().stream().filter(v -> v.check().equals(check)).toList();
  }

  @Test
  void oneFormatOnBothSidesNeedsNoWord() {
    for (String[] pair :
        new String[][] {
          {"en-iso-14122", "en-1990"},
          {"as-1657", "as-nzs-1170.0"},
          {"osha-1910", "asce-7-lrfd"},
          {"osha-1910-asd", "asce-7-asd"}
        }) {
      assertThat(said(column(pair[0], pair[1], 100), TOGETHER)).as(pair[0]).isEmpty();
    }
  }

  /** φ = 0.9 on loads of use would leave a margin of 1.1 where the manual wants 1.65. */
  @Test
  void twoFormatsAreNotChecked() {
    List<Verdict> said = said(column("osha-1910", "asce-7-asd", 100), TOGETHER);

    assertThat(said).hasSize(1);
    assertThat(said.get(0).status()).isEqualTo(Status.NOT_CHECKED);
    assertThat(said.get(0).remark())
        .isEqualTo(
            "combinations asce-7-asd are of allowable strength by ASCE 7, but rule set osha-1910 of"
                + " strength design by ASCE 7: name combinations, rule set and codes of one"
                + " format");
  }

  /** First order suffices from 16 times the load: an eighth of the Euler load asks, a 30th not. */
  @Test
  void bucklingNearLoadsOfUseIsSaid() {
    assertThat(said(column("osha-1910-asd", "asce-7-asd", EULER / 8), STABILITY)).hasSize(1);
    assertThat(said(column("osha-1910-asd", "asce-7-asd", EULER / 30), STABILITY)).isEmpty();
    assertThat(said(column("osha-1910", "asce-7-lrfd", EULER / 8), STABILITY)).isEmpty();
  }
}
