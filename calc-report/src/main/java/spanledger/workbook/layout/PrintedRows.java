package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Which rows of a sheet are printed.
 *
 * @param spans from where to where, downwards; none for all rows
 * @param firstPage whether only what fits on the first page
 */
record PrintedRows(List<Span> spans, boolean firstPage) {

  /**
   * Rows below each other.
   *
   * @param first the first one, from 0
   * @param last the last one
   */
  record Span(int first, int last) {}

  /** All rows. */
  static final PrintedRows ALL = new PrintedRows(List.of(), false);

  /** What fits on one page. */
  static final PrintedRows FIRST_PAGE = new PrintedRows(List.of(), true);

  PrintedRows {
    spans = List.copyOf(spans);
  }

  /** These rows and some more. */
  PrintedRows and(int first, int last) {
    List<Span> more = new ArrayList<>(spans);
    more.add(new Span(first, last));
    return new PrintedRows(more, false);
  }

  /** The rows of a sheet that has so many. */
  List<Span> within(Pages pages, int lastRow) {
    if (firstPage) {
      return List.of(new Span(0, pages.lastOfFirstPage(lastRow)));
    }
    return spans.isEmpty() ? List.of(new Span(0, lastRow)) : spans;
  }
}
