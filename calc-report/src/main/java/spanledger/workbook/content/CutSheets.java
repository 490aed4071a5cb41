package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spanledger.action.SegmentLoad;
import spanledger.analysis.LoadBefore;
import spanledger.analysis.SectionForces;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
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

/**
 * Where the members are cut: combined end forces, the loads before the cut, and the internal
 * forces, of sums over load cases here and of states on sheets of their own.
 */
final class CutSheets {

  static final String FOUND = "place found by search";
  private static final List<String> END_FORCES =
      List.of("F_x1", "F_y1", "F_z1", "M_x1", "M_y1", "M_z1");

  /** A load before a cut, with its factor. */
  private record Before(LoadCells load, NumberAt factor, ProcedureCells table, int row) {}

  private final CombinationSheet combinations;
  private final EndForceSheets forces;
  private final LoadSheet loads;
  private final Map<String, Integer> rows = new LinkedHashMap<>();
  private final List<Cut> cuts = new ArrayList<>();
  private final DataCells places;
  private final Map<String, List<Before>> before = new HashMap<>();
  private final Map<String, Integer> summedRows = new HashMap<>();
  private final Optional<ProcedureCells> summed;
  private final Optional<StateSheets> states;
  private final Optional<StateCutSheets> ofStates;

  private CutSheets(
      LedgerWorkbook workbook,
      List<Cut> wanted,
      CombinationSheet combinations,
      EndForceSheets forces,
      LoadSheet loads,
      SegmentSheets segments,
      Optional<StateSheets> states) {
    this.combinations = combinations;
    this.forces = forces;
    this.loads = loads;
    this.states = states;
    for (Cut cut : wanted) {
      if (rows.putIfAbsent(cut.key(), rows.size()) == null) {
        cuts.add(cut);
      }
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.CUT_LOADS);
    places = writePlaces(sheet);
    writeBefore(sheet, SegmentLoad.Distributed.class, LoadBefore.DISTRIBUTED.compile());
    writeBefore(sheet, SegmentLoad.Point.class, LoadBefore.POINT.compile());
    summed = writeInternal(workbook);
    ofStates = writeStates(workbook, segments);
  }

  private Optional<StateCutSheets> writeStates(LedgerWorkbook workbook, SegmentSheets segments) {
    List<StateCutSheets.Numbered> numbered = new ArrayList<>();
    for (Cut cut : cuts) {
      state(cut)
          .ifPresent(
              state ->
                  numbered.add(new StateCutSheets.Numbered(cut, row(cut) + 1, place(cut), state)));
    }
    return states
        .filter(all -> !numbered.isEmpty())
        .map(
            all ->
                new StateCutSheets(workbook, numbered, all, combinations, loads, segments, this));
  }

  /** The state of a cut's combination, if that was solved as one. */
  Optional<StateSolved> state(Cut cut) {
    return cut.bySum() ? Optional.empty() : states.flatMap(all -> all.of(cut.instance()));
  }

  static CutSheets write(
      LedgerWorkbook workbook,
      List<Cut> wanted,
      CombinationSheet combinations,
      EndForceSheets forces,
      LoadSheet loads,
      SegmentSheets segments,
      Optional<StateSheets> states) {
    return new CutSheets(workbook, wanted, combinations, forces, loads, segments, states);
  }

