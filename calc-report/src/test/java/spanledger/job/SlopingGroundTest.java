package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.geometry.GeometryFinding;

/**
 * A platform of 1200 mm by 1000 mm, its floor 1000 mm above its south-west corner, on ground that
 * falls. Expected levels by trigonometry: tan 1 deg = 0.0174550649.
 */
class SlopingGroundTest {

  private static final String TEXT = Jobs.resource("complete-assembly.json");

  private static Job job(String text) {
    ReadJob read = Jobs.read(text);
    assertThat(read).isInstanceOf(ReadJob.Accepted.class);
    return ((ReadJob.Accepted) read).job();
  }

  private static double level(Job job, String node) {
    return job.frame().nodes().stream()
        .filter(n -> n.name().equals(node))
        .findFirst()
        .orElseThrow()
        .place()
        .z();
  }

  @ParameterizedTest
  @CsvSource({"south1, 0", "north1, 0", "south2, -20.9460779", "north2, -20.9460779"})
  void legsReachDownToSlopingGround(String post, double expected) {
    assertThat(level(job(TEXT), "deck-b/" + post + "/foot")).isCloseTo(expected, within(1e-6));
  }

  @Test
  void groundThatIsMeasuredCountsBeforeTheSlope() {
    String measured =
        TEXT.replace(
            "\"foot\": \"fixed\", \"groundSlope\"",
            "\"foot\": \"fixed\", \"ground\": {\"north2\": \"-30 mm\"}, \"groundSlope\"");

    assertThat(level(job(measured), "deck-b/north2/foot")).isEqualTo(-30);
    assertThat(level(job(measured), "deck-b/south2/foot")).isCloseTo(-20.9460779, within(1e-6));
  }

  /** Legs of 1000 mm and 1000 + 20.946 mm, of 2000 mm and 2050 mm on the other platform. */
  @ParameterizedTest
  @CsvSource({
    "longest leg, deck-b, 1020.9460779, 2500",
    "shortest leg, deck-b, 1000, 800",
    "longest leg, deck-a, 2050, 2500",
    "shortest leg, deck-a, 2000, 800",
  })
  void legsKeepToWhatTheProductCanBeSetTo(
      String check, String platform, double length, double limit) {
    Job job = job(TEXT);
    List<GeometryFinding> findings = job.assembly().orElseThrow().geometry(job.rules());
    GeometryFinding found =
        findings.stream()
            .filter(f -> f.check().equals(check) && f.subject().equals(platform))
            .findFirst()
            .orElseThrow();

    assertThat(found.size().orElseThrow()).isCloseTo(length, within(1e-6));
    assertThat(found.limit().orElseThrow().value()).isEqualTo(limit);
    assertThat(found.atMost()).isEqualTo(check.startsWith("longest"));
    assertThat(found.utilisation()).isLessThan(1);
  }

  @Test
  void aLegThatCannotBeSetSoLongIsToldAsSuch() {
    Job job = job(TEXT.replace("\"legMost\": \"2500 mm\"", "\"legMost\": \"1010 mm\""));

    assertThat(job.assembly().orElseThrow().geometry(job.rules()))
        .filteredOn(f -> f.check().equals("longest leg") && f.utilisation() > 1)
        .extracting(GeometryFinding::subject)
        .containsExactlyInAnyOrder("deck-a", "deck-b");
  }
}
