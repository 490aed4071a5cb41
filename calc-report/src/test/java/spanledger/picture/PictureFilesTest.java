package spanledger.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class PictureFilesTest {

  private static final Lettering LETTERING = Lettering.read();

  /** A ring of outer radius 40 and inner radius 20 about (100, 60), and a word with odd signs. */
  private static Drawing ring() {
    return new Drawing.Paper()
        .area(
            Trace.circle(new Spot(100, 60), 40).and(Trace.circle(new Spot(100, 60), 20)),
            new Ink(0x808080))
        .line(
            Trace.through(new Spot(10, 10), new Spot(190, 10)), Pen.dashed(Ink.BLACK, 2, 6.0, 3.0))
        .mark(
            new Mark.Words(
                new Spot(100, 115), "a < b & \"c\"", 10, Mark.Anchor.MIDDLE, 0, Ink.BLACK, true))
        .finish(200, 120, "Ring", "A grey ring");
  }

  @Test
  void svgIsWellFormedAndSaysWhatItShows() throws Exception {
    Document read =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(SvgFile.of(ring()).getBytes(StandardCharsets.UTF_8)));

    assertThat(read.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 200 120");
    assertThat(read.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Ring");
    assertThat(read.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("A grey ring");
    assertThat(read.getElementsByTagName("text").item(1).getTextContent())
        .isEqualTo("a < b & \"c\"");
  }

  @Test
  void pngHasTheRingWithItsHole() throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngFile.of(ring(), LETTERING, 2)));

    assertThat(image.getWidth()).isEqualTo(400);
    assertThat(image.getHeight()).isEqualTo(240);
    assertThat(image.getRGB(200, 120) & 0xFFFFFF).as("centre").isEqualTo(0xFFFFFF);
    assertThat(image.getRGB(260, 120) & 0xFFFFFF).as("in the ring").isEqualTo(0x808080);
    assertThat(image.getRGB(200, 60) & 0xFFFFFF).as("top of the ring").isEqualTo(0x808080);
    assertThat(image.getRGB(290, 120) & 0xFFFFFF).as("outside").isEqualTo(0xFFFFFF);
  }

  /** Area of a circular segment: r²(φ − sin φ)/2, geometry; here r = 50, φ = 90°. */
  @Test
  void arcsTurnTheWayTheirBulgeSays() throws IOException {
    double bulge = Math.tan(Math.PI / 8);
    double side = 50 * Math.sqrt(2);
    for (double sign : List.of(1.0, -1.0)) {
      Trace segment =
          new Trace(
              List.of(
                  new Trace.Start(new Spot(10, 50)),
                  new Trace.Arc(new Spot(10 + side, 50), sign * bulge),
                  new Trace.Close()));
      Drawing drawing =
          new Drawing.Paper().area(segment, Ink.BLACK).finish(100, 100, "Segment", "");
      BufferedImage image =
          ImageIO.read(new ByteArrayInputStream(PngFile.of(drawing, LETTERING, 4)));
      // Clockwise from left to right bulges upwards, where y is smaller.
      double above = dark(image, 0, 200) / 16.0;
      double below = dark(image, 200, 400) / 16.0;
      double area = 2500 * (Math.PI / 2 - 1) / 2;
      assertThat(sign > 0 ? above : below).isCloseTo(area, within(0.01 * area));
      assertThat(sign > 0 ? below : above).isCloseTo(0, within(0.01 * area));
    }
  }

  private static double dark(BufferedImage image, int fromRow, int toRow) {
    double sum = 0;
    for (int y = fromRow; y < toRow; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        sum += 1 - (image.getRGB(x, y) >> 8 & 0xFF) / 255.0;
      }
    }
    return sum / (1 - 0x29 / 255.0);
  }

  @Test
  void sameDrawingSameBytes() {
    assertThat(SvgFile.of(ring())).isEqualTo(SvgFile.of(ring()));
    assertThat(PngFile.of(ring(), Lettering.read(), 2)).isEqualTo(PngFile.of(ring(), LETTERING, 2));
  }

  /** Advance widths of the letters: "Liberation Sans" has those of Arial, A = 1366/2048 em. */
  @Test
  void wordsAreAsLongAsTheFontSays() {
    assertThat(LETTERING.width("AA", 2048)).isCloseTo(2 * 1366, within(1e-9));
    assertThat(LETTERING.canWrite("I_yz = 4·10⁶ mm⁴, α₁ = −3.2°, ω, τ, × –")).isTrue();
  }

  @Test
  void greysOfInksAreWhatAPrinterGives() {
    assertThat(new Ink(0).grey()).isZero();
    assertThat(Ink.WHITE.grey()).isCloseTo(1, within(1e-12));
    assertThat(new Ink(0x000000).towards(Ink.WHITE, 0.5).hex()).isEqualTo("#808080");
  }
}
