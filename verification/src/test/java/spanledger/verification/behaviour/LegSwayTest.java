package spanledger.verification.behaviour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.action.RuleSet;
import spanledger.tables.RuleTables;
import spanledger.verdict.Assessment;
import spanledger.verification.check.AssessedJob;

/** Where no floor stands, the legs tell how far a frame gives. */
class LegSwayTest {

  private static final double HEIGHT = 2000;
  private static final double FORCE = 10;

  @TempDir static Path folder;

  private static Assessment column(String more) {
    return AssessedJob.of(
        folder,
        StateJob.text(
            StateJob.UPRIGHT,
            "\"foot\": [\"0 m\", \"0 m\", \"0 m\"], \"top\": [\"0 m\", \"0 m\", \"2 m\"],"
                + " \"far\": [\"0 m\", \"1 m\", \"2 m\"]",
            StateJob.member("column", "leg", "\"foot\", \"top\"")
                + ", "
                + StateJob.member("arm", more, "\"top\", \"far\""),
            "\"base\": {\"node\": \"foot\", \"type\": \"fixed\"}",
            StateJob.force("top", FORCE, 0),
            "never"));
  }

  /**
   * Given a cantilever 2 m high under 10 N level at its top; expected F h³/(3 E I) over h times the
   * limit of the rule set. Source: statics. Tolerance: shear over 9e5 mm² and notional sway of 1e-9
   * add less than 1e-5.
   */
  @Test
  void aColumnIsJudgedByItsTop() {
    double ratio = RuleTables.ruleSet("en-iso-14122").figure(RuleSet.SWAY_DEFLECTION_RATIO).value();
    double movement = FORCE * Math.pow(HEIGHT, 3) / (3 * StateJob.RIGIDITY);
    double expected = movement / (HEIGHT * ratio);

    assertThat(StateJob.verdict(column("other"), "sway along X", "column").utilisation())
        .isCloseTo(expected, within(1e-5 * expected));
  }

  @Test
  void whereAFloorStandsItIsJudgedInstead() {
    Assessment found = column("floor");
    assertThat(StateJob.verdict(found, "sway along X", "arm")).isNotNull();
    assertThat(found.verdicts())
        .noneMatch(v -> v.check().startsWith("sway") && v.subject().equals("column"));
  }
}
