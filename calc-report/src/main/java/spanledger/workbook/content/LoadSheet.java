package spanledger.workbook.content;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.AreaLoadShare;
import spanledger.action.DeckStrip;
import spanledger.action.LoadAxes;
import spanledger.action.LoadBeyondEnd;
import spanledger.action.LoadOrigin;
import spanledger.action.PatchLoad;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.action.SelfWeight;
import spanledger.analysis.LoadDirection;
import spanledger.analysis.LoadMoments;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Every load on a segment: its size by formula, its direction on the segment, its moments. */
final class LoadSheet {

  private static final Source JOB = Source.declared("job file");
  private static final Source WHOLE = Source.declared("start of the segment");
  private static final Source EXTENT =
      Source.derived("Extent of the floor over the segment, from the nodes");
  private static final Source SHORT_PATH =
      Source.derived("Length of a path that is shorter than the patch");
  private static final Source ARM = Source.derived("Rigid arm of the member end, along the member");
  private static final String FOUND = "place found by search";

  /** A load with the case it belongs to. */
  private record Owned(KeptCases.Kept kept, SegmentLoad load) {}

  private final LedgerSheet sheet;
  private final NodeSheet nodes;
  private final SegmentSheets segments;
  private final SectionSheet sections;
  private final FigureSheet figures;
  private final Map<Integer, NumberAt> ownWeights = new LinkedHashMap<>();
  private final Map<LoadOrigin.AreaShare, NumberAt> areaShares = new LinkedHashMap<>();
  private final Map<LoadOrigin.Patch, NumberAt> patches = new LinkedHashMap<>();
  private final Map<LoadOrigin.BeyondEnd, NumberAt> beyondEnds = new LinkedHashMap<>();
  private final Map<String, NumberAt> givenSizes = new LinkedHashMap<>();
  private final IdentityHashMap<SegmentLoad, LoadCells> cells = new IdentityHashMap<>();

  private LoadSheet(
      LedgerWorkbook workbook,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      FigureSheet figures) {
    this.nodes = nodes;
    this.sheet = workbook.sheet(SheetNames.LOADS);
    this.segments = segments;
    this.sections = sections;
    this.figures = figures;
  }

  static LoadSheet write(
      LedgerWorkbook workbook,
      KeptCases kept,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      FigureSheet figures) {
    LoadSheet loads = new LoadSheet(workbook, nodes, segments, sections, figures);
    loads.sheet.title(
        "Loads",
        "Every load on a segment in the cases that govern something. Moments are taken about the"
            + " segment's start.");
    List<Owned> all = new ArrayList<>();
    for (KeptCases.Kept one : kept.cases()) {
      one.loads().segmentLoads().forEach(l -> all.add(new Owned(one, l)));
    }
    loads.writeOwnWeights();
    loads.writeAreaShares(all);
    loads.writePatches(all);
    loads.writeGivenSizes(all);
    loads.writeBeyondEnds(all);
    loads.writeLoads(all);
    return loads;
  }

