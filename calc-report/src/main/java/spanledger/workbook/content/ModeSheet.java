package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.stability.CriticalFactor;
import spanledger.stability.ModeShape;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/**
 * The proof of the least critical load factor: moved by the mode and under the factored axial
 * forces, the frame is in balance without any load.
 */
final class ModeSheet {

  static final String NAME = "Critical mode";

  private static final String FORCE = "N_1";

  /**
   * Left over, of forces of the size that shift a node by 1 mm: the search stops when the factor is
   * known to a millionth.
   */
  private static final double SHARE = 1e-5;

  /** A mode as a solution. */
  private record Mode(Frame frame, String name, ModeShape shape) implements Solved {
    @Override
    public int index() {
      return 0;
    }

    @Override
    public double movement(Node node, Freedom freedom) {
      return shape.movement(6 * frame.indexOf(node) + freedom.ordinal());
    }
  }

  private final BalanceSheet balance;
  private final BarTables bars;

  private ModeSheet(BalanceSheet balance, BarTables bars) {
    this.balance = balance;
    this.bars = bars;
  }

  /**
   * Writes the sheet.
   *
   * @param forces the axial force of each segment under the combination, unfactored
   * @return nothing if nodes stay in place when it buckles, or nothing buckles
   */
  static Optional<ModeSheet> write(
      LedgerWorkbook workbook,
      CombinationBehaviour nearest,
      Function<LedgerSheet, Function<Segment, LedgerCell>> forces,
      SegmentSheets segments,
      LoadSumSheet sums,
      NodeSheet nodes,
      SupportRule supports) {
    CriticalFactor critical = nearest.critical().orElseThrow();
    double[] movements = critical.mode().movements();
    if (!critical.buckles() || java.util.Arrays.stream(movements).allMatch(m -> m == 0)) {
      return Optional.empty();
    }
    Frame frame = segments.frame();
    LedgerSheet sheet = workbook.sheet(NAME);
    sheet.title(
        "Critical mode",
        "How the frame buckles under the combination with the least critical load factor, and the"
            + " proof of it.");
    sheet.note(
        "The axial forces of the combination, times the factor, soften the segments. If the frame,"
            + " moved by the mode, is then in balance without any load, the factor is a critical"
            + " one. That there is no smaller one is the solver's count of negative eigenvalues"
            + " (docs/theory/second-order.md), not a formula here.");
    Source found = Source.declared("found by search, proved by the sheet Mode balance");
    CellAddress alpha =
        sheet
            .add(
                new EntryList(
                    "",
                    List.of(
                        Entry.text("combination", nearest.instance().words()),
                        Entry.text("how it buckles", critical.mode().words()),
                        Entry.number(
                                "critical load factor",
                                "α_cr",
                                LedgerCell.solved(critical.factor()),
                                Dimension.NONE)
                            .withSource(found))))
            .address("critical load factor");
    NumberAt factor = new NumberAt(alpha, critical.factor());
    DataCells axial = writeForces(sheet, frame, forces.apply(sheet));
    Mode mode = new Mode(frame, "critical mode", critical.mode());
    SolvedGroup group = new SolvedGroup("mode", List.of(mode));
    MovementSheet moved = MovementSheet.write(workbook, group, frame);
    BarRule rule = new Rule(axial, factor, segments, sums, sheet);
    BarTables bars = new BarTables(group, usual -> sheet, segments, moved, rule);
    double greatest = greatest(frame, mode, bars);
    BalanceSheet balance =
        BalanceSheet.write(
            balanceSheet(workbook, group),
            group,
            frame,
            bars,
            new NoLoads(sums),
            moved,
            nodes,
            supports,
            new BalanceSheet.Tolerance(
                SHARE * greatest,
                SHARE * greatest * 1000,
                Source.declared(
                    "a hundred-thousandth of the greatest force that the mode asks of a segment, as"
                        + " the factor is known to a millionth; moments with an arm of 1 m")));
    return Optional.of(new ModeSheet(balance, bars));
  }

