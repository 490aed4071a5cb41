package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Member checks at the cuts that govern: a row per case and cut, a table per check. */
final class MemberCutTables {

  private static final Source MIDDLE =
      Source.derived("middle of the buckling length, on the safe side");

  private record Row(MemberGroups.Group group, Cut cut) {}

  private record Place(ProcedureCells table, int row) {}

  private final Frame frame;
  private final CutSheets cuts;
  private final SegmentSheets segments;
  private final MemberWorkings workings;
  private final LedgerSheet sheet;
  private final Map<String, Place> places = new HashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();
  private final IdentityHashMap<CutCheck, String> checks = new IdentityHashMap<>();

  MemberCutTables(
      LedgerSheet sheet,
      List<MemberGroups.Group> groups,
      Frame frame,
      CutSheets cuts,
      SegmentSheets segments,
      MemberWorkings workings) {
    this.frame = frame;
    this.cuts = cuts;
    this.segments = segments;
    this.workings = workings;
    this.sheet = sheet;
    Map<String, List<MemberGroups.Group>> byCheck = new LinkedHashMap<>();
    for (MemberGroups.Group group : groups) {
      for (int c = 0; c < group.prepared().checks().size(); c++) {
        CutCheck check = group.prepared().checks().get(c);
        String key = c + "|" + check.procedure().procedure().name();
        checks.put(check, key);
        byCheck.computeIfAbsent(key, k -> new ArrayList<>()).add(group);
      }
    }
    byCheck.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> position(e.getKey())))
        .forEach(e -> write(e.getKey(), e.getValue()));
  }

  private static int position(String key) {
    return Integer.parseInt(key.substring(0, key.indexOf('|')));
  }

  private void write(String key, List<MemberGroups.Group> groups) {
    List<Row> rows = new ArrayList<>();
    List<ProcedureTable.Row> table = new ArrayList<>();
    CompiledProcedure procedure = check(groups.get(0), key).procedure();
    for (MemberGroups.Group group : groups) {
      CutCheck check = check(group, key);
      for (Cut cut : group.cuts()) {
        rows.add(new Row(group, cut));
        table.add(
            new ProcedureTable.Row(
                List.of(
                    group.name(),
                    Integer.toString(cuts.row(cut) + 1),
                    cut.station().segment().name(),
                    cut.instance().words()),
                check.feeds().stream().map(feed -> input(feed, group, cut)).toList()));
      }
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(
                    new ProcedureTable.Label("case", 20),
                    new ProcedureTable.Label("cut", 6),
                    new ProcedureTable.Label("segment", 22),
                    new ProcedureTable.Label("combination", 50)),
                table));
    tables.add(cells);
    for (int i = 0; i < rows.size(); i++) {
      places.put(place(key, rows.get(i).group(), rows.get(i).cut()), new Place(cells, i));
    }
  }

  private CutCheck check(MemberGroups.Group group, String key) {
    return group.prepared().checks().get(position(key));
  }

  private static String place(String key, MemberGroups.Group group, Cut cut) {
    return key + "|" + group.number() + "|" + cut.key();
  }

  private InputCell input(Feed feed, MemberGroups.Group group, Cut cut) {
    if (feed instanceof Feed.AtCut at) {
      return effect(at.effect(), cut);
    }
    if (feed instanceof Feed.Earlier earlier) {
      String key = Required.of(checks.get(earlier.check()), "A check");
      Place place = Required.of(places.get(place(key, group, cut)), "A check at a cut");
      return InputCell.shown(place.table().number(place.row(), earlier.symbol()));
    }
    return workings.input(feed);
  }

  private InputCell effect(Effect effect, Cut cut) {
    return switch (effect) {
      case N, V_Y, V_Z, T, M_Y, M_Z -> InputCell.shown(force(effect.symbol(), cut));
      case PLACE -> placeAlong(cut);
      case PART_Y, PART_Z, PART_LATERAL -> InputCell.literal(0.5, MIDDLE);
      case M_Y_MAX -> size("M_y", cut);
      case M_Z_MAX -> size("M_z", cut);
      case M_Y_START, M_Y_QUARTER, M_Y_MIDDLE, M_Y_THREE_QUARTERS, M_Y_END ->
          InputCell.shown(force("M_y", cut));
      case M_Z_START, M_Z_QUARTER, M_Z_MIDDLE, M_Z_THREE_QUARTERS, M_Z_END ->
          InputCell.shown(force("M_z", cut));
    };
  }

  private NumberAt force(String symbol, Cut cut) {
    return cuts.force(cut, symbol);
  }

  private InputCell size(String symbol, Cut cut) {
    NumberAt moment = force(symbol, cut);
    return InputCell.live(
        "ABS(" + moment.from(sheet.name()) + ")",
        Math.abs(moment.value()),
        "uniform moment of the size at the cut, on the safe side");
  }

  private InputCell placeAlong(Cut cut) {
    Sums sum = new Sums(sheet.name());
    Station station = cut.station();
    for (Segment one : frame.segmentsOf(station.segment().member())) {
      if (one.order() < station.segment().order()) {
        sum.plus(segments.geometry(one, "L"));
      }
    }
    sum.plus(cuts.place(cut));
    return sum.input("from the member's start");
  }

  /** A use at all cuts of a group. */
  CellRange uses(MemberGroups.Group group, String symbol) {
    List<Cut> own = group.cuts();
    Place first = use(group, symbol, own.get(0));
    Place last = use(group, symbol, own.get(own.size() - 1));
    return first
        .table()
        .number(first.row(), symbol)
        .at()
        .to(last.table().number(last.row(), symbol).at());
  }

  /** The words of the combination of the row of {@link #use}. */
  CellAddress combination(MemberGroups.Group group, Cut cut, String symbol) {
    Place place = use(group, symbol, cut);
    return place.table().label(place.row(), 3);
  }

  /** A use at one cut of a group. */
  NumberAt use(MemberGroups.Group group, Cut cut, String symbol) {
    Place place = use(group, symbol, cut);
    return place.table().number(place.row(), symbol);
  }

  private Place use(MemberGroups.Group group, String symbol, Cut cut) {
    for (CutCheck check : group.prepared().checks()) {
      if (check.uses().stream().anyMatch(use -> use.symbol().equals(symbol))) {
        String key = Required.of(checks.get(check), "A check");
        return Required.of(places.get(place(key, group, cut)), "A check at a cut");
      }
    }
    throw new IllegalArgumentException("No check has " + symbol + ".");
  }

  /** Every check of a group with its row at the cut that governs most, in order. */
  List<MemberCodeSheets.Row> rowsOf(MemberGroups.Group group) {
    Cut worst =
        group.uses().stream()
            .max(Comparator.comparingDouble(use -> use.governing().value()))
            .map(MemberGroups.Shown::cut)
            .orElseThrow();
    List<MemberCodeSheets.Row> rows = new ArrayList<>();
    for (CutCheck check : group.prepared().checks()) {
      String key = Required.of(checks.get(check), "A check");
      Place place = Required.of(places.get(place(key, group, worst)), "A check at a cut");
      rows.add(new MemberCodeSheets.Row(place.table(), place.row()));
    }
    return rows;
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
