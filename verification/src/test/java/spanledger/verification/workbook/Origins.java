package spanledger.verification.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;

/**
 * Where the numbers of a workbook come from that are not formulas, by what a reader sees: given
 * numbers are boxed, solver values (movements, and places found by search) boxed with dots, what
 * the reader may change boxed thickly, and counters are whole numbers without a box. Sources are in
 * small grey letters under the heading of the column or in the row, or in a column headed "source".
 */
final class Origins {

  /** What a number that is no formula may be. */
  enum Kind {
    GIVEN,
    SOLVED,
    CHOSEN,
    COUNTER
  }

  private static final String SMALL_GREY = "FF59656D";
  private static final String PER_ROW = "see last column";

  private final Book book;
  private final Map<Kind, Integer> counts = new TreeMap<>();
  private final List<String> unexplained = new ArrayList<>();

  Origins(Book book) {
    this.book = book;
    for (String sheet : book.names()) {
      for (List<BookCell> table : book.tables(sheet)) {
        table.stream().filter(BookCell::isConstant).forEach(cell -> explain(cell, table));
      }
    }
  }

  /** How many numbers there are of each kind. */
  int count(Kind kind) {
    return counts.getOrDefault(kind, 0);
  }

  /** The numbers of which nobody can tell where they come from. */
  List<String> unexplained() {
    return unexplained;
  }

  private void explain(BookCell cell, List<BookCell> table) {
    Optional<Kind> kind = kind(cell);
    kind.ifPresent(k -> counts.merge(k, 1, Integer::sum));
    boolean explained =
        switch (kind.orElse(Kind.COUNTER)) {
          case GIVEN -> hasSource(cell, table);
          case SOLVED ->
              cell.sheet().equals("Movements")
                  || cell.sheet().endsWith(" movements")
                  || isFoundBySearch(cell, table);
          case CHOSEN -> cell.sheet().equals("Worked page");
          case COUNTER -> kind.isPresent();
        };
    if (!explained) {
      unexplained.add(cell.words());
    }
  }

  private Optional<Kind> kind(BookCell cell) {
    BorderStyle box = style(cell).getBorderLeft();
    if (box == BorderStyle.NONE) {
      boolean counts = cell.column() == 0 && cell.number() == Math.rint(cell.number());
      return counts ? Optional.of(Kind.COUNTER) : Optional.empty();
    }
    return switch (box) {
      case THIN -> Optional.of(Kind.GIVEN);
      case DOTTED -> Optional.of(Kind.SOLVED);
      case THICK -> Optional.of(Kind.CHOSEN);
      default -> Optional.empty();
    };
  }

  private boolean hasSource(BookCell cell, List<BookCell> table) {
    List<BookCell> row = table.stream().filter(c -> c.row() == cell.row()).toList();
    for (BookCell above : table) {
      if (above.column() == cell.column() && above.row() < cell.row() && isSource(above)) {
        BookCell last = row.get(row.size() - 1);
        return !above.text().equals(PER_ROW) || last.kind() == BookCell.Kind.WORDS;
      }
    }
    return row.stream().anyMatch(c -> isSource(c) || isUnder("source", c, table));
  }

  /**
   * The place of a cut, of a moving load or of a neutral axis, and what finite elements found: no
   * balance proves it, so the reader must be told. Movements of joint faces name their balance.
   */
  private static boolean isFoundBySearch(BookCell cell, List<BookCell> table) {
    return table.stream()
        .filter(
            c ->
                c.row() == cell.row()
                    || c.row() == cell.row() + 1
                    || (c.row() < cell.row() && c.column() == cell.column()))
        .anyMatch(
            c ->
                c.text().contains("found by search")
                    || c.text().contains("finite elements:")
                    || c.text().contains("balance of the faces"));
  }

  private static boolean isUnder(String heading, BookCell cell, List<BookCell> table) {
    return cell.kind() == BookCell.Kind.WORDS
        && table.stream()
            .anyMatch(
                c ->
                    c.column() == cell.column()
                        && c.row() < cell.row()
                        && c.text().equals(heading));
  }

  private boolean isSource(BookCell cell) {
    if (cell.kind() != BookCell.Kind.WORDS || cell.text().isBlank()) {
      return false;
    }
    XSSFColor ink = style(cell).getFont().getXSSFColor();
    return style(cell).getFont().getFontHeightInPoints() == 8
        && ink != null
        && SMALL_GREY.equals(ink.getARGBHex());
  }

  private XSSFCellStyle style(BookCell cell) {
    return book.styles().getStyleAt(cell.style());
  }
}
