package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import spanledger.action.LoadOrigin;
import spanledger.action.SegmentLoad;
import spanledger.analysis.LoadMoments;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Every load on a segment: its size by formula, its direction on the segment, its moments. */
final class LoadSheet {

  private static final Source JOB = Source.declared("job file");
  private static final Source WHOLE = Source.declared("start of the segment");
  private static final Source EXTENT =
      Source.derived("Extent of the floor over the segment, from the nodes");
  private static final String FOUND = "place found by search";

  private final LedgerSheet sheet;
  private final SegmentSheets segments;
  private final LoadSizes sizes;
  private final LoadDirections directions;
  private final IdentityHashMap<SegmentLoad, LoadCells> cells = new IdentityHashMap<>();

  private LoadSheet(
      LedgerSheet sheet, SegmentSheets segments, LoadSizes sizes, LoadDirections directions) {
    this.sheet = sheet;
    this.segments = segments;
    this.sizes = sizes;
    this.directions = directions;
  }

  static LoadSheet write(
      LedgerWorkbook workbook,
      KeptCases kept,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      FigureSheet figures) {
    LedgerSheet sheet = workbook.sheet(SheetNames.LOADS);
    sheet.title(
        "Loads",
        "Every load on a segment in the cases that govern something. Moments are taken about the"
            + " segment's start.");
    List<OwnedLoad> all = OwnedLoad.of(kept);
    LoadSizes sizes = LoadSizes.write(sheet, all, nodes, segments, sections, figures);
    LoadSheet loads =
        new LoadSheet(sheet, segments, sizes, new LoadDirections(sheet, all, segments));
    loads.writeLoads(all);
    return loads;
  }

  private void writeLoads(List<OwnedLoad> all) {
    List<OwnedLoad> spread = new ArrayList<>();
    List<OwnedLoad> points = new ArrayList<>();
    for (OwnedLoad owned : all) {
      (owned.load() instanceof SegmentLoad.Point ? points : spread).add(owned);
    }
    write("Distributed loads", LoadMoments.DISTRIBUTED.compile(), spread);
    write("Point loads", LoadMoments.POINT.compile(), points);
  }

  private void write(String title, CompiledProcedure procedure, List<OwnedLoad> loads) {
    if (loads.isEmpty()) {
      return;
    }
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (OwnedLoad owned : loads) {
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  owned.kept().name(),
                  owned.load().segment().name(),
                  OwnedLoad.words(owned.load().origin())),
              inputs(owned)));
    }
    ProcedureCells table =
        sheet.add(
            new ProcedureTable(
                title,
                procedure,
                List.of(
                    new ProcedureTable.Label("case", 34),
                    new ProcedureTable.Label("segment", 22),
                    new ProcedureTable.Label("size from", 24)),
                rows));
    for (int i = 0; i < loads.size(); i++) {
      SegmentLoad load = loads.get(i).load();
      cells.put(load, directions.cells(load, table, i));
    }
  }

  private List<InputCell> inputs(OwnedLoad owned) {
    if (owned.load() instanceof SegmentLoad.Point point) {
      boolean moving = owned.kept().words().startsWith("Moving");
      return List.of(
          sizes.of(point, point.force()),
          moving ? InputCell.solved(point.at(), FOUND) : fixedPlace(point));
    }
    SegmentLoad.Distributed spread = (SegmentLoad.Distributed) owned.load();
    if (owned.kept().words().startsWith("Moving")) {
      return List.of(
          sizes.of(spread, spread.intensityFrom()),
          sizes.of(spread, spread.intensityTo()),
          InputCell.solved(spread.from(), FOUND),
          InputCell.solved(spread.to(), FOUND));
    }
    boolean whole = spread.from() == 0 && spread.to() == spread.segment().length();
    Source extent = spread.origin() instanceof LoadOrigin.Given ? JOB : EXTENT;
    return List.of(
        sizes.of(spread, spread.intensityFrom()),
        sizes.of(spread, spread.intensityTo()),
        InputCell.literal(spread.from(), whole ? WHOLE : extent),
        whole
            ? InputCell.shown(segments.geometry(spread.segment(), "L"))
            : InputCell.literal(spread.to(), extent));
  }

  private InputCell fixedPlace(SegmentLoad.Point point) {
    if (OwnedLoad.perLength(point) == point.origin() && !isSwayOfBeyondEnd(point)) {
      return InputCell.literal(point.at(), JOB);
    }
    return point.at() == 0
        ? InputCell.literal(0, WHOLE)
        : InputCell.shown(segments.geometry(point.segment(), "L"));
  }

  private static boolean isSwayOfBeyondEnd(SegmentLoad load) {
    return load.origin() instanceof LoadOrigin.Notional notional
        && notional.vertical() instanceof LoadOrigin.BeyondEnd;
  }

  /** Where a load's numbers stand. */
  LoadCells cells(SegmentLoad load) {
    LoadCells found = cells.get(load);
    if (found == null) {
      throw new IllegalArgumentException(
          "A load on " + load.segment().name() + " is not in the workbook.");
    }
    return found;
  }
}
