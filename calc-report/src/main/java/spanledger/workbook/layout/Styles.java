package spanledger.workbook.layout;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spanledger.workbook.layout.Look.Letters;

/** The styles of one workbook; each is made once. */
final class Styles {

  private record Key(CellRole role, String pattern, boolean literal) {}

  private final XSSFWorkbook workbook;
  private final Map<Key, Integer> styles = new HashMap<>();
  private final Map<Letters, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    // Column widths are counted in digits of the first font.
    XSSFFont first = workbook.getFontAt(0);
    first.setFontName(Look.FONT);
    first.setFontHeightInPoints((short) Look.BODY);
    first.setColor(Colour.INK.color());
    fonts.put(Look.PLAIN.letters(), first);
  }

  /** The number of the style for text. */
  int of(CellRole role) {
    return style(new Key(role, "", false));
  }

  /** The number of the style for text that would be a formula if it were typed. */
  int ofLiteral(CellRole role) {
    return style(new Key(role, "", true));
  }

  /** The number of the style for numbers. */
  int of(CellRole role, NumberPattern pattern) {
    return style(new Key(role, pattern.code(), false));
  }

  private int style(Key key) {
    Integer known = styles.get(key);
    if (known == null) {
      known = (int) create(key).getIndex();
      styles.put(key, known);
    }
    return known;
  }

  private XSSFCellStyle create(Key key) {
    Look look = Looks.of(key.role());
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font(look.letters()));
    if (look.fill() != Colour.PAPER) {
      style.setFillForegroundColor(look.fill().color());
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    edge(style, look.edges());
    style.setAlignment(look.stance().align());
    style.setVerticalAlignment(
        look.stance().low() ? VerticalAlignment.BOTTOM : VerticalAlignment.TOP);
    style.setWrapText(look.wrap());
    style.setIndention((short) (look.stance().indented() ? 1 : 0));
    if (!key.pattern().isEmpty()) {
      style.setDataFormat(workbook.createDataFormat().getFormat(key.pattern()));
    }
    style.setQuotePrefixed(key.literal());
    return style;
  }

  private static void edge(XSSFCellStyle style, Edges edges) {
    style.setBorderTop(edges.top());
    style.setBorderRight(edges.right());
    style.setBorderBottom(edges.bottom());
    style.setBorderLeft(edges.left());
    if (!edges.equals(Edges.NONE)) {
      style.setTopBorderColor(edges.colour().color());
      style.setRightBorderColor(edges.colour().color());
      style.setBottomBorderColor(edges.colour().color());
      style.setLeftBorderColor(edges.colour().color());
    }
  }

  private XSSFFont font(Letters key) {
    XSSFFont known = fonts.get(key);
    if (known == null) {
      known = workbook.createFont();
      known.setFontName(Look.FONT);
      known.setFontHeightInPoints((short) key.size());
      known.setBold(key.bold());
      known.setItalic(key.italic());
      known.setColor(key.ink().color());
      fonts.put(key, known);
    }
    return known;
  }
}
