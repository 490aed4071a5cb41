package spanledger.job.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemLog;
import spanledger.job.problem.ProblemReport;
import spanledger.section.outline.PlaneProperties;

/**
 * Drawings and their faults, as data. A drawing is a list of groups, "code value", written to the
 * file on two lines each. Areas and centroids by hand; each case says how.
 */
class DxfReaderTest {

  @TempDir private Path folder;

  static Stream<Named<JsonNode>> drawings() throws IOException {
    return rows("drawings.json", "case");
  }

  static Stream<Named<JsonNode>> faults() throws IOException {
    return rows("drawing-faults.json", "fault");
  }

  private static Stream<Named<JsonNode>> rows(String file, String name) throws IOException {
    try (InputStream table =
        Objects.requireNonNull(DxfReaderTest.class.getResourceAsStream(file))) {
      List<Named<JsonNode>> rows = new ArrayList<>();
      new ObjectMapper()
          .readTree(table)
          .forEach(row -> rows.add(Named.of(row.path(name).asText(), row)));
      return rows.stream();
    }
  }

  private Path written(JsonNode row) throws IOException {
    StringBuilder text = new StringBuilder();
    for (JsonNode group : row.path("dxf")) {
      text.append(group.asText().replaceFirst(" ", "\n")).append('\n');
    }
    return Files.writeString(folder.resolve("drawing.dxf"), text);
  }

  private static DxfOptions options(JsonNode row) {
    Set<String> layers = new TreeSet<>();
    row.path("layers").forEach(layer -> layers.add(layer.asText()));
    return new DxfOptions(
        row.has("unit") ? OptionalDouble.of(row.path("unit").asDouble()) : OptionalDouble.empty(),
        layers,
        row.path("joinWithin").asDouble(DxfOptions.USUAL_JOIN));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void drawingsGiveTheirOutlines(JsonNode row) throws IOException {
    ProblemLog log = new ProblemLog("drawing.dxf");
    Optional<DxfReader.Drawing> read = DxfReader.read(written(row), options(row), log);

    String report = new ProblemReport("drawing.dxf", log.inOrder()).text();
    assertThat(read).as(report).isPresent();
    DxfReader.Drawing drawing = read.orElseThrow();
    PlaneProperties plane = PlaneProperties.ofPartsActingTogether(drawing.pieces());
    // Gaps that are closed move corners by up to a hundredth.
    double tolerance = row.path("case").asText().contains("gaps") ? 0.1 : 1e-9;
    assertThat(plane.area())
        .as(row.path("why").asText())
        .isCloseTo(row.path("area").asDouble(), within(tolerance * plane.area()));
    assertThat(plane.centroid().y()).isCloseTo(row.path("y").asDouble(), within(tolerance * 100));
    assertThat(plane.centroid().z()).isCloseTo(row.path("z").asDouble(), within(tolerance * 100));
    assertThat(drawing.pieces()).hasSize(row.path("pieces").asInt());
    assertThat(drawing.pieces().stream().mapToInt(piece -> piece.holes().size()).sum())
        .isEqualTo(row.path("holes").asInt());
    if (row.has("warns")) {
      assertThat(report).contains(row.path("warns").asText());
    } else {
      assertThat(report).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("faults")
  void eachFaultIsToldInPlace(JsonNode row) throws IOException {
    ProblemLog log = new ProblemLog("drawing.dxf");
    Optional<DxfReader.Drawing> read = DxfReader.read(written(row), options(row), log);

    List<Problem> problems = log.inOrder().stream().filter(Problem::isError).toList();
    String report = new ProblemReport("drawing.dxf", log.inOrder()).text();
    assertThat(read).as(report).isEmpty();
    assertThat(problems).as(report).hasSize(row.path("says").size());
    for (int i = 0; i < problems.size(); i++) {
      Problem problem = problems.get(i);
      assertThat(problem.place().line())
          .as(report)
          .isEqualTo(row.path("says").get(i).path("line").asInt());
      String said = problem.found() + " | " + problem.expected() + " | " + problem.remedy();
      for (JsonNode piece : row.path("says").get(i).path("says")) {
        assertThat(said).contains(piece.asText());
      }
    }
  }

  @Test
  void aBinaryDrawingIsRefused() throws IOException {
    Path file = folder.resolve("drawing.dxf");
    Files.write(file, new byte[] {65, 66, 13, 10, 26, 0, 0, 0});
    ProblemLog log = new ProblemLog("drawing.dxf");

    assertThat(DxfReader.read(file, DxfOptions.USUAL, log)).isEmpty();
    assertThat(log.inOrder()).hasSize(1);
    assertThat(log.inOrder().get(0).found()).isEqualTo("a binary file");
    assertThat(log.inOrder().get(0).remedy()).contains("ASCII");
  }

  @Test
  void aMissingDrawingIsToldByName() {
    ProblemLog log = new ProblemLog("drawing.dxf");

    assertThat(DxfReader.read(folder.resolve("none.dxf"), DxfOptions.USUAL, log)).isEmpty();
    assertThat(log.inOrder().get(0).found()).isEqualTo("no file of this name");
  }

  /** Old drawings are in a code page; the name of a layer does not keep them from being read. */
  @Test
  void aDrawingInACodePageIsRead() throws IOException {
    Path file = folder.resolve("drawing.dxf");
    String text =
        "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\nkör\n10\n0\n20\n0\n40\n5\n0\nENDSEC\n0\nEOF\n";
    Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));

    Optional<DxfReader.Drawing> read =
        DxfReader.read(
            file,
            new DxfOptions(OptionalDouble.of(1), Set.of("KÖR"), 0.01),
            new ProblemLog("drawing.dxf"));

    assertThat(read).isPresent();
  }
}
