package spanledger.workbook.layout;

import java.nio.ByteBuffer;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A PNG picture that takes the place of whole rows. */
final class Picture {

  private static final long PNG_SIGNATURE = 0x89504E470D0A1A0AL;

  /** Of ordinary text at 96 dots per inch; the widest digit counts. */
  private static final int PIXELS_PER_CHARACTER = 7;

  /** Of rows without a height of their own. */
  private static final int PIXELS_PER_ROW = (int) Math.round(LedgerSheet.ROW_HEIGHT * 96 / 72);

  private final byte[] png;
  private final String description;
  private final int row;
  private final int width;
  private final int height;

  Picture(byte[] png, String description, int row, int characters) {
    ByteBuffer header = ByteBuffer.wrap(png);
    // Width and height stand in the first chunk: PNG specification (W3C), IHDR.
    if (png.length < 24 || header.getLong(0) != PNG_SIGNATURE) {
      throw new IllegalArgumentException("The picture \"" + description + "\" is not a PNG file.");
    }
    this.png = png;
    this.description = description;
    this.row = row;
    this.width = characters * PIXELS_PER_CHARACTER;
    this.height = (int) Math.round((double) width * header.getInt(20) / header.getInt(16));
  }

  int rows() {
    return height / PIXELS_PER_ROW + 1;
  }

  /** The last column that the picture covers. */
  int lastColumn(ColumnWidths columns) {
    int column = 0;
    int left = width;
    while (left > columns.of(column) * PIXELS_PER_CHARACTER) {
      left -= columns.of(column) * PIXELS_PER_CHARACTER;
      column++;
    }
    return column;
  }

  void place(XSSFSheet sheet, ColumnWidths columns) {
    int column = lastColumn(columns);
    int left = width;
    for (int before = 0; before < column; before++) {
      left -= columns.of(before) * PIXELS_PER_CHARACTER;
    }
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(
            0,
            0,
            left * Units.EMU_PER_PIXEL,
            height % PIXELS_PER_ROW * Units.EMU_PER_PIXEL,
            0,
            row,
            column,
            row + height / PIXELS_PER_ROW);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    int index = sheet.getWorkbook().addPicture(png, Workbook.PICTURE_TYPE_PNG);
    XSSFPicture picture = sheet.createDrawingPatriarch().createPicture(anchor, index);
    picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(description);
  }
}
