package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import spanledger.job.outline.OutlineReader;
import spanledger.job.outline.ReadOutline;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.outline.Similarity;

/** An outline written as a drawing or as an outline file is read back as what it was. */
class DrawingProperties {

  private static Outline tube(double width, double depth, double wall, double angle) {
    return Outline.of(
            rounded(0, 0, width, depth, wall / 2),
            rounded(wall, wall, width - wall, depth - wall, wall / 3))
        .moved(new Similarity(angle > 3, angle, 1, new Point(7, -11)));
  }

  private static Ring rounded(double y0, double z0, double y1, double z1, double radius) {
    return new RoundedPolygon()
        .corner(y0, z0, radius)
        .corner(y1, z0, radius)
        .corner(y1, z1, radius)
        .corner(y0, z1, radius)
        .close();
  }

  @Property(tries = 60)
  void aDrawingKeepsAreaAndMoments(
      @ForAll @DoubleRange(min = 20, max = 200) double width,
      @ForAll @DoubleRange(min = 20, max = 200) double depth,
      @ForAll @DoubleRange(min = 1, max = 6) double wall,
      @ForAll @DoubleRange(min = 0, max = 6.2) double angle,
      @ForAll @IntRange(min = 0, max = 1) int way)
      throws IOException {
    Outline outline = tube(width, depth, wall, angle);
    Path file = Files.createTempFile("outline", ".dxf");
    try {
      Files.writeString(file, way == 0 ? polylines(outline) : linesAndArcs(outline));
      assertSame(read(file), outline, 1e-9);
    } finally {
      Files.delete(file);
    }
  }

  @Property(tries = 60)
  void anOutlineFileKeepsAreaAndMoments(
      @ForAll @DoubleRange(min = 20, max = 200) double width,
      @ForAll @DoubleRange(min = 20, max = 200) double depth,
      @ForAll @DoubleRange(min = 1, max = 6) double wall,
      @ForAll @DoubleRange(min = 0, max = 6.2) double angle)
      throws IOException {
    Outline outline = tube(width, depth, wall, angle);
    Path file = Files.createTempFile("outline", ".json");
    try {
      Files.writeString(file, json(outline));
      assertSame(read(file), outline, 1e-9);
    } finally {
      Files.delete(file);
    }
  }

  private static PlaneProperties read(Path file) {
    ReadOutline read = new OutlineReader().read(file);
    assertThat(read).as(read.problems().toString()).isInstanceOf(ReadOutline.Accepted.class);
    return ((ReadOutline.Accepted) read).extrusion().plane();
  }

  /** Ends of arcs are worked out from angles in degrees, hence 1e-9 in place of rounding. */
  private static void assertSame(PlaneProperties found, Outline outline, double tolerance) {
    PlaneProperties expected = PlaneProperties.of(outline);
    double size = Math.sqrt(expected.area());
    assertThat(found.area()).isCloseTo(expected.area(), within(tolerance * expected.area()));
    assertThat(found.centroid().distance(expected.centroid())).isLessThan(tolerance * size * 10);
    double moment = expected.momentY() + expected.momentZ();
    assertThat(found.momentY()).isCloseTo(expected.momentY(), within(tolerance * moment));
    assertThat(found.productYZ()).isCloseTo(expected.productYZ(), within(tolerance * moment));
  }

  private static String dxf(String entities) {
    return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
        + entities
        + "0\nENDSEC\n0\nEOF\n";
  }

  private static String polylines(Outline outline) {
    StringBuilder text = new StringBuilder();
    for (Ring ring : outline.rings()) {
      text.append("0\nLWPOLYLINE\n8\n0\n70\n1\n");
      for (Edge edge : ring.edges()) {
        text.append("10\n" + edge.start().y() + "\n20\n" + edge.start().z() + "\n");
        if (edge instanceof ArcEdge arc) {
          text.append("42\n" + arc.bulge() + "\n");
        }
      }
    }
    return dxf(text.toString());
  }

  private static String linesAndArcs(Outline outline) {
    StringBuilder text = new StringBuilder();
    for (Edge edge : outline.edges()) {
      if (edge instanceof ArcEdge arc) {
        boolean left = arc.bulge() > 0;
        text.append("0\nARC\n8\n0\n10\n" + arc.centre().y() + "\n20\n" + arc.centre().z());
        text.append("\n40\n" + arc.radius());
        text.append("\n50\n" + degrees(arc.centre(), left ? arc.start() : arc.end()));
        text.append("\n51\n" + degrees(arc.centre(), left ? arc.end() : arc.start()) + "\n");
      } else {
        text.append("0\nLINE\n8\n0\n10\n" + edge.start().y() + "\n20\n" + edge.start().z());
        text.append("\n11\n" + edge.end().y() + "\n21\n" + edge.end().z() + "\n");
      }
    }
    return dxf(text.toString());
  }

  private static double degrees(Point centre, Point at) {
    Point spoke = at.minus(centre);
    return Math.toDegrees(Math.atan2(spoke.z(), spoke.y()));
  }

  private static String json(Outline outline) {
    List<String> rings = outline.rings().stream().map(DrawingProperties::json).toList();
    return "{\"formatVersion\": 1, \"name\": \"tube\", \"source\": \"test\", \"unit\": \"mm\", \"outer\": "
        + rings.get(0)
        + ", \"holes\": "
        + rings.subList(1, rings.size())
        + "}";
  }

  private static String json(Ring ring) {
    return ring.edges().stream()
        .map(
            edge ->
                "{\"at\": ["
                    + edge.start().y()
                    + ", "
                    + edge.start().z()
                    + "]"
                    + (edge instanceof ArcEdge arc
                        ? ", \"arc\": {\"bulge\": " + arc.bulge() + "}"
                        : "")
                    + "}")
        .toList()
        .toString();
  }
}
