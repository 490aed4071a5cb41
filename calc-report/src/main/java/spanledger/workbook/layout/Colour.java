package spanledger.workbook.layout;

import org.apache.poi.xssf.usermodel.XSSFColor;

/** The palette: muted, and still told apart when printed in grey. */
enum Colour {
  INK(0x1F2933),
  QUIET(0x59656D),
  HEADING(0x2B4A4B),
  RULE(0xB4BDBD),
  STRONG_RULE(0x3E4C54),
  HEAD_FILL(0xE4EAE7),
  GIVEN_FILL(0xFCF3DA),
  SOLVED_FILL(0xE3E9F1),
  CAUTION_FILL(0xF5E9E2),
  BAD_FILL(0x7A2222),
  OPEN_FILL(0xF0D080),
  PAPER(0xFFFFFF);

  private final int rgb;

  Colour(int rgb) {
    this.rgb = rgb;
  }

  XSSFColor color() {
    return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
  }
}