  private DataCells writePlaces(LedgerSheet sheet) {
    sheet.title(
        "Loads before the cuts",
        "Places of all cuts, and what each load on the cut segment does at the cut.");
    List<List<LedgerCell>> table = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      table.add(
          List.of(
              LedgerCell.count(i + 1),
              LedgerCell.text(cuts.get(i).station().segment().name()),
              LedgerCell.solved(cuts.get(i).station().x()),
              LedgerCell.text(cuts.get(i).words())));
    }
    return sheet.add(
        new DataTable(
            "Cuts",
            List.of(
                Column.number("cut", "", Dimension.NONE).withWidth(6),
                Column.text("segment", 22),
                Column.number("x", FOUND, Dimension.LENGTH),
                Column.text("combination", 70)),
            table));
  }

  private void writeBefore(
      LedgerSheet sheet, Class<? extends SegmentLoad> kind, CompiledProcedure procedure) {
    List<ProcedureTable.Row> table = new ArrayList<>();
    List<LoadCells> cells = new ArrayList<>();
    List<NumberAt> factors = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      int row = i;
      for (CombinationSheet.Weighted part : combinations.parts(cut.instance())) {
        for (SegmentLoad load : part.kept().loads().segmentLoads()) {
          if (kind.isInstance(load) && load.segment().index() == cut.station().segment().index()) {
            LoadCells own = loads.cells(load);
            table.add(
                new ProcedureTable.Row(
                    List.of(Integer.toString(i + 1), part.kept().name()),
                    Inputs.of(
                        procedure,
                        symbol ->
                            InputCell.inline(
                                symbol.equals("x")
                                    ? places.number(row, "x")
                                    : own.number(symbol)))));
            cells.add(own);
            factors.add(part.factor());
            keys.add(cut.key());
          }
        }
      }
    }
    if (table.isEmpty()) {
      return;
    }
    ProcedureCells written =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(new ProcedureTable.Label("cut", 6), new ProcedureTable.Label("case", 34)),
                table));
    for (int i = 0; i < table.size(); i++) {
      before
          .computeIfAbsent(keys.get(i), k -> new ArrayList<>())
          .add(new Before(cells.get(i), factors.get(i), written, i));
    }
  }

  private Optional<ProcedureCells> writeInternal(LedgerWorkbook workbook) {
    if (cuts.stream().allMatch(cut -> state(cut).isPresent())) {
      return Optional.empty();
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.CUTS);
    sheet.title(
        "Internal forces at the cuts",
        "End forces are sums over the cases of the combination, each with its factor. N is positive in"
            + " tension; M_y is positive when it stretches the side at +z, so a sagging beam has a"
            + " negative M_y.");
    CompiledProcedure procedure = SectionForces.PROCEDURE.compile();
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      int row = i;
      if (state(cut).isPresent()) {
        continue;
      }
      summedRows.put(cut.key(), table.size());
      table.add(
          new ProcedureTable.Row(
              List.of(Integer.toString(i + 1), cut.station().segment().name(), cut.words()),
              Inputs.of(procedure, symbol -> input(cut, row, symbol, sheet.name()))));
    }
    return Optional.of(
        sheet.add(
            new ProcedureTable(
                "",
                procedure,
                List.of(
                    new ProcedureTable.Label("cut", 6),
                    new ProcedureTable.Label("segment", 22),
                    new ProcedureTable.Label("combination", 50)),
                table)));
  }

  private InputCell input(Cut cut, int row, String symbol, String sheet) {
    if (symbol.equals("x")) {
      return InputCell.shown(places.number(row, "x"));
    } else if (END_FORCES.contains(symbol)) {
      return combined(cut, symbol, sheet);
    }
    return before(cut, symbol, sheet);
  }

  /** An end force of the cut segment, summed over the cases of the combination. */
  InputCell combined(Cut cut, String symbol, String sheet) {
    Segment segment = cut.station().segment();
    return summed(
        cut, part -> forces.endForce(part.kept(), segment, symbol), sheet, "sum over the cases");
  }

  /** Any number of the cases, summed with their factors. */
  InputCell summed(
      Cut cut, Function<CombinationSheet.Weighted, NumberAt> number, String sheet, String note) {
    Sums sum = new Sums(sheet);
    for (CombinationSheet.Weighted part : combinations.parts(cut.instance())) {
      sum.plusProduct(part.factor(), number.apply(part));
    }
    return sum.input(note);
  }

  /** What the loads before the cut do, for example g_1z. */
  InputCell before(Cut cut, String symbol, String sheet) {
    Sums sum = new Sums(sheet);
    int axis = "xyz".indexOf(symbol.charAt(3));
    for (Before load : before.getOrDefault(cut.key(), List.of())) {
      sum.plusProduct(
          load.factor(),
          load.load().direction(axis),
          load.table().number(load.row(), symbol.substring(0, 3)));
    }
    return sum.input("sum over the loads before the cut");
  }

  /** The cases of a cut's combination with their factors. */
  List<CombinationSheet.Weighted> parts(Cut cut) {
    return combinations.parts(cut.instance());
  }

  /** The cuts in their order. */
  List<Cut> cuts() {
    return cuts;
  }

  /** The number of a cut, from 0. */
  int row(Cut cut) {
    return Required.of(rows.get(cut.key()), "A cut");
  }

  /** The place of a cut on its segment. */
  NumberAt place(Cut cut) {
    return places.number(row(cut), "x");
  }

  /** An internal force at a cut. */
  NumberAt force(Cut cut, String symbol) {
    return internal(cut).number(internalRow(cut), symbol);
  }

  /** The table with the internal forces at a cut. */
  ProcedureCells internal(Cut cut) {
    return ofStates
        .filter(all -> all.row(cut).isPresent())
        .map(StateCutSheets::internal)
        .or(() -> summed)
        .orElseThrow();
  }

  /** The row of a cut in that table. */
  int internalRow(Cut cut) {
    return ofStates
        .flatMap(all -> all.row(cut))
        .orElseGet(() -> Required.of(summedRows.get(cut.key()), "A cut"));
  }

  /** The tables of internal forces: by sums over load cases, and of states. */
  List<ProcedureCells> internal() {
    List<ProcedureCells> tables = new ArrayList<>();
    summed.ifPresent(tables::add);
    ofStates.ifPresent(all -> tables.add(all.internal()));
    return tables;
  }
}
