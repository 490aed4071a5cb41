package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.LoadAxes;
import spanledger.action.SegmentLoad;
import spanledger.analysis.LoadDirection;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** How every load lies on its segment: turned from global axes by formula, or as given. */
final class LoadDirections {

  private static final Source JOB = Source.declared("job file");

  private final LedgerSheet sheet;
  private final SegmentSheets segments;
  private final IdentityHashMap<SegmentLoad, Integer> directionRows = new IdentityHashMap<>();
  private final ProcedureCells directions;
  private final DataCells local;

  /** Writes the tables of directions for all loads. */
  LoadDirections(LedgerSheet sheet, List<OwnedLoad> all, SegmentSheets segments) {
    this.sheet = sheet;
    this.segments = segments;
    directions = writeDirections(all);
    local = writeLocalDirections(all);
  }

  /**
   * Where a load's numbers stand.
   *
   * @param table of the loads
   * @param row of the load in it
   */
  LoadCells cells(SegmentLoad load, ProcedureCells table, int row) {
    int direction = Required.of(directionRows.get(load), "The direction of a load");
    return load.axes() == LoadAxes.LOCAL
        ? LoadCells.local(table, row, local, direction)
        : LoadCells.global(table, row, directions, direction);
  }

  private ProcedureCells writeDirections(List<OwnedLoad> all) {
    CompiledProcedure procedure = LoadDirection.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (OwnedLoad owned : all) {
      SegmentLoad load = owned.load();
      if (load.axes() == LoadAxes.GLOBAL) {
        directionRows.put(load, rows.size());
        Source source = Source.declared("direction of the load");
        Map<String, InputCell> given =
            Map.of(
                "D_X", InputCell.literal(load.direction().x(), source),
                "D_Y", InputCell.literal(load.direction().y(), source),
                "D_Z", InputCell.literal(load.direction().z(), source));
        rows.add(
            new ProcedureTable.Row(
                List.of(owned.kept().name(), load.segment().name()),
                Inputs.of(
                    procedure,
                    symbol ->
                        given.containsKey(symbol)
                            ? given.get(symbol)
                            : InputCell.inline(segments.geometry(load.segment(), symbol)))));
      }
    }
    return sheet.add(
        new ProcedureTable(
            "Directions on the segments",
            procedure,
            List.of(new ProcedureTable.Label("case", 34), new ProcedureTable.Label("segment", 22)),
            rows));
  }

  private DataCells writeLocalDirections(List<OwnedLoad> all) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (OwnedLoad owned : all) {
      SegmentLoad load = owned.load();
      if (load.axes() == LoadAxes.LOCAL) {
        directionRows.put(load, rows.size());
        rows.add(
            List.of(
                LedgerCell.text(owned.kept().name()),
                LedgerCell.text(load.segment().name()),
                LedgerCell.given(load.direction().x()),
                LedgerCell.given(load.direction().y()),
                LedgerCell.given(load.direction().z())));
      }
    }
    List<Column> columns =
        List.of(
            Column.text("case", 34),
            Column.text("segment", 22),
            Column.number("d_x", "part along x", Dimension.NONE).withSource(JOB),
            Column.number("d_y", "part along y", Dimension.NONE).withSource(JOB),
            Column.number("d_z", "part along z", Dimension.NONE).withSource(JOB));
    DataTable table = new DataTable("Directions given in the segment's own axes", columns, rows);
    return sheet.add(table);
  }
}
