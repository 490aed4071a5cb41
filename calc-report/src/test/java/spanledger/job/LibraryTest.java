package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.action.RuleSet;
import spanledger.frame.Member;

/** Data files beside a job. */
class LibraryTest {

  private static final String SECTIONS =
      """
      # table: sections
      # work: test
      # confidence: common practice
      name,shape,depth [mm],width [mm]
      flat,solid-rectangle,%s,10
      """;

  private static final String ALLOYS =
      """
      # table: alloys
      # constants.youngsModulus: 70 GPa
      # constants.shearModulus: 27 GPa
      # constants.density: 2700 kg/m3
      # constants.work: test
      # constants.confidence: common practice
      designation,forms[],proof [MPa],ultimate [MPa],bucklingClass,work,confidence
      own-T6,rod or bar,123,215,A,test,common practice
      """;

  @TempDir private Path folder;

  private Member beam(String libraries) throws IOException {
    String job =
        Jobs.example("first-beam.json")
            .replace("\"sections\": {", "\"libraries\": " + libraries + ",\n  \"sections\": {")
            .replaceFirst("\\{\"shape\": \"rectangular-hollow\"[^}]*}", "{\"catalogue\": \"flat\"}")
            .replace("6063-T6", "own-T6");
    Path file = Files.writeString(folder.resolve("job.json"), job);
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    assertThat(read.problems()).isEmpty();
    return ((ReadJob.Accepted) read).job().frame().members().get(0);
  }

  /** Given 60 x 10: area 600 mm²; the alloy's proof strength as in its row. */
  @Test
  void sectionsAndAlloysComeFromTheJobsOwnFiles() throws IOException {
    Files.writeString(folder.resolve("sections.csv"), SECTIONS.formatted("60"));
    Files.writeString(folder.resolve("alloys.csv"), ALLOYS);

    Member beam = beam("[\"sections.csv\", \"alloys.csv\"]");

    assertThat(beam.section().properties().area()).isCloseTo(600, within(1e-9));
    assertThat(beam.alloy().proofStrength()).isEqualTo(123);
  }

  /** An override of the job counts before the job's own rule set, that before what it inherits. */
  @Test
  void aRuleSetInheritsIsOverriddenAndUsed() throws IOException {
    Files.writeString(
        folder.resolve("brief.json"),
        """
        {"table": "rule-set", "id": "brief", "title": "Brief", "inherits": "as-1657", "figures": [
          {"id": "floor.area", "words": "imposed load on floors", "value": "4 kN/m2", "work": "brief", "confidence": "published"},
          {"id": "floor.point", "words": "load at any one place", "value": "2 kN", "work": "brief", "confidence": "published"}]}
        """);
    Path file = folder.resolve("job.json");
    Files.writeString(
        file,
        Jobs.example("first-beam.json")
            .replaceFirst(
                "\"rules\": \"[^\"]*\",",
                "\"rules\": \"brief\", \"libraries\": [\"brief.json\"],"
                    + " \"overrides\": {\"floor.point\": {\"value\": \"3 kN\", \"source\": \"letter\"}},"));

    ReadJob read = new JobReader(Tables.shipped()).read(file);

    assertThat(read.problems()).isEmpty();
    RuleSet rules = ((ReadJob.Accepted) read).job().rules();
    assertThat(rules.id()).isEqualTo("brief");
    assertThat(rules.figure(RuleSet.FLOOR_AREA).value()).isCloseTo(0.004, within(1e-12));
    assertThat(rules.figure(RuleSet.FLOOR_POINT).value()).isCloseTo(3000, within(1e-9));
    assertThat(rules.figure(RuleSet.GUARDRAIL_POINT).value()).isCloseTo(600, within(1e-9));
  }

  /**
   * Of one name, the later file's row counts; files of a directory come in order of their names.
   */
  @Test
  void aDirectoryGivesAllItsFilesInOrder() throws IOException {
    Path data = Files.createDirectory(folder.resolve("data"));
    Files.writeString(data.resolve("b-sections.csv"), SECTIONS.formatted("80"));
    Files.writeString(data.resolve("a-sections.csv"), SECTIONS.formatted("60"));
    Files.writeString(data.resolve("alloys.csv"), ALLOYS);
    Files.writeString(data.resolve("notes.txt"), "no table");

    Member beam = beam("[\"data\"]");

    assertThat(beam.section().properties().area()).isCloseTo(800, within(1e-9));
  }
}
