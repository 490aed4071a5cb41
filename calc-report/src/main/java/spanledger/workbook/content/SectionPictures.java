package spanledger.workbook.content;

import java.util.Map;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.picture.PngFile;
import spanledger.workbook.layout.LedgerSheet;

/** The pictures of a section, below each other. */
final class SectionPictures {

  /** In characters of ordinary text: a picture and the title fit a printed page. */
  private static final int WIDTH = 102;

  /** Dots per unit: sharp when printed. */
  private static final double DOTS = 2;

  private SectionPictures() {}

  /**
   * Writes them.
   *
   * @param pictures by their short names, in order
   */
  static void write(
      LedgerSheet sheet, Map<String, Drawing> pictures, String name, Lettering lettering) {
    sheet.title("Pictures of " + name, "Drawn from the same numbers as the other sheets.");
    for (Drawing drawing : pictures.values()) {
      sheet.heading(drawing.title());
      sheet.picture(PngFile.of(drawing, lettering, DOTS), drawing.description(), WIDTH);
    }
  }
}