  private static LedgerSheet balanceSheet(LedgerWorkbook workbook, SolvedGroup group) {
    LedgerSheet sheet = workbook.sheet(group.sheet(BalanceSheet.NAME));
    sheet.title(
        "Balance of the critical mode",
        "At every node: what the segments take from it when the mode moves them, less what a"
            + " support gives. No load acts, and nothing may be left over.");
    return sheet;
  }

  private static DataCells writeForces(
      LedgerSheet sheet, Frame frame, Function<Segment, LedgerCell> forces) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      rows.add(List.of(LedgerCell.text(segment.name()), forces.apply(segment)));
    }
    return sheet.add(
        new DataTable(
            "Mean axial forces under the combination, first order",
            List.of(
                Column.text("segment", 34),
                Column.number(FORCE, "tension positive", Dimension.FORCE)),
            rows));
  }

  private static double greatest(Frame frame, Mode mode, BarTables bars) {
    double greatest = 0;
    for (Node node : frame.nodes()) {
      for (Freedom freedom : List.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z)) {
        for (NumberAt taken : bars.takenFrom(mode, node, freedom)) {
          greatest = Math.max(greatest, Math.abs(taken.value()));
        }
      }
    }
    return greatest;
  }

  /** Whether what is left over of forces (row 0) or moments (row 1) is small enough. */
  CellAddress verdict(int row) {
    return balance.verdict(row);
  }

  /** What is left over. */
  NumberAt leftOver(int row) {
    return balance.leftOver(row);
  }

  /** The tables of segments. */
  BarTables bars() {
    return bars;
  }

  /** Nothing acts on the frame when it buckles. */
  private record NoLoads(LoadSumSheet sums) implements SolvedLoads {
    @Override
    public NumberAt sum(Solved solved, Segment segment, String symbol) {
      return sums.number(solved, segment, symbol);
    }

    @Override
    public List<NumberAt> onNode(Solved solved, Node node, Freedom freedom) {
      return List.of();
    }
  }

  /** Joints as they are, factored forces, no loads. */
  private record Rule(
      DataCells axial,
      NumberAt factor,
      SegmentSheets segments,
      LoadSumSheet sums,
      LedgerSheet sheet)
      implements BarRule, BarRule.Loads {

    private static final Source NO_PLAY = Source.declared("a mode is a change from balance");

    @Override
    public InputCell stretchingStiffness(Solved solved, Segment segment, NumberAt stretch) {
      return InputCell.shown(segments.stiffness(segment, "s_a"));
    }

    @Override
    public InputCell stretchPlay(Solved solved, Segment segment, NumberAt stretch) {
      return InputCell.literal(0, NO_PLAY);
    }

    @Override
    public InputCell bendingForce(Solved solved, Segment segment, NumberAt own) {
      return new Sums(sheet.name())
          .plusProduct(factor, axial.number(segment.index(), FORCE))
          .input("critical load factor × axial force");
    }

    @Override
    public InputCell joint(Solved solved, Segment segment, String symbol) {
      return InputCell.inline(segments.stiffness(segment, symbol));
    }

    @Override
    public InputCell jointPlay(Solved solved, Segment segment, String symbol) {
      return InputCell.literal(0, NO_PLAY);
    }

    @Override
    public Loads loads(ProcedureCells stiffness, Function<Solved, Function<Segment, Integer>> row) {
      return this;
    }

    @Override
    public NumberAt moment(Solved solved, Segment segment, String symbol) {
      return sums.number(solved, segment, symbol);
    }

    @Override
    public NumberAt turn(Solved solved, Segment segment, String symbol) {
      // The first row of that sheet holds zeros.
      return sums.number(solved, segment, "m_0" + symbol.substring(symbol.length() - 1));
    }
  }
}