  private void writeOwnWeights() {
    CompiledProcedure procedure = SelfWeight.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Segment segment : segments.frame().segments()) {
      rows.add(
          new ProcedureTable.Row(
              List.of(segment.name()),
              List.of(
                  InputCell.inline(segments.stiffness(segment, "A")),
                  InputCell.shown(sections.alloy(segment.member().alloy(), "ρ")),
                  InputCell.inline(figures.number("g")))));
    }
    ProcedureCells table =
        sheet.add(
            new ProcedureTable(
                "Own weight", procedure, List.of(new ProcedureTable.Label("segment", 22)), rows));
    for (int i = 0; i < rows.size(); i++) {
      ownWeights.put(i, table.number(i, "q_G"));
    }
  }

  private void writeAreaShares(List<Owned> all) {
    DeckStripTables strips = DeckStripTables.write(sheet, strips(all), nodes);
    List<LoadOrigin.AreaShare> shares = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Owned owned : all) {
      if (perLength(owned.load()) instanceof LoadOrigin.AreaShare share
          && !shares.contains(share)) {
        shares.add(share);
        rows.add(
            new ProcedureTable.Row(
                List.of(share.surface(), owned.load().segment().member().name()),
                List.of(pressure(owned, share), InputCell.shown(strips.width(share.strip())))));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells table =
        sheet.add(
            new ProcedureTable(
                "Shares of area loads",
                AreaLoadShare.PROCEDURE.compile(),
                List.of(
                    new ProcedureTable.Label("surface", 22),
                    new ProcedureTable.Label("first on member", 18)),
                rows));
    for (int i = 0; i < shares.size(); i++) {
      areaShares.put(shares.get(i), table.number(i, "q"));
    }
  }

  /** Forces spread over a length, as line loads. */
  private void writePatches(List<Owned> all) {
    List<LoadOrigin.Patch> distinct = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Owned owned : all) {
      if (owned.load().origin() instanceof LoadOrigin.Patch patch && !distinct.contains(patch)) {
        distinct.add(patch);
        boolean whole =
            figures.ids().contains(RuleSet.FLOOR_POINT_PATCH)
                && figures.number(RuleSet.FLOOR_POINT_PATCH).value() == patch.length();
        rows.add(
            new ProcedureTable.Row(
                List.of(patch.what()),
                List.of(
                    InputCell.shown(figures.number(patch.what())),
                    whole
                        ? InputCell.shown(figures.number(RuleSet.FLOOR_POINT_PATCH))
                        : InputCell.literal(patch.length(), SHORT_PATH))));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells table =
        sheet.add(
            new ProcedureTable(
                "Forces on patches",
                PatchLoad.PROCEDURE.compile(),
                List.of(new ProcedureTable.Label("figure", 22)),
                rows));
    for (int i = 0; i < distinct.size(); i++) {
      patches.put(distinct.get(i), table.number(i, "q"));
    }
  }

  /** Why a load per length has its size, also of one that stands on a member end. */
  private static LoadOrigin perLength(SegmentLoad load) {
    return load.origin() instanceof LoadOrigin.BeyondEnd beyond
        ? beyond.perLength()
        : load.origin();
  }

  /** What lies between nodes and member ends that stand back from them. */
  private void writeBeyondEnds(List<Owned> all) {
    List<LoadOrigin.BeyondEnd> distinct = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Owned owned : all) {
      if (owned.load().origin() instanceof LoadOrigin.BeyondEnd beyond
          && !distinct.contains(beyond)) {
        distinct.add(beyond);
        double intensity = ((SegmentLoad.Point) owned.load()).force() / beyond.length();
        rows.add(
            new ProcedureTable.Row(
                List.of(words(beyond.perLength()), owned.load().segment().member().name()),
                List.of(
                    InputCell.shown(vertical(owned.load(), beyond.perLength(), intensity)),
                    InputCell.literal(beyond.length(), ARM))));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells table =
        sheet.add(
            new ProcedureTable(
                "Loads between nodes and member ends that stand back",
                LoadBeyondEnd.PROCEDURE.compile(),
                List.of(
                    new ProcedureTable.Label("load", 34),
                    new ProcedureTable.Label("first on member", 22)),
                rows));
    for (int i = 0; i < distinct.size(); i++) {
      beyondEnds.put(distinct.get(i), table.number(i, "F"));
    }
  }

  private static List<DeckStrip> strips(List<Owned> all) {
    List<DeckStrip> strips = new ArrayList<>();
    for (Owned owned : all) {
      if (perLength(owned.load()) instanceof LoadOrigin.AreaShare share
          && !strips.contains(share.strip())) {
        strips.add(share.strip());
      }
    }
    return strips;
  }

  private InputCell pressure(Owned owned, LoadOrigin.AreaShare share) {
    return owned.kept().name().startsWith("finishes ")
        ? InputCell.literal(share.pressure(), JOB)
        : InputCell.shown(figures.number(RuleSet.FLOOR_AREA));
  }

  private void writeLoads(List<Owned> all) {
    List<Owned> spread = new ArrayList<>();
    List<Owned> points = new ArrayList<>();
    for (Owned owned : all) {
      (owned.load() instanceof SegmentLoad.Point ? points : spread).add(owned);
    }
    IdentityHashMap<SegmentLoad, Integer> directionRows = new IdentityHashMap<>();
    ProcedureCells directions = writeDirections(all, directionRows);
    DataCells local = writeLocalDirections(all, directionRows);
    write(
        "Distributed loads",
        LoadMoments.DISTRIBUTED.compile(),
        spread,
        directions,
        local,
        directionRows);
    write("Point loads", LoadMoments.POINT.compile(), points, directions, local, directionRows);
  }

  private void write(
      String title,
      CompiledProcedure procedure,
      List<Owned> loads,
      ProcedureCells directions,
      DataCells local,
      IdentityHashMap<SegmentLoad, Integer> directionRows) {
    if (loads.isEmpty()) {
      return;
    }
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Owned owned : loads) {
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  owned.kept().name(), owned.load().segment().name(), words(owned.load().origin())),
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
      int row = Required.of(directionRows.get(load), "The direction of a load");
      cells.put(
          load,
          load.axes() == LoadAxes.LOCAL
              ? LoadCells.local(table, i, local, row)
              : LoadCells.global(table, i, directions, row));
    }
  }

  private List<InputCell> inputs(Owned owned) {
    if (owned.load() instanceof SegmentLoad.Point point) {
      boolean moving = owned.kept().words().startsWith("Moving");
      return List.of(
          size(point, point.force()),
          moving ? InputCell.solved(point.at(), FOUND) : fixedPlace(point));
    }
    SegmentLoad.Distributed spread = (SegmentLoad.Distributed) owned.load();
    if (owned.kept().words().startsWith("Moving")) {
      return List.of(
          size(spread, spread.intensityFrom()),
          size(spread, spread.intensityTo()),
          InputCell.solved(spread.from(), FOUND),
          InputCell.solved(spread.to(), FOUND));
    }
    boolean whole = spread.from() == 0 && spread.to() == spread.segment().length();
    Source extent = spread.origin() instanceof LoadOrigin.Given ? JOB : EXTENT;
    return List.of(
        size(spread, spread.intensityFrom()),
        size(spread, spread.intensityTo()),
        InputCell.literal(spread.from(), whole ? WHOLE : extent),
        whole
            ? InputCell.shown(segments.geometry(spread.segment(), "L"))
            : InputCell.literal(spread.to(), extent));
  }

  private InputCell fixedPlace(SegmentLoad.Point point) {
    if (perLength(point) == point.origin() && !isSwayOfBeyondEnd(point)) {
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

  private InputCell size(SegmentLoad load, double value) {
    if (load.origin() instanceof LoadOrigin.Notional notional) {
      NumberAt fraction = figures.number(RuleSet.NOTIONAL_SWAY);
      NumberAt base = vertical(load, notional.vertical(), value / notional.fraction());
      return new Sums(sheet.name())
          .plusProduct(fraction, base)
          .input("notional sway × vertical load");
    }
    return InputCell.shown(vertical(load, load.origin(), value));
  }

  private NumberAt vertical(SegmentLoad load, LoadOrigin origin, double value) {
    if (origin instanceof LoadOrigin.OwnWeight) {
      return Required.of(ownWeights.get(load.segment().index()), "The weight of a segment");
    }
    if (origin instanceof LoadOrigin.AreaShare share) {
      return Required.of(areaShares.get(share), "The share of an area load");
    }
    if (origin instanceof LoadOrigin.Patch patch) {
      return Required.of(patches.get(patch), "The line load of a patch");
    }
    if (origin instanceof LoadOrigin.BeyondEnd beyond) {
      return Required.of(beyondEnds.get(beyond), "The load beyond a member end");
    }
    if (origin instanceof LoadOrigin.Given given && figures.ids().contains(given.what())) {
      return figures.number(given.what());
    }
    return Required.of(givenSizes.get(sizeKey(load, value)), "The size of a load");
  }

  /** Sizes that the job gives itself, so that loads and their notional sway refer to one cell. */
  private void writeGivenSizes(List<Owned> all) {
    Map<String, List<LedgerCell>> rows = new LinkedHashMap<>();
    for (Owned owned : all) {
      if (owned.load().origin() instanceof LoadOrigin.Given given
          && !figures.ids().contains(given.what())) {
        SegmentLoad load = owned.load();
        double[] sizes =
            load instanceof SegmentLoad.Distributed d
                ? new double[] {d.intensityFrom(), d.intensityTo()}
                : new double[] {((SegmentLoad.Point) load).force()};
        for (double size : sizes) {
          rows.putIfAbsent(
              sizeKey(load, size),
              List.of(
                  LedgerCell.text(owned.kept().name()),
                  LedgerCell.text(load.segment().name()),
                  LedgerCell.text(
                      load instanceof SegmentLoad.Point ? "force, N" : "intensity, N/mm"),
                  LedgerCell.given(size)));
        }
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    DataCells table =
        sheet.add(
            new DataTable(
                "Sizes given in the job",
                List.of(
                    Column.text("case", 34),
                    Column.text("segment", 22),
                    Column.text("kind", 24),
                    Column.mixed("size", "core units").withSource(JOB)),
                List.copyOf(rows.values())));
    int row = 0;
    for (String key : rows.keySet()) {
      givenSizes.put(key, table.number(row++, "size"));
    }
  }

  /** A notional load's base size is worked out again, so sizes are told apart to nine digits. */
  private static String sizeKey(SegmentLoad load, double size) {
    return load.segment().index()
        + "|"
        + (load instanceof SegmentLoad.Point)
        + "|"
        + new BigDecimal(size).round(new MathContext(9));
  }

  private ProcedureCells writeDirections(
      List<Owned> all, IdentityHashMap<SegmentLoad, Integer> directionRows) {
    CompiledProcedure procedure = LoadDirection.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Owned owned : all) {
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

  private DataCells writeLocalDirections(
      List<Owned> all, IdentityHashMap<SegmentLoad, Integer> directionRows) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Owned owned : all) {
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

  private static String words(LoadOrigin origin) {
    if (origin instanceof LoadOrigin.OwnWeight) {
      return "own weight";
    } else if (origin instanceof LoadOrigin.AreaShare share) {
      return "area load on " + share.surface();
    } else if (origin instanceof LoadOrigin.Given given) {
      return given.what();
    } else if (origin instanceof LoadOrigin.Patch patch) {
      return patch.what() + " on its patch";
    } else if (origin instanceof LoadOrigin.BeyondEnd beyond) {
      return words(beyond.perLength()) + ", beyond the end";
    }
    return "sway of " + words(((LoadOrigin.Notional) origin).vertical());
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
