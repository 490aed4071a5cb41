package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A mast of 1 m on one plate of 600 mm by 400 mm that is turned by a right angle, so that its long
 * side lies along Y; 100 kg of ballast stand on it and 100 N of wind blow along X at its top.
 */
class SingleFootWorkbookTest {

  /** A solid square of 40 mm, 1 m long, of 2.7e-6 kg/mm³. */
  private static final double MAST = 1600 * 1000 * 2.7e-6;

  @TempDir static Path folder;
  private static CheckedJob checked;
  private static JsonNode results;

  @BeforeAll
  static void check() throws IOException {
    Path job = Files.writeString(folder.resolve("mast.json"), text());
    checked = CheckedJob.of(job, folder, "--no-pictures");
    assertThat(checked.exit()).as(checked.said()).isEqualTo(1);
    results = new ObjectMapper().readTree(folder.resolve("results.json").toFile());
  }

  /**
   * About the edge 200 mm beyond the mast along X: 1.5 · 100 N · 1000 mm tip, 0.9 of the weight at
   * 200 mm holds (EN 1990:2002, Table A1.2(A), from memory, confirm against the standard).
   */
  @Test
  void itTipsAboutTheEdgesOfItsPlate() {
    JsonNode lines = results.at("/standing/lines");
    assertThat(lines.size()).isEqualTo(4);
    JsonNode line = null;
    for (JsonNode one : lines) {
      if (one.required("outward").required(0).asDouble() > 0.999) {
        line = one;
      }
    }
    assertThat(line).isNotNull();
    double holds = 0.9 * (100 + MAST) * 9.81 * 200;
    double factor = holds / (1.5 * 100 * 1000);

    double least = Double.POSITIVE_INFINITY;
    for (JsonNode rule : line.required("rules")) {
      least = Math.min(least, rule.path("factor").asDouble(Double.POSITIVE_INFINITY));
    }

    // The acceleration of gravity may be 9.80665 m/s².
    assertThat(least).isCloseTo(factor, within(1e-3 * factor));
  }

  @Test
  void anotherProgramWorksOutTheSameEdges() throws IOException {
    assertThat(checked.recalculation().disagreements())
        .filteredOn(words -> words.startsWith("Whole structure!"))
        .isEmpty();
  }

  private static String text() {
    return """
        {"formatVersion": 1,
         "job": {"title": "mast", "reference": "M-1", "date": "2026-11-25"},
         "rules": "en-iso-14122", "combinations": "en-1990",
         "overrides": {"notional.sway": {"value": "1e-9", "source": "no sway in this test"}},
         "sections": {"bar": {"shape": "solid-rectangle", "depth": "40 mm", "width": "40 mm"}},
         "materials": {"own": {"proofStrength": "170 MPa", "ultimateStrength": "215 MPa",
           "bucklingClass": "A", "youngsModulus": "70 GPa", "shearModulus": "27 GPa",
           "density": "2700 kg/m3", "source": "test"}},
         "nodes": {"held": ["0 mm", "0 mm", "0 mm"], "top": ["0 mm", "0 mm", "1 m"]},
         "members": {"mast": {"role": "leg", "nodes": ["held", "top"], "section": "bar",
           "material": "own", "start": "rigid", "end": "rigid"}},
         "supports": {"foot": {"node": "held", "type": "fixed"}},
         "userCases": {"wind": {"category": "wind", "loads": [
           {"node": "top", "force": ["100 N", "0 N", "0 N"]}]}},
         "jointDetails": {"plate": {"kind": "base-plate", "lengthX": "600 mm", "lengthY": "400 mm",
           "allowablePressure": "1 MPa", "source": "test"}},
         "jointChecks": {"code": "en-1999-1-1",
           "feet": [{"supports": ["foot"], "joint": "plate", "turn": "90 deg"}]},
         "standing": {"anchored": false,
           "friction": {"coefficient": "0.5", "source": "test"},
           "ballast": {"block": {"at": ["0 mm", "0 mm", "100 mm"], "mass": "100 kg",
             "source": "test"}}}}
        """;
  }
}
