package spanledger.workbook.content;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.AreaLoadShare;
import spanledger.action.DeckStrip;
import spanledger.action.LoadBeyondEnd;
import spanledger.action.LoadOrigin;
import spanledger.action.PatchLoad;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.action.SelfWeight;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** How large every load on a segment is: by formula, by a figure of the rules, or as given. */
final class LoadSizes {

  private static final Source JOB = Source.declared("job file");
  private static final Source SHORT_PATH =
      Source.derived("Length of a path that is shorter than the patch");
  private static final Source ARM = Source.derived("Rigid arm of the member end, along the member");

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

  private LoadSizes(
      LedgerSheet sheet,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      FigureSheet figures) {
    this.sheet = sheet;
    this.nodes = nodes;
    this.segments = segments;
    this.sections = sections;
    this.figures = figures;
  }

  /** Writes the tables of sizes for all loads. */
  static LoadSizes write(
      LedgerSheet sheet,
      List<OwnedLoad> all,
      NodeSheet nodes,
      SegmentSheets segments,
      SectionSheet sections,
      FigureSheet figures) {
    LoadSizes sizes = new LoadSizes(sheet, nodes, segments, sections, figures);
    sizes.writeOwnWeights();
    sizes.writeAreaShares(all);
    sizes.writePatches(all);
    sizes.writeGivenSizes(all);
    sizes.writeBeyondEnds(all);
    return sizes;
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

  private void writeAreaShares(List<OwnedLoad> all) {
    DeckStripTables strips = DeckStripTables.write(sheet, strips(all), nodes);
    List<LoadOrigin.AreaShare> shares = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (OwnedLoad owned : all) {
      if (OwnedLoad.perLength(owned.load()) instanceof LoadOrigin.AreaShare share
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
  private void writePatches(List<OwnedLoad> all) {
    List<LoadOrigin.Patch> distinct = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (OwnedLoad owned : all) {
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

  /** What lies between nodes and member ends that stand back from them. */
  private void writeBeyondEnds(List<OwnedLoad> all) {
    List<LoadOrigin.BeyondEnd> distinct = new ArrayList<>();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (OwnedLoad owned : all) {
      if (owned.load().origin() instanceof LoadOrigin.BeyondEnd beyond
          && !distinct.contains(beyond)) {
        distinct.add(beyond);
        double intensity = ((SegmentLoad.Point) owned.load()).force() / beyond.length();
        rows.add(
            new ProcedureTable.Row(
                List.of(
                    OwnedLoad.words(beyond.perLength()), owned.load().segment().member().name()),
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

  private static List<DeckStrip> strips(List<OwnedLoad> all) {
    List<DeckStrip> strips = new ArrayList<>();
    for (OwnedLoad owned : all) {
      if (OwnedLoad.perLength(owned.load()) instanceof LoadOrigin.AreaShare share
          && !strips.contains(share.strip())) {
        strips.add(share.strip());
      }
    }
    return strips;
  }

  private InputCell pressure(OwnedLoad owned, LoadOrigin.AreaShare share) {
    return owned.kept().name().startsWith("finishes ")
        ? InputCell.literal(share.pressure(), JOB)
        : InputCell.shown(figures.number(RuleSet.FLOOR_AREA));
  }

  /**
   * The cell of a load's size.
   *
   * @param value force, N, or intensity, N/mm
   */
  InputCell of(SegmentLoad load, double value) {
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
  private void writeGivenSizes(List<OwnedLoad> all) {
    Map<String, List<LedgerCell>> rows = new LinkedHashMap<>();
    for (OwnedLoad owned : all) {
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
}
