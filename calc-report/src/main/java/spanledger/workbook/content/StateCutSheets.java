package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spanledger.action.SegmentLoad;
import spanledger.analysis.BeamColumnCut;
import spanledger.analysis.BeamColumnCutLoad;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * Cuts under combinations that were solved as states: what the loads do at the cut under axial
 * force, and the internal forces with all of it.
 */
final class StateCutSheets {

  /** A cut with its number and the cell of its place. */
  record Numbered(Cut cut, int number, NumberAt place, StateSolved state) {
    Segment segment() {
      return cut.station().segment();
    }
  }

  /** A load on the cut segment along one of the segment's axes. */
  private record Acting(Numbered at, LoadCells load, NumberAt factor, int axis) {}

  private final StateSheets states;
  private final CombinationSheet combinations;
  private final LoadSheet loads;
  private final SegmentSheets segments;
  private final CutSheets cuts;
  private final Map<String, List<NumberAt>> byLoads = new HashMap<>();
  private final Map<String, Integer> rows = new HashMap<>();
  private final ProcedureCells internal;
  private @Nullable LedgerSheet loadSheet;

  StateCutSheets(
      LedgerWorkbook workbook,
      List<Numbered> numbered,
      StateSheets states,
      CombinationSheet combinations,
      LoadSheet loads,
      SegmentSheets segments,
      CutSheets cuts) {
    this.states = states;
    this.combinations = combinations;
    this.loads = loads;
    this.segments = segments;
    this.cuts = cuts;
    writeLoads(
        workbook, numbered, SegmentLoad.Distributed.class, BeamColumnCutLoad.DISTRIBUTED.compile());
    writeLoads(workbook, numbered, SegmentLoad.Point.class, BeamColumnCutLoad.POINT.compile());
    internal = writeInternal(workbook, numbered);
  }

  private LedgerSheet loadSheet(LedgerWorkbook workbook) {
    LedgerSheet sheet = loadSheet;
    if (sheet == null) {
      sheet = workbook.sheet(SheetNames.STATE_CUT_LOADS);
      sheet.title(
          "Loads at the cuts of states",
          "The moment that each load causes at the cut on simple bearings, enlarged by the axial"
              + " force, and its change along the segment.");
      loadSheet = sheet;
    }
    return sheet;
  }

  private void writeLoads(
      LedgerWorkbook workbook,
      List<Numbered> numbered,
      Class<? extends SegmentLoad> kind,
      CompiledProcedure procedure) {
    List<Acting> all = new ArrayList<>();
    for (Numbered at : numbered) {
      for (CombinationSheet.Weighted part : combinations.parts(at.cut().instance())) {
        for (SegmentLoad load : part.kept().loads().segmentLoads()) {
          if (kind.isInstance(load) && load.segment().index() == at.segment().index()) {
            LoadCells own = loads.cells(load);
            for (int axis = 1; axis <= 2; axis++) {
              if (own.direction(axis).value() != 0) {
                all.add(new Acting(at, own, part.factor(), axis));
              }
            }
          }
        }
      }
    }
    if (all.isEmpty()) {
      return;
    }
    LedgerSheet sheet = loadSheet(workbook);
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (Acting one : all) {
      table.add(
          new ProcedureTable.Row(
              List.of(
                  Integer.toString(one.at().number()),
                  one.at().state().name(),
                  one.axis() == 1 ? "y" : "z"),
              Inputs.of(procedure, symbol -> loadInput(one, symbol, sheet.name()))));
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(
                    new ProcedureTable.Label("cut", 6),
                    new ProcedureTable.Label("state", 12),
                    new ProcedureTable.Label("along", 8)),
                table));
    for (int i = 0; i < all.size(); i++) {
      String axis = all.get(i).axis() == 1 ? "y" : "z";
      for (String effect : List.of("h", "h'")) {
        byLoads
            .computeIfAbsent(
                all.get(i).at().cut().key() + effect + "_" + axis, k -> new ArrayList<>())
            .add(cells.number(i, effect));
      }
    }
  }

  private InputCell loadInput(Acting one, String symbol, String sheet) {
    return switch (symbol) {
      case "x" -> InputCell.inline(one.at().place());
      case "L" -> InputCell.inline(segments.geometry(one.at().segment(), symbol));
      // Loads along y bend about z.
      case "κ" ->
          InputCell.shown(
              states
                  .bars()
                  .stiffness(
                      one.at().state(), one.at().segment(), one.axis() == 1 ? "κ_z" : "κ_y"));
      case "P", "q_1", "q_2" ->
          new Sums(sheet)
              .plusProduct(
                  one.factor(), one.load().direction(one.axis()), one.load().number(symbol))
              .input("factor × part along the axis × load");
      default -> InputCell.inline(one.load().number(symbol));
    };
  }

  private ProcedureCells writeInternal(LedgerWorkbook workbook, List<Numbered> numbered) {
    LedgerSheet sheet = workbook.sheet(SheetNames.STATE_CUTS);
    sheet.title(
        "Internal forces at the cuts of states",
        "Of combinations that were solved as states, from the end forces of the state; enlarged"
            + " between the ends as well. Signs are those of the sheet Cuts.");
    CompiledProcedure procedure = BeamColumnCut.PROCEDURE.compile();
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (Numbered at : numbered) {
      rows.put(at.cut().key(), table.size());
      table.add(
          new ProcedureTable.Row(
              List.of(
                  Integer.toString(at.number()),
                  at.segment().name(),
                  at.state().name(),
                  at.cut().instance().words()),
              Inputs.of(procedure, symbol -> input(at, symbol, sheet.name()))));
    }
    return sheet.add(
        new ProcedureTable(
            "",
            procedure,
            List.of(
                new ProcedureTable.Label("cut", 6),
                new ProcedureTable.Label("segment", 22),
                new ProcedureTable.Label("state", 12),
                new ProcedureTable.Label("combination", 50)),
            table));
  }

  private InputCell input(Numbered at, String symbol, String sheet) {
    if (symbol.equals("x")) {
      return InputCell.shown(at.place());
    } else if (symbol.equals("L")) {
      return InputCell.shown(segments.geometry(at.segment(), symbol));
    } else if (symbol.startsWith("h")) {
      Sums sum = new Sums(sheet);
      byLoads.getOrDefault(at.cut().key() + symbol, List.of()).forEach(sum::plus);
      return sum.input("sum over the loads on the segment");
    } else if (symbol.startsWith("g_")) {
      return cuts.before(at.cut(), symbol, sheet);
    } else if (symbol.startsWith("κ") || symbol.startsWith("β")) {
      return InputCell.shown(states.bars().stiffness(at.state(), at.segment(), symbol));
    }
    return InputCell.shown(states.bars().endForce(at.state(), at.segment(), symbol));
  }

  /** The row of a cut, if it is one of a state. */
  Optional<Integer> row(Cut cut) {
    return Optional.ofNullable(rows.get(cut.key()));
  }

  /** The internal forces. */
  ProcedureCells internal() {
    return internal;
  }
}
