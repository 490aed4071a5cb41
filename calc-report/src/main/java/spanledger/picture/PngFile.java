package spanledger.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A drawing as a PNG file, for workbooks: letters are drawn as outlines, without system fonts. */
public final class PngFile {

  private final Lettering lettering;
  private final Graphics2D graphics;

  private PngFile(Lettering lettering, Graphics2D graphics) {
    this.lettering = lettering;
    this.graphics = graphics;
  }

  /**
   * The bytes of the file.
   *
   * @param lettering draws the words
   * @param dots per unit of the drawing
   */
  public static byte[] of(Drawing drawing, Lettering lettering, double dots) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(drawing.width() * dots),
            (int) Math.ceil(drawing.height() * dots),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.scale(dots, dots);
    PngFile file = new PngFile(lettering, graphics);
    drawing.marks().forEach(file::draw);
    graphics.dispose();
    return bytes(image);
  }

  private static byte[] bytes(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // In memory: the library would otherwise write a file of its own on the way.
    try (ImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(image, "png", stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private void draw(Mark mark) {
    if (mark instanceof Mark.Shape shape) {
      Path2D path = path(shape.trace());
      shape.fill().ifPresent(ink -> fill(path, ink));
      shape.pen().ifPresent(pen -> stroke(path, pen));
    } else if (mark instanceof Mark.Words words) {
      draw(words);
    }
  }

  private void draw(Mark.Words words) {
    double width = lettering.width(words.words(), words.size());
    AffineTransform place = AffineTransform.getTranslateInstance(words.at().x(), words.at().y());
    place.rotate(Math.toRadians(words.turn()));
    place.translate(-width * words.anchor().before(), 0);
    Shape letters = place.createTransformedShape(lettering.outlines(words.words(), words.size()));
    if (words.cleared()) {
      stroke(letters, Pen.full(Ink.WHITE, words.size() * SvgFile.RIM));
    }
    fill(letters, words.ink());
  }

  private void fill(Shape shape, Ink ink) {
    graphics.setColor(new Color(ink.rgb()));
    graphics.fill(shape);
  }

  private void stroke(Shape shape, Pen pen) {
    graphics.setColor(new Color(pen.ink().rgb()));
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pen.dashes().get(i).floatValue();
    }
    graphics.setStroke(
        new BasicStroke(
            (float) pen.width(),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            10,
            dashes.length == 0 ? null : dashes,
            0));
    graphics.draw(shape);
  }

  private static Path2D path(Trace trace) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    Spot here = new Spot(0, 0);
    for (Trace.Move move : trace.moves()) {
      if (move instanceof Trace.Start start) {
        path.moveTo(start.at().x(), start.at().y());
        here = start.at();
      } else if (move instanceof Trace.Line line) {
        path.lineTo(line.to().x(), line.to().y());
        here = line.to();
      } else if (move instanceof Trace.Arc arc) {
        path.append(arc(here, arc), true);
        here = arc.to();
      } else {
        path.closePath();
      }
    }
    return path;
  }

  private static Shape arc(Spot from, Trace.Arc arc) {
    double bulge = arc.bulge();
    Spot to = arc.to();
    // The centre lies beside the middle of the chord; y points down.
    double beside = (1 - bulge * bulge) / (4 * bulge);
    Spot centre =
        from.towards(to, 0.5).plus(-(to.y() - from.y()) * beside, (to.x() - from.x()) * beside);
    double radius = centre.distance(from);
    double start = Math.toDegrees(Math.atan2(centre.y() - from.y(), from.x() - centre.x()));
    return new Arc2D.Double(
        centre.x() - radius,
        centre.y() - radius,
        2 * radius,
        2 * radius,
        start,
        -Math.toDegrees(4 * Math.atan(bulge)),
        Arc2D.OPEN);
  }
}
