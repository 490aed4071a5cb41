package spanledger.job.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.job.problem.ProblemReport;
import spanledger.section.Extrusion;
import spanledger.section.feature.Slot;
import spanledger.section.plate.Plate;

/** The extrusions invented for the demonstration. */
class ExampleOutlinesTest {

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(Outlines.root().resolve("docs/examples/outlines"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @Test
  void thereAreAtLeastTwelve() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(12);
  }

  /** Walls of extrusions for such structures are 1.8 to 6 mm thick: common practice, no source. */
  @ParameterizedTest
  @MethodSource("files")
  void eachCanBeUsedInAJob(Path file) {
    ReadOutline read = new OutlineReader().read(file);

    assertThat(read)
        .as(new ProblemReport(file.toString(), read.problems()).text())
        .isInstanceOf(ReadOutline.Accepted.class);
    assertThat(read.problems()).isEmpty();
    Extrusion extrusion = ((ReadOutline.Accepted) read).extrusion();
    assertThat(extrusion.source()).isEqualTo("invented for the demonstration");
    assertThat(extrusion.isOnePiece()).isTrue();
    assertThat(extrusion.plates().isSure()).as("local buckling can be judged").isTrue();
    assertThat(extrusion.plates().plates())
        .extracting(Plate::thickness)
        .allSatisfy(t -> assertThat(t).isBetween(1.8 - 1e-9, 6 + 1e-9));
  }

  /**
   * Slots for M8 take its head, 13 mm across flats (ISO 4017, from memory), not through the lips.
   */
  @Test
  void slotsForM8HoldItsHead() {
    for (String name : List.of("deck-edge-beam.json", "post-with-slots.json")) {
      Path file = Outlines.root().resolve("docs/examples/outlines").resolve(name);
      Extrusion extrusion = ((ReadOutline.Accepted) new OutlineReader().read(file)).extrusion();
      assertThat(extrusion.features())
          .filteredOn(Slot.class::isInstance)
          .isNotEmpty()
          .allSatisfy(
              feature -> {
                Slot slot = (Slot) feature;
                assertThat(slot.opening()).isBetween(8.0, 13.0);
                assertThat(slot.headWidth()).isGreaterThan(13.0);
              });
    }
  }
}
