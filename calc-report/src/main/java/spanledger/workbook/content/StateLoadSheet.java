package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spanledger.action.SegmentLoad;
import spanledger.analysis.BeamColumnLoad;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
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

/** The loads of states: sums over the load cases with their factors, and the turns they cause. */
final class StateLoadSheet implements BarRule.Loads, SolvedLoads {

  private static final List<String> TURNS = List.of("t_1y", "t_2y", "t_1z", "t_2z");
  private static final String[] NODAL = {"F_X", "F_Y", "F_Z", "M_X", "M_Y", "M_Z"};
  private static final Source NO_LOAD = Source.declared("0 in the first row: no load");

  /** A load of a state on a segment along one of the segment's axes. */
  private record Acting(
      StateSolved state, Segment segment, SegmentLoad load, NumberAt factor, int axis) {}

  private final List<StateSolved> states;
  private final Frame frame;
  private final SegmentSheets segments;
  private final CombinationSheet combinations;
  private final LoadSheet loads;
  private final LoadSumSheet sums;
  private final LedgerSheet sheet;
  private final Map<String, Integer> rows = new HashMap<>();
  private final Map<String, Integer> nodeRows = new HashMap<>();
  private final DataCells moments;
  private final List<DataCells> onNodes = new ArrayList<>();
  private final List<DataCells> turns = new ArrayList<>();

  StateLoadSheet(
      LedgerWorkbook workbook,
      List<StateSolved> states,
      SegmentSheets segments,
      CombinationSheet combinations,
      LoadSheet loads,
      LoadSumSheet sums,
      NodalLoadTable nodal) {
    this.states = states;
    this.frame = segments.frame();
    this.segments = segments;
    this.combinations = combinations;
    this.loads = loads;
    this.sums = sums;
    sheet = workbook.sheet("State loads");
    sheet.title(
        "Loads of the states",
        "Sums over the load cases of each combination, each with its factor, and what they turn the"
            + " ends of the segments by under axial force.");
    moments = writeMoments();
    writeNodal(nodal);
  }

