package spanledger.job.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spanledger.job.problem.ProblemLog;
import spanledger.job.problem.ProblemReport;
import spanledger.job.reading.Reading;
import spanledger.job.source.JsonTreeReader;
import spanledger.section.Extrusion;
import spanledger.section.feature.Feature;
import spanledger.section.feature.Slot;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/** Outline files in JSON. Expected values by hand from the sizes in the files. */
class OutlineReaderTest {

  private static final Offset<Double> EXACT = within(1e-9);

  private static Extrusion accepted(String text) {
    ReadOutline read = Outlines.read(text);
    assertThat(read)
        .as(new ProblemReport(Outlines.FILE, read.problems()).text())
        .isInstanceOf(ReadOutline.Accepted.class);
    return ((ReadOutline.Accepted) read).extrusion();
  }

  private static Extrusion file(String name) {
    return accepted(Outlines.resource(name));
  }

  /** Rectangles and circles added up: see the corners in the file. */
  @Test
  void areaOfTheSlottedBeam() {
    double roundedCorners = 4 * 2 * 2 * (1 - Math.PI / 4);
    double slot = 10 * 3 + 20 * 9;
    // A trapezium, two quarter circles that bite into the wall, and one arc of a sixth of a turn
    // that leaves some of it.
    double quarter = (Math.PI / 2 - 1) / 2;
    double sixth = Math.PI / 3 - Math.sqrt(3) / 2;
    double groove = (8 + 4) / 2.0 * 2 + 2 * quarter - sixth;
    double box = 22 * 52 - 4 * 1.5 * 1.5 * (1 - Math.PI / 4);
    double circle = Math.PI * 2 * 2;
    double roundedSlot = 4 * 4 + Math.PI * 2 * 2;

    assertThat(file("slotted-beam.json").plane().area())
        .isCloseTo(40 * 60 - roundedCorners - slot - groove - box - circle - roundedSlot, EXACT);
  }

  /** Mirrored in z, a quarter turn to the left, 10 mm along y: (y, z) goes to (z + 10, y). */
  @Test
  void placementMovesEverything() {
    Extrusion beam = file("slotted-beam.json");

    PlaneProperties plane = beam.plane();
    PlaneProperties drawn =
        accepted(
                Outlines.resource("slotted-beam.json")
                    .replaceFirst("\"placement\".*\\R", "")
                    .replaceFirst("\"confirm\".*\\R", ""))
            .plane();
    assertThat(plane.centroid().y()).isCloseTo(drawn.centroid().z() + 10, EXACT);
    assertThat(plane.centroid().z()).isCloseTo(drawn.centroid().y(), EXACT);
    assertThat(plane.momentY()).isCloseTo(drawn.momentZ(), within(1e-6));
    Slot slot = (Slot) beam.features().get(0);
    assertThat(slot.mouth()).isEqualTo(new Point(40, 40));
    assertThat(slot.opens().distance(new Point(0, 1))).isLessThan(1e-12);
    // The wall on the left runs from z = 4.5 to 53.5 in the file.
    Plate back = plate(beam, "P1");
    assertThat(back.midpoint().distance(new Point(29 + 10, 1.5))).isLessThan(1e-9);
  }

  @Test
  void featuresAreMeasuredOnTheOutline() {
    String unsaid =
        Outlines.resource("slotted-beam.json")
            .replaceAll(
                ", \"(opening|headWidth|lip|headDepth|reach|keyWidth|keyDepth)\": [0-9]+", "");

    Map<String, Map<String, Double>> sizes = new TreeMap<>();
    for (Feature feature : accepted(unsaid).features()) {
      sizes.put(feature.name(), feature.sizes());
    }

    assertSizes(sizes.get("side-slot"), "opening", 10, "headWidth", 20, "lip", 3, "headDepth", 9);
    assertSizes(sizes.get("lower-lip"), "reach", 5, "thickness", 3);
    assertSizes(sizes.get("top-face"), "width", 36, "keyWidth", 6, "keyDepth", 2);
    assertSizes(sizes.get("back-wall"), "depth", 50, "thickness", 3);
  }

  private static void assertSizes(Map<String, Double> found, Object... expected) {
    assertThat(found).hasSize(expected.length / 2);
    for (int i = 0; i < expected.length; i += 2) {
      assertThat(found.get((String) expected[i]))
          .as((String) expected[i])
          .isCloseTo((Integer) expected[i + 1], within(1e-6));
    }
  }

  @Test
  void platesAreAsTheAuthorSays() {
    Extrusion beam = file("slotted-beam.json");

    assertThat(plate(beam, "bottom-lip").kind()).isEqualTo(PlateKind.OUTSTAND);
    assertThat(beam.plates().doubts()).isEmpty();
    assertThat(beam.corrections().by()).isEqualTo("the author of this test");
  }

  private static Plate plate(Extrusion extrusion, String name) {
    return extrusion.plates().plates().stream()
        .filter(plate -> plate.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Two bars 20 x 2 with a gap of 16 between: A = 80, I_y = 2 (20 8/12 + 40 81) by Steiner. */
  @Test
  void partsActTogetherOnlyIfTheFileSaysSo() {
    Extrusion together = file("two-bars.json");

    assertThat(together.isOnePiece()).isFalse();
    assertThat(together.plane().area()).isCloseTo(80, EXACT);
    assertThat(together.plane().momentY()).isCloseTo(2 * (20 * 8 / 12.0 + 40 * 81), EXACT);

    Extrusion apart =
        accepted(
            Outlines.resource("two-bars.json")
                .replace("\"together\": true", "\"together\": false"));
    assertThat(apart.actingTogether()).isEmpty();
    assertThatIllegalStateException().isThrownBy(apart::plane);
  }

  /** Inches at the head of the file: 2 in by 1 in are 50.8 mm by 25.4 mm. */
  @Test
  void unitOfTheFileIsExact() {
    Extrusion bar =
        accepted(
            "{\"formatVersion\": 1, \"name\": \"bar\", \"source\": \"test\", \"unit\": \"in\","
                + " \"outer\": [[0, 0], [2, 0], [2, 1], [0, 1], [0, 0]]}");

    assertThat(bar.plane().area()).isCloseTo(50.8 * 25.4, within(1e-10));
  }

  /** A file in which every key occurs makes the decoders ask for every key they know. */
  @Test
  void decodersAskForExactlyTheKeysOfTheSchema() {
    Map<String, Set<String>> asked = new TreeMap<>();
    for (String name :
        new String[] {"slotted-beam.json", "two-bars.json", "changed-plates.json", "drawn.json"}) {
      ProblemLog log = new ProblemLog(name);
      Reading reading = new Reading(log, Outlines.path("."));
      new OutlineDecoder(reading)
          .decode(JsonTreeReader.read(Outlines.resource(name), log).orElseThrow());
      reading
          .asked()
          .forEach((kind, keys) -> asked.computeIfAbsent(kind, k -> new TreeSet<>()).addAll(keys));
    }

    assertThat(asked).isEqualTo(keysOfSchema());
  }

  private static Map<String, Set<String>> keysOfSchema() {
    JsonNode schema;
    try {
      schema =
          new ObjectMapper().readTree(Outlines.root().resolve("docs/outline.schema.json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, Set<String>> keys = new TreeMap<>();
    keys.put("outline", names(schema.path("properties")));
    for (String kind : names(schema.path("$defs"))) {
      JsonNode definition = schema.path("$defs").path(kind);
      if (definition.has("additionalProperties")) {
        keys.put(kind, names(definition.path("properties")));
      }
    }
    return keys;
  }

  private static Set<String> names(JsonNode object) {
    Set<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
