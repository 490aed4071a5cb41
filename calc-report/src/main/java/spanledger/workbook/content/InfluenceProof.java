package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spanledger.analysis.BasicDeformations;
import spanledger.envelope.Influence;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * The proof of one influence line: the frame, moved by a unit of what works on the effect, is in
 * balance.
 */
final class InfluenceProof {

  /** Left over, of the greatest force at a node: rounding of stiffnesses many orders apart. */
  private static final double SHARE = 1e-8;

  private static final String VALUE = "value";

  /** The moved frame. */
  private record Moved(Frame frame, String name, Influence influence) implements Solved {
    @Override
    public int index() {
      return 0;
    }

    @Override
    public double movement(Node node, Freedom freedom) {
      return influence.movement(node, freedom);
    }
  }

  private final LedgerSheet sheet;
  private final SegmentSheets segments;
  private final InfluencePick pick;
  private final Moved moved;
  private final DataCells units;
  private final Optional<NumberAt> place;
  private final MovementSheet movements;
  private final EndForceSheets forces;
  private final BalanceSheet balance;

  /**
   * Where the tables stand.
   *
   * @param workings forces of segments and ordinates
   * @param movements what the solver gives
   * @param balance what proves it
   */
  record Sheets(LedgerSheet workings, LedgerSheet movements, LedgerSheet balance) {}

  private InfluenceProof(
      Sheets sheets, InfluencePick pick, int number, SegmentSheets segments, NodeSheet nodes) {
    this.sheet = sheets.workings();
    this.segments = segments;
    this.pick = pick;
    Frame frame = segments.frame();
    moved = new Moved(frame, "line " + number, pick.influence());
    String words = "Line " + number + ": " + pick.words();
    units = writeUnits(words);
    place =
        pick.effect() instanceof InfluencePick.Reaction ? Optional.empty() : Optional.of(unit(2));
    List<NumberAt> weights = place.isPresent() ? writeWeights() : List.of();
    SolvedGroup group = new SolvedGroup("line", List.of(moved));
    SolvedLoads loads = new Loads(this, weights);
    movements = MovementSheet.write(sheets.movements(), words, group, frame);
    forces = EndForceSheets.write(sheet, group, segments, loads, movements);
    double greatest = greatest(frame);
    sheets.balance().heading(words);
    balance =
        BalanceSheet.write(
            sheets.balance(),
            group,
            frame,
            forces,
            loads,
            movements,
            nodes,
            supports(),
            new BalanceSheet.Tolerance(
                SHARE * greatest,
                SHARE * greatest * 1000,
                Source.declared(
                    "a hundred-millionth of the greatest force at a node, for rounding; moments"
                        + " with an arm of 1 m")));
  }

  static InfluenceProof write(
      Sheets sheets, InfluencePick pick, int number, SegmentSheets segments, NodeSheet nodes) {
    return new InfluenceProof(sheets, pick, number, segments, nodes);
  }