  private DataCells writeMoments() {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("state", 12), Column.text("segment", 22)));
    for (String symbol : LoadSumSheet.SYMBOLS) {
      columns.add(
          Column.number(symbol, "", Dimension.whole(symbol.charAt(2) - '0', 1, 0, 0))
              .withSource(NO_LOAD));
    }
    List<List<LedgerCell>> table = new ArrayList<>();
    List<LedgerCell> none =
        new ArrayList<>(List.of(LedgerCell.text("any other"), LedgerCell.text("no load")));
    LoadSumSheet.SYMBOLS.forEach(s -> none.add(LedgerCell.given(0)));
    table.add(none);
    for (StateSolved state : states) {
      for (Segment segment : frame.segments()) {
        List<CombinationSheet.Weighted> acting = acting(state, segment);
        if (!acting.isEmpty()) {
          rows.put(key(state, segment), table.size());
          List<LedgerCell> row =
              new ArrayList<>(
                  List.of(LedgerCell.text(state.name()), LedgerCell.text(segment.name())));
          for (String symbol : LoadSumSheet.SYMBOLS) {
            Sums sum = new Sums(sheet.name());
            acting.forEach(
                p -> sum.plusProduct(p.factor(), sums.number(p.kept(), segment, symbol)));
            row.add(sum.cell());
          }
          table.add(row);
        }
      }
    }
    return sheet.add(new DataTable("Moments of the loads", columns, table));
  }

  private List<CombinationSheet.Weighted> acting(StateSolved state, Segment segment) {
    return combinations.parts(state.combination().instance()).stream()
        .filter(p -> sums.isLoaded(p.kept(), segment))
        .toList();
  }

  private void writeNodal(NodalLoadTable nodal) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("state", 12), Column.text("node", 22)));
    for (Freedom freedom : Freedom.values()) {
      columns.add(
          Column.number(
              NODAL[freedom.ordinal()],
              freedom.words(),
              freedom.isShift() ? Dimension.FORCE : Dimension.MOMENT));
    }
    List<List<LedgerCell>> table = new ArrayList<>();
    for (StateSolved state : states) {
      for (Node node : frame.nodes()) {
        List<LedgerCell> row =
            new ArrayList<>(List.of(LedgerCell.text(state.name()), LedgerCell.text(node.name())));
        boolean loaded = false;
        for (Freedom freedom : Freedom.values()) {
          Sums sum = new Sums(sheet.name());
          for (CombinationSheet.Weighted part :
              combinations.parts(state.combination().instance())) {
            nodal
                .on(part.kept(), node, freedom)
                .forEach(load -> sum.plusProduct(part.factor(), load));
          }
          loaded |= !sum.isEmpty();
          row.add(sum.cell());
        }
        if (loaded) {
          nodeRows.put(state.index() + "/" + node.name(), table.size());
          table.add(row);
        }
      }
    }
    if (!table.isEmpty()) {
      onNodes.add(sheet.add(new DataTable("Loads on nodes", columns, table)));
    }
  }

  /** Writes the end turns of all loads; they depend on the axial forces. */
  void writeTurns(ProcedureCells stiffness, Function<Solved, Function<Segment, Integer>> row) {
    Map<String, List<NumberAt[]>> found = new HashMap<>();
    write(
        "Distributed loads",
        SegmentLoad.Distributed.class,
        BeamColumnLoad.DISTRIBUTED.compile(),
        stiffness,
        row,
        found);
    write(
        "Point loads",
        SegmentLoad.Point.class,
        BeamColumnLoad.POINT.compile(),
        stiffness,
        row,
        found);
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("state", 12), Column.text("segment", 22)));
    TURNS.forEach(t -> columns.add(Column.number(t, "", Dimension.FORCE).withSource(NO_LOAD)));
    List<List<LedgerCell>> table = new ArrayList<>();
    List<LedgerCell> none =
        new ArrayList<>(List.of(LedgerCell.text("any other"), LedgerCell.text("no load")));
    TURNS.forEach(t -> none.add(LedgerCell.given(0)));
    table.add(none);
    List<String> keys = new ArrayList<>(rows.keySet());
    keys.sort(java.util.Comparator.comparingInt(k -> rows.getOrDefault(k, 0)));
    for (String key : keys) {
      List<LedgerCell> line = new ArrayList<>();
      line.add(LedgerCell.text(states.get(Integer.parseInt(key.split("/", -1)[0])).name()));
      line.add(
          LedgerCell.text(frame.segments().get(Integer.parseInt(key.split("/", -1)[1])).name()));
      for (int axis = 1; axis <= 2; axis++) {
        Sums first = new Sums(sheet.name());
        Sums second = new Sums(sheet.name());
        for (NumberAt[] both : found.getOrDefault(key + "/" + axis, List.of())) {
          first.plus(both[0]);
          second.plus(both[1]);
        }
        line.add(first.cell());
        line.add(second.cell());
      }
      table.add(line);
    }
    turns.add(sheet.add(new DataTable("End turns, summed up", columns, table)));
  }

  private void write(
      String title,
      Class<? extends SegmentLoad> kind,
      CompiledProcedure procedure,
      ProcedureCells stiffness,
      Function<Solved, Function<Segment, Integer>> row,
      Map<String, List<NumberAt[]>> found) {
    List<Acting> all = new ArrayList<>();
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (StateSolved state : states) {
      for (CombinationSheet.Weighted part : combinations.parts(state.combination().instance())) {
        for (SegmentLoad load : part.kept().loads().segmentLoads()) {
          for (int axis = 1; axis <= 2 && kind.isInstance(load); axis++) {
            if (loads.cells(load).direction(axis).value() != 0) {
              all.add(new Acting(state, load.segment(), load, part.factor(), axis));
            }
          }
        }
      }
    }
    for (Acting one : all) {
      int at = row.apply(one.state()).apply(one.segment());
      table.add(
          new ProcedureTable.Row(
              List.of(one.state().name(), one.segment().name(), one.axis() == 1 ? "y" : "z"),
              Inputs.of(procedure, symbol -> input(one, symbol, stiffness, at))));
    }
    if (table.isEmpty()) {
      return;
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                title,
                procedure,
                List.of(
                    new ProcedureTable.Label("state", 12),
                    new ProcedureTable.Label("segment", 22),
                    new ProcedureTable.Label("along", 8)),
                table));
    for (int i = 0; i < all.size(); i++) {
      Acting one = all.get(i);
      found
          .computeIfAbsent(
              key(one.state(), one.segment()) + "/" + one.axis(), k -> new ArrayList<>())
          .add(new NumberAt[] {cells.number(i, "t_1"), cells.number(i, "t_2")});
    }
  }

  private InputCell input(Acting one, String symbol, ProcedureCells stiffness, int at) {
    LoadCells own = loads.cells(one.load());
    return switch (symbol) {
      case "L" -> InputCell.shown(segments.geometry(one.segment(), symbol));
      // Loads along y bend about z.
      case "κ" -> InputCell.shown(stiffness.number(at, one.axis() == 1 ? "κ_z" : "κ_y"));
      case "P", "q_1", "q_2" ->
          new Sums(sheet.name())
              .plusProduct(one.factor(), own.direction(one.axis()), own.number(symbol))
              .input("factor × part along the axis × load");
      default -> InputCell.shown(own.number(symbol));
    };
  }

  private static String key(Solved state, Segment segment) {
    return state.index() + "/" + segment.index();
  }

  @Override
  public NumberAt moment(Solved solved, Segment segment, String symbol) {
    return moments.number(rows.getOrDefault(key(solved, segment), 0), symbol);
  }

  @Override
  public NumberAt turn(Solved solved, Segment segment, String symbol) {
    // Rows of both tables are in the same order.
    return turns.get(0).number(rows.getOrDefault(key(solved, segment), 0), symbol);
  }

  @Override
  public NumberAt sum(Solved solved, Segment segment, String symbol) {
    return moment(solved, segment, symbol);
  }

  @Override
  public List<NumberAt> onNode(Solved solved, Node node, Freedom freedom) {
    Integer row = nodeRows.get(solved.index() + "/" + node.name());
    return row == null ? List.of() : List.of(onNodes.get(0).number(row, NODAL[freedom.ordinal()]));
  }
}
