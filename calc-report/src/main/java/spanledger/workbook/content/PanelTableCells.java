package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.deck.DeckUse;
import spanledger.deck.Panel;
import spanledger.deck.PanelColumn;
import spanledger.deck.TestedPanel;
import spanledger.deck.UseSize;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** The panels and their uses as given, and the rows of tables between which each use is read. */
final class PanelTableCells {

  private static final String RATIO = "δ/L";
  private static final String ROW = "row";

  private final LedgerSheet sheet;
  private final Map<String, DataCells> capacities = new HashMap<>();
  private final Map<DeckUse, Integer> useRows = new LinkedHashMap<>();
  private final Map<DeckUse, Integer> readRows = new LinkedHashMap<>();
  private final DataCells uses;
  private final Optional<DataCells> read;

  private PanelTableCells(LedgerSheet sheet, List<DeckUse> all) {
    this.sheet = sheet;
    Map<String, Panel> panels = new LinkedHashMap<>();
    all.forEach(use -> panels.putIfAbsent(use.panel().name(), use.panel()));
    DataCells facts = writePanels(List.copyOf(panels.values()));
    int row = 0;
    for (Panel panel : panels.values()) {
      if (panel instanceof TestedPanel tested) {
        capacities.put(panel.name(), writeCapacities(tested, facts, row));
      }
      row++;
    }
    uses = writeUses(all);
    read = writeRead(all);
  }

  static PanelTableCells write(LedgerSheet sheet, List<DeckUse> uses) {
    return new PanelTableCells(sheet, uses);
  }

  /** A size of a use. */
  NumberAt size(DeckUse use, UseSize size) {
    return uses.number(useRows.getOrDefault(use, 0), size.symbol());
  }

  /** A number of the row before or after a use's span. */
  NumberAt read(DeckUse use, PanelColumn column, boolean after) {
    return read.orElseThrow().number(readRows.getOrDefault(use, 0), heading(column, after));
  }

  private static String heading(PanelColumn column, boolean after) {
    return column.symbol() + (after ? "_2" : "_1");
  }

  private DataCells writePanels(List<Panel> panels) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Panel panel : panels) {
      Optional<TestedPanel> tested =
          panel instanceof TestedPanel one ? Optional.of(one) : Optional.empty();
      rows.add(
          List.of(
              LedgerCell.text(panel.name()),
              LedgerCell.text(
                  tested
                      .map(t -> t.allowable() ? "allowable loads" : "characteristic resistances")
                      .orElse("plank by its section")),
              given(tested.flatMap(TestedPanel::patch)),
              given(tested.flatMap(TestedPanel::deflectionRatio)),
              given(panel.opening()),
              LedgerCell.text(panel.reference())));
    }
    return sheet.add(
        new DataTable(
            "Panels",
            List.of(
                Column.text("panel", 22),
                Column.text("known by", 28),
                Column.number("a_t", "side of the patch in the test", Dimension.LENGTH),
                Column.number(RATIO, "deflection per span, under the loads", Dimension.NONE),
                Column.number("opening", "widest", Dimension.LENGTH),
                Column.wrapped(DataTable.SOURCE_HEADING, 32)),
            rows));
  }

  private static LedgerCell given(Optional<Double> value) {
    return value.map(LedgerCell::given).orElseGet(LedgerCell::blank);
  }

  private DataCells writeCapacities(TestedPanel panel, DataCells facts, int fact) {
    List<PanelColumn> columns = columns(panel);
    Source source = Source.declared("see Panels above");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int row = 0; row < panel.rows().size(); row++) {
      List<LedgerCell> cells = new ArrayList<>();
      for (PanelColumn column : columns) {
        double value = panel.value(row, column).orElseThrow();
        boolean byRatio = panel.deflectsByRatio() && column.symbol().startsWith("δ");
        cells.add(
            byRatio
                ? LedgerCell.live(
                    "{"
                        + PanelColumn.SPAN.symbol()
                        + "}*"
                        + facts.number(fact, RATIO).from(sheet.name()),
                    value)
                : LedgerCell.given(value));
      }
      rows.add(cells);
    }
    return sheet.add(
        new DataTable(
            "Panel " + panel.name() + ", " + (panel.allowable() ? "allowable" : "characteristic"),
            columns.stream()
                .map(c -> Column.number(c.symbol(), c.words(), c.dimension()).withSource(source))
                .toList(),
            rows));
  }

  private static List<PanelColumn> columns(TestedPanel panel) {
    return List.of(PanelColumn.values()).stream().filter(panel::has).toList();
  }

  private DataCells writeUses(List<DeckUse> all) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("on", 22), Column.text("panel", 28)));
    for (UseSize size : UseSize.values()) {
      columns.add(
          Column.number(size.symbol(), size.words(), size.dimension())
              .withSource(Source.declared("the description in the job")));
    }
    columns.add(Column.wrapped("where", 32));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (DeckUse use : all) {
      useRows.put(use, rows.size());
      List<LedgerCell> cells =
          new ArrayList<>(
              List.of(LedgerCell.text(use.subject()), LedgerCell.text(use.panel().name())));
      for (UseSize size : UseSize.values()) {
        cells.add(LedgerCell.given(size.of(use)));
      }
      cells.add(LedgerCell.text(use.where()));
      rows.add(cells);
    }
    return sheet.add(new DataTable("Where they are used", columns, rows));
  }

  private Optional<DataCells> writeRead(List<DeckUse> all) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("on", 22), Column.text("panel", 28)));
    columns.add(Column.number(ROW, "of the table, before the span", Dimension.NONE));
    for (PanelColumn column : PanelColumn.values()) {
      for (boolean after : new boolean[] {false, true}) {
        columns.add(
            Column.number(
                heading(column, after),
                column.words() + (after ? ", row after" : ", row before"),
                column.dimension()));
      }
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (DeckUse use : all) {
      if (use.panel() instanceof TestedPanel panel) {
        Optional<Integer> before = panel.rowBefore(use.span());
        before.ifPresent(
            found -> {
              readRows.put(use, rows.size());
              rows.add(readRow(use, panel, found));
            });
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            sheet.add(new DataTable("Rows of the tables around each span", columns, rows)));
  }

  private List<LedgerCell> readRow(DeckUse use, TestedPanel panel, int before) {
    DataCells table =
        Optional.ofNullable(capacities.get(panel.name()))
            .orElseThrow(() -> new IllegalStateException("A panel has no table."));
    String span = size(use, UseSize.SPAN).from(sheet.name());
    String spans = range(table, PanelColumn.SPAN);
    List<LedgerCell> cells =
        new ArrayList<>(List.of(LedgerCell.text(use.subject()), LedgerCell.text(panel.name())));
    cells.add(
        LedgerCell.live(
            "IF("
                + span
                + ">MAX("
                + spans
                + "),NA(),MIN(MATCH("
                + span
                + ","
                + spans
                + ",1),ROWS("
                + spans
                + ")-1))",
            before + 1));
    for (PanelColumn column : PanelColumn.values()) {
      for (boolean after : new boolean[] {false, true}) {
        Optional<Double> value = panel.value(after ? before + 1 : before, column);
        cells.add(
            value
                .map(
                    v ->
                        LedgerCell.live(
                            "INDEX("
                                + range(table, column)
                                + ",{"
                                + ROW
                                + "}"
                                + (after ? "+1)" : ")"),
                            v))
                .orElseGet(LedgerCell::blank));
      }
    }
    return cells;
  }

  private String range(DataCells table, PanelColumn column) {
    CellRange range = table.column(column.symbol());
    return range.from(sheet.name());
  }
}
