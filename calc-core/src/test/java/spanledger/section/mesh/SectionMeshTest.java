package spanledger.section.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;

/** A mesh covers its outline with triangles of good shape. */
class SectionMeshTest {

  /** Ruppert's bound is 20.7°; sides that lean on arcs may lose a little more. */
  private static final double LEAST_ANGLE = Math.toRadians(15);

  @Test
  void polygonsAreCoveredExactly() {
    Outline channel =
        Outline.of(Ring.polygon(0, 0, 40, 0, 40, 3, 3, 3, 3, 77, 40, 77, 40, 80, 0, 80));
    SectionMesh mesh = SectionMesh.of(channel);
    assertThat(area(mesh)).isCloseTo(3 * (80 + 2 * 37), Percentage.withPercentage(1e-10));
    assertThat(mesh.leastAngle()).isGreaterThan(LEAST_ANGLE);
  }

  @Test
  void holesAreLeftOutAndArcsFollowed() {
    Outline outline =
        Outline.of(
            new RoundedPolygon()
                .corner(0, 0, 4)
                .corner(60, 0, 4)
                .corner(60, 40, 4)
                .corner(0, 40, 4)
                .close(),
            Ring.circle(new Point(15, 20), 10),
            Ring.circle(new Point(42, 20), 12));
    SectionMesh mesh = SectionMesh.of(outline);
    // Parabolas of at most 22.5° in place of arcs: 1e-4 of the area.
    assertThat(area(mesh))
        .isCloseTo(PlaneProperties.of(outline).area(), Percentage.withPercentage(0.01));
    assertThat(mesh.leastAngle()).isGreaterThan(LEAST_ANGLE);
    for (int n = 0; n < mesh.nodeCount(); n++) {
      if (mesh.ring(n) == 1) {
        assertThat(mesh.node(n).distance(new Point(15, 20)))
            .isCloseTo(10, Percentage.withPercentage(1e-10));
      }
    }
  }

  @Test
  void refiningKeepsTheAreaAndHalvesTheTriangles() {
    SectionMesh coarse = SectionMesh.of(Outline.of(Ring.polygon(0, 0, 30, 0, 30, 20, 0, 20)));
    boolean[] first = new boolean[coarse.triangleCount()];
    first[0] = true;
    SectionMesh fine = coarse.refined(first);
    assertThat(fine.triangleCount()).isGreaterThan(coarse.triangleCount());
    assertThat(area(fine)).isCloseTo(600, Percentage.withPercentage(1e-10));
    boolean[] all = new boolean[fine.triangleCount()];
    Arrays.fill(all, true);
    assertThat(fine.refined(all).triangleCount()).isGreaterThanOrEqualTo(2 * fine.triangleCount());
  }

  @Test
  void acuteCornersEnd() {
    SectionMesh mesh = SectionMesh.of(Outline.of(Ring.polygon(0, 0, 100, 0, 40, 2, 98, 15)));
    assertThat(mesh.triangleCount()).isLessThan(1000);
    assertThat(area(mesh))
        .isCloseTo(
            PlaneProperties.of(Outline.of(Ring.polygon(0, 0, 100, 0, 40, 2, 98, 15))).area(),
            Percentage.withPercentage(1e-9));
  }

  /** Straight-sided area plus the bow of each side: exact for parabolas. */
  private static double area(SectionMesh mesh) {
    double sum = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        Point start = mesh.node(mesh.node(t, k));
        Point end = mesh.node(mesh.node(t, (k + 1) % 3));
        Point bow = mesh.node(mesh.node(t, 3 + k)).minus(start.towards(end, 0.5));
        sum += start.cross(end) / 2 - 2.0 / 3 * end.minus(start).cross(bow);
      }
    }
    return sum;
  }
}
