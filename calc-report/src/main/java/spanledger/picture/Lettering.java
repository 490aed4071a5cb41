package spanledger.picture;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The letters of drawings: widths and outlines from a font file in a library, so that no picture
 * depends on the fonts of the machine.
 */
public final class Lettering {

  /** Liberation Sans, SIL Open Font License. */
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Fonts of the same letter widths, for programs that draw the words themselves. */
  static final String FAMILY = "Liberation Sans, Arial, Helvetica, sans-serif";

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  private Lettering(TrueTypeFont font) throws IOException {
    this.font = font;
    glyphs = font.getUnicodeCmapLookup();
    unitsPerEm = font.getUnitsPerEm();
  }

  /** Reads the font. */
  public static Lettering read() {
    try (InputStream stream = PDDocument.class.getResourceAsStream(FILE)) {
      if (stream == null) {
        throw new IllegalStateException("The font " + FILE + " is missing from its library.");
      }
      return new Lettering(new TTFParser().parse(new RandomAccessReadBuffer(stream)));
    } catch (IOException e) {
      throw new UncheckedIOException("The font " + FILE + " cannot be read.", e);
    }
  }

  /** Whether the font has a letter for every sign. */
  public boolean canWrite(String words) {
    return words.codePoints().allMatch(sign -> glyphs.getGlyphId(sign) != 0);
  }

  /** How long words are. */
  public double width(String words, double size) {
    double width = 0;
    for (int sign : words.codePoints().toArray()) {
      width += advance(sign);
    }
    return width * size / unitsPerEm;
  }

  /** The outlines of words whose base line starts at the origin and runs to the right. */
  Shape outlines(String words, double size) {
    Path2D path = new Path2D.Double();
    AffineTransform place = AffineTransform.getScaleInstance(size / unitsPerEm, -size / unitsPerEm);
    for (int sign : words.codePoints().toArray()) {
      try {
        GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(sign));
        if (glyph != null) {
          path.append(glyph.getPath().getPathIterator(place), false);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      place.translate(advance(sign), 0);
    }
    return path;
  }

  private int advance(int sign) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(sign));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