  private DataCells writeUnits(String title) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    rows.add(row("nothing", LedgerCell.given(0), "", "no load, no movement"));
    rows.add(row("unit", LedgerCell.given(1), "", "unit movement, unit load"));
    station()
        .ifPresent(
            s ->
                rows.add(
                    row(
                        "place of the cut",
                        LedgerCell.given(s.x()),
                        "mm",
                        "place found by search")));
    return sheet.add(
        new DataTable(
            title,
            List.of(
                Column.text("what", 34),
                Column.mixed(VALUE, ""),
                Column.text("unit", 18),
                Column.text(DataTable.SOURCE_HEADING, 34)),
            rows));
  }

  private static List<LedgerCell> row(String words, LedgerCell cell, String unit, String source) {
    return List.of(LedgerCell.text(words), cell, LedgerCell.text(unit), LedgerCell.text(source));
  }

  /** The cut, if the effect has one. */
  Optional<Station> station() {
    if (pick.effect() instanceof InfluencePick.Force force) {
      return Optional.of(force.station());
    }
    return pick.effect() instanceof InfluencePick.Movement movement
        ? Optional.of(movement.station())
        : Optional.empty();
  }

  /** The cell of 0 (row 0), of 1 (row 1) or of the place of the cut (row 2). */
  NumberAt unit(int row) {
    return units.number(row, VALUE);
  }

  /** The cell with the place of the cut. */
  NumberAt place() {
    return place.orElseThrow(() -> new IllegalStateException("A reaction has no cut."));
  }

  /** What a unit of each movement of the cut segment's ends adds to the effect. */
  private List<NumberAt> writeWeights() {
    Segment segment = station().orElseThrow().segment();
    CompiledProcedure procedure = BasicDeformations.PROCEDURE.compile();
    List<String> symbols = new ArrayList<>();
    for (String end : List.of("1", "2")) {
      for (String movement : MovementSheet.SYMBOLS) {
        symbols.add(movement + end);
      }
    }
    DataCells given = unitMovements(symbols);
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < symbols.size(); i++) {
      int row = i;
      rows.add(
          new ProcedureTable.Row(
              List.of(symbols.get(i) + " = 1"),
              Inputs.of(
                  procedure,
                  symbol ->
                      InputCell.inline(
                          symbols.contains(symbol)
                              ? given.number(row, symbol)
                              : segments.geometry(segment, symbol)))));
    }
    ProcedureCells deformations =
        sheet.add(
            new ProcedureTable(
                "Unit movements of the ends of " + segment.name(),
                procedure,
                List.of(new ProcedureTable.Label("what is done", 34)),
                rows));
    Function<String, InputCell> nothing = symbol -> InputCell.inline(unit(0));
    List<CutEffect.Done> done = new ArrayList<>();
    for (int i = 0; i < symbols.size(); i++) {
      int row = i;
      done.add(
          new CutEffect.Done(
              symbols.get(i) + " = 1",
              symbol -> InputCell.inline(deformations.number(row, symbol)),
              symbol -> InputCell.inline(given.number(row, symbol)),
              nothing,
              nothing));
    }
    return new CutEffect(sheet, segments, place()).write(pick.effect(), done);
  }

  private DataCells unitMovements(List<String> symbols) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("what is done", 34)));
    for (String symbol : symbols) {
      columns.add(
          Column.number(symbol, "", Dimension.NONE).withSource(Source.derived("Unit movement")));
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (String own : symbols) {
      List<LedgerCell> row = new ArrayList<>(List.of(LedgerCell.text(own + " = 1")));
      symbols.forEach(symbol -> row.add(LedgerCell.given(symbol.equals(own) ? 1 : 0)));
      rows.add(row);
    }
    return sheet.add(new DataTable("Unit movements", columns, rows));
  }

  /** The effects of unit movements, as loads on the ends of the cut segment. */
  private record Loads(InfluenceProof proof, List<NumberAt> weights) implements SolvedLoads {
    @Override
    public NumberAt sum(Solved solved, Segment segment, String symbol) {
      return proof.unit(0);
    }

    @Override
    public List<NumberAt> onNode(Solved solved, Node node, Freedom freedom) {
      List<NumberAt> loads = new ArrayList<>();
      proof
          .station()
          .ifPresent(
              station -> {
                for (int end = 0; end < 2; end++) {
                  Node at = end == 0 ? station.segment().first() : station.segment().second();
                  NumberAt weight = weights.get(6 * end + freedom.ordinal());
                  if (at.name().equals(node.name()) && weight.value() != 0) {
                    loads.add(weight);
                  }
                }
              });
      return loads;
    }
  }

  /** Supports as they are, but the one whose reaction is looked at has gone by -1. */
  private SupportRule supports() {
    if (!(pick.effect() instanceof InfluencePick.Reaction reaction)) {
      return SupportRule.LINEAR;
    }
    return new SupportRule() {
      @Override
      public Restraint inEffect(Solved solved, Support support, Freedom freedom) {
        return support.restraint(freedom).engaged();
      }

      @Override
      public Optional<NumberAt> gap(Solved solved, Support support, Freedom freedom) {
        boolean gone =
            freedom == reaction.freedom()
                && support.node().name().equals(reaction.support().node().name());
        return gone ? Optional.of(unit(1)) : Optional.empty();
      }
    };
  }

  private double greatest(Frame frame) {
    double greatest = 0;
    for (Node node : frame.nodes()) {
      for (Freedom freedom : List.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z)) {
        for (NumberAt taken : forces.takenFrom(moved, node, freedom)) {
          greatest = Math.max(greatest, Math.abs(taken.value()));
        }
      }
    }
    return greatest;
  }

  /** An end force of a segment of the moved frame. */
  NumberAt endForce(Segment segment, String symbol) {
    return forces.endForce(moved, segment, symbol);
  }

  /** A movement of a node of the moved frame. */
  NumberAt movement(Node node, Freedom freedom) {
    return movements.number(moved, node, freedom);
  }

  /** Whether what is left over of forces (row 0), moments (1) or held movements (2) is rounding. */
  CellAddress verdict(int row) {
    return balance.verdict(row);
  }

  private static final Map<String, Freedom> FREEDOMS = freedoms();

  private static Map<String, Freedom> freedoms() {
    Map<String, Freedom> all = new HashMap<>();
    for (Freedom freedom : Freedom.values()) {
      all.put(MovementSheet.SYMBOLS[freedom.ordinal()], freedom);
    }
    return Map.copyOf(all);
  }

  /** The freedom of a movement's symbol, for example u_X1; empty if it is no movement. */
  static Optional<Freedom> freedom(String symbol) {
    return Optional.ofNullable(FREEDOMS.get(symbol.substring(0, symbol.length() - 1)));
  }
}
