package spanledger.verification.behaviour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.cli.Main;

/**
 * Joints known by bounds: the job is calculated with either, and the worse of each verdict stays.
 *
 * <p>Given two beams of span L = 2 m under P in the middle and their weight q. One has springs at
 * both ends: the softer, the greater the moment in its middle. The other has a spring at one end
 * and turns freely at the other: its springs are so stiff that the moment at that end governs, the
 * greater the stiffer. Expected by compatibility of the end turn, (P L²/16 + q L³/24)/EI = M_e
 * (L/(c EI) + 1/k) with c = 2 for both ends alike and 3 for one. Tolerance: the shear stiffness.
 */
class StiffnessBoundsTest {

  private static final double SPAN = 2000;
  private static final double LOAD = 2000;
  private static final double SOFT = 250e6;
  private static final double STIFF = 10_000e6;

  @TempDir Path folder;

  @Test
  void theWorseOfBothRunsStays() throws IOException {
    Map<String, Double> lower = uses("lower");
    Map<String, Double> upper = uses("upper");
    Map<String, Double> both = uses("both");

    assertThat(both.keySet()).isEqualTo(lower.keySet());
    both.forEach(
        (check, use) ->
            assertThat(use)
                .as(check)
                .isCloseTo(Math.max(lower.get(check), upper.get(check)), within(1e-12)));
    assertThat(lower.get("bending, held")).isGreaterThan(1.1 * upper.get("bending, held"));
    assertThat(upper.get("bending, propped")).isGreaterThan(1.02 * lower.get("bending, propped"));
  }

  @Test
  void eachGovernsWhereStaticsSaysSo() throws IOException {
    JsonNode both = results("both");
    double whole = LOAD * SPAN / 4 + StateJob.WEIGHT * SPAN * SPAN / 8;

    double held = whole - endMoment(2, SOFT);
    assertThat(demand(both, "bending", "held") * StateJob.MODULUS)
        .isCloseTo(StateJob.PERMANENT * held, Percentage.withPercentage(0.01));
    assertThat(demand(both, "bending", "propped") * StateJob.MODULUS)
        .isCloseTo(StateJob.PERMANENT * endMoment(3, STIFF), Percentage.withPercentage(0.01));
    assertThat(folder.resolve("both")).isDirectoryContaining("glob:**/workbook*upper*.xlsx");
    assertThat(folder.resolve("both")).isDirectoryContaining("glob:**/workbook*lower*.xlsx");
  }

  private static double endMoment(int ends, double spring) {
    double turn =
        (LOAD * SPAN * SPAN / 16 + StateJob.WEIGHT * Math.pow(SPAN, 3) / 24) / StateJob.RIGIDITY;
    return turn / (SPAN / (ends * StateJob.RIGIDITY) + 1 / spring);
  }

  private Map<String, Double> uses(String bounds) throws IOException {
    Map<String, Double> uses = new TreeMap<>();
    for (JsonNode verdict : results(bounds).required("verdicts")) {
      if (verdict.has("utilisation")) {
        uses.put(
            verdict.required("check").asText() + ", " + verdict.required("subject").asText(),
            verdict.required("utilisation").asDouble());
      }
    }
    assertThat(uses).hasSizeGreaterThan(8);
    return uses;
  }

  private static double demand(JsonNode results, String check, String subject) {
    return results
        .required("verdicts")
        .valueStream()
        .filter(v -> v.required("check").asText().equals(check))
        .filter(v -> v.required("subject").asText().equals(subject))
        .findFirst()
        .orElseThrow()
        .required("demand")
        .asDouble();
  }

  private JsonNode results(String bounds) throws IOException {
    Path job = folder.resolve(bounds + ".json");
    String turns = "{\"torsion\": \"rigid\", \"aboutY\": \"pinned\", \"aboutZ\": \"rigid\"}";
    String text =
        StateJob.text(
            StateJob.UPRIGHT,
            "\"A\": [\"0 m\", \"0 m\", \"0 m\"], \"M\": [\"1 m\", \"0 m\", \"0 m\"],"
                + " \"B\": [\"2 m\", \"0 m\", \"0 m\"], \"C\": [\"0 m\", \"1 m\", \"0 m\"],"
                + " \"N\": [\"1 m\", \"1 m\", \"0 m\"], \"D\": [\"2 m\", \"1 m\", \"0 m\"]",
            beam("held", "\"A\", \"M\", \"B\"", spring(250, 1000), spring(250, 1000))
                + ", "
                + beam("propped", "\"C\", \"N\", \"D\"", spring(1000, 10_000), turns),
            "\"a\": {\"node\": \"A\", \"type\": \"fixed\"},"
                + " \"b\": {\"node\": \"B\", \"type\": \"fixed\"},"
                + " \"c\": {\"node\": \"C\", \"type\": \"fixed\"},"
                + " \"d\": {\"node\": \"D\", \"type\": \"fixed\"}",
            StateJob.force("M", 0, -LOAD) + ", " + StateJob.force("N", 0, -LOAD),
            "never");
    Files.writeString(
        job,
        text.replace(
            "\"secondOrder\": \"never\"",
            "\"secondOrder\": \"never\", \"bounds\": \"" + bounds + "\""));
    StringWriter err = new StringWriter();
    Main.run(
        new PrintWriter(new StringWriter()),
        new PrintWriter(err),
        "check",
        job.toString(),
        "--no-pictures",
        "--out",
        folder.resolve(bounds).toString());
    Path results = folder.resolve(bounds).resolve("results.json");
    assertThat(results).as(err.toString()).exists();
    return new ObjectMapper().readTree(results.toFile());
  }

  private static String spring(int lower, int upper) {
    return ("{\"torsion\": \"rigid\", \"aboutY\": {\"lower\": \"%d kN*m/rad\", \"upper\":"
            + " \"%d kN*m/rad\", \"source\": \"invented\"}, \"aboutZ\": \"rigid\"}")
        .formatted(lower, upper);
  }

  private static String beam(String name, String nodes, String start, String end) {
    return StateJob.member(name, "other", nodes)
        .replace(
            "\"start\": \"rigid\", \"end\": \"rigid\"",
            "\"start\": " + start + ", \"end\": " + end);
  }
}
