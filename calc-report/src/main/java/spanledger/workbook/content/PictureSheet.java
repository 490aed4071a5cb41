package spanledger.workbook.content;

import spanledger.picture.Drawing;
import spanledger.picture.PngFile;
import spanledger.picture.structure.StructureAlbum;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;

/** The sheet with the pictures of the structure, none torn by the end of a printed page. */
public final class PictureSheet {

  /** In characters of ordinary text: a picture and the title of the sheet fit a printed page. */
  private static final int WIDTH = 110;

  /** Dots per unit: sharp enough when printed. */
  private static final double DOTS = 1.25;

  private PictureSheet() {}

  /** Writes the sheet behind the summary; none if there are no pictures. */
  public static void write(LedgerWorkbook workbook, StructureAlbum album) {
    if (album.pictures().isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.PICTURES);
    sheet.title(
        "Pictures of the structure",
        "Drawn from the same numbers as the other sheets; they show and prove nothing by themselves.");
    for (Drawing drawing : album.pictures().values()) {
      sheet.heading(drawing.title());
      sheet.picture(PngFile.of(drawing, album.lettering(), DOTS), drawing.description(), WIDTH);
    }
    workbook.moveBehind(SheetNames.PICTURES, SheetNames.SUMMARY);
  }
}
