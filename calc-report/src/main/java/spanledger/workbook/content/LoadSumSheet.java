package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.SegmentLoad;
import spanledger.frame.Segment;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** The moments of all loads on a segment in a case, by local axis. */
final class LoadSumSheet {

  /** The symbols of the sums, in the order of the end-force procedure. */
  static final List<String> SYMBOLS =
      List.of("m_0x", "m_1x", "m_0y", "m_1y", "m_2y", "m_3y", "m_0z", "m_1z", "m_2z", "m_3z");

  private static final Source NO_LOAD = Source.declared("0 in the first row: no load");

  private final Map<String, Integer> rows = new HashMap<>();
  private final LedgerSheet sheet;
  private final DataCells cells;

  private LoadSumSheet(LedgerWorkbook workbook, KeptCases kept, LoadSheet loads) {
    sheet = workbook.sheet(SheetNames.LOAD_SUMS);
    sheet.title(
        "Load sums",
        "Moments of all loads on a segment in a case, in its axes. Segments that are not listed in a"
            + " case bear no load in it and refer to the first row.");
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("case", 34), Column.text("segment", 22)));
    for (String symbol : SYMBOLS) {
      columns.add(
          Column.number(
                  symbol,
                  "order " + order(symbol) + " along " + symbol.charAt(3),
                  Dimension.whole(order(symbol), 1, 0, 0))
              .withSource(NO_LOAD));
    }
    List<List<LedgerCell>> table = new ArrayList<>();
    table.add(noLoad());
    for (KeptCases.Kept one : kept.cases()) {
      Map<Integer, List<SegmentLoad>> bySegment = new LinkedHashMap<>();
      for (SegmentLoad load : one.loads().segmentLoads()) {
        bySegment.computeIfAbsent(load.segment().index(), s -> new ArrayList<>()).add(load);
      }
      for (List<SegmentLoad> own : bySegment.values()) {
        Segment segment = own.get(0).segment();
        this.rows.put(key(one, segment), table.size());
        table.add(row(one, segment, own, loads, sheet.name()));
      }
    }
    cells = sheet.add(new DataTable("", columns, table));
  }

  static LoadSumSheet write(LedgerWorkbook workbook, KeptCases kept, LoadSheet loads) {
    return new LoadSumSheet(workbook, kept, loads);
  }

  private static List<LedgerCell> noLoad() {
    List<LedgerCell> row =
        new ArrayList<>(List.of(LedgerCell.text("any other"), LedgerCell.text("no load")));
    SYMBOLS.forEach(symbol -> row.add(LedgerCell.given(0)));
    return row;
  }

  private static List<LedgerCell> row(
      KeptCases.Kept kept, Segment segment, List<SegmentLoad> own, LoadSheet loads, String sheet) {
    List<LedgerCell> row =
        new ArrayList<>(List.of(LedgerCell.text(kept.name()), LedgerCell.text(segment.name())));
    for (String symbol : SYMBOLS) {
      Sums sum = new Sums(sheet);
      for (SegmentLoad load : own) {
        LoadCells load0 = loads.cells(load);
        sum.plusProduct(
            load0.direction("xyz".indexOf(symbol.charAt(3))), load0.number("m_" + order(symbol)));
      }
      row.add(sum.cell());
    }
    return row;
  }

  private static int order(String symbol) {
    return symbol.charAt(2) - '0';
  }

  private static String key(Solved solved, Segment segment) {
    return solved.name() + "/" + segment.index();
  }

  /** A sum for a segment in a case; in the row of zeros if the segment bears no load. */
  NumberAt number(Solved solved, Segment segment, String symbol) {
    return cells.number(rows.getOrDefault(key(solved, segment), 0), symbol);
  }

  /** The sheet, for what else belongs on it. */
  LedgerSheet sheet() {
    return sheet;
  }

  /** Whether the segment bears a load in the case. */
  boolean isLoaded(KeptCases.Kept kept, Segment segment) {
    return rows.containsKey(key(kept, segment));
  }
}
