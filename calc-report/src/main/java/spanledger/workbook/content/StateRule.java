package spanledger.workbook.content;

import java.util.Optional;
import java.util.function.Function;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.provenance.Source;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** How segments and supports hold in a state: one-way parts live, joints with play by status. */
final class StateRule implements BarRule, SupportRule {

  private static final Source NONE = Source.declared("none");
  private static final Source GAP = Source.declared("gap or slip of the job file");
  private static final Source STATUS = Source.declared("status of the joint, sheet State holds");
  private static final Source FIRST = Source.declared("0 in first order");

  private final SegmentSheets segments;
  private final NodeSheet nodes;
  private final StateLoadSheet loads;
  private final String sheet;

  /**
   * @param sheet the sheet on which axial forces are worked out
   */
  StateRule(SegmentSheets segments, NodeSheet nodes, StateLoadSheet loads, String sheet) {
    this.segments = segments;
    this.nodes = nodes;
    this.loads = loads;
    this.sheet = sheet;
  }

  @Override
  public InputCell stretchingStiffness(Solved solved, Segment segment, NumberAt stretch) {
    NumberAt bearing = segments.stiffness(segment, "s_a");
    Restraint hold = along(segment);
    String e = stretch.from(sheet);
    if (hold instanceof Restraint.OneWay oneWay) {
      int sign = oneWay.against().sign();
      boolean bears = sign * stretch.value() > oneWay.gap();
      return InputCell.live(
          "IF("
              + (sign > 0 ? "" : "-")
              + e
              + ">"
              + oneWay.gap()
              + ","
              + bearing.from(sheet)
              + ",0)",
          bears ? bearing.value() : 0,
          "0 while it is slack");
    }
    if (hold instanceof Restraint.Play play) {
      boolean bears = Math.abs(stretch.value()) > play.freePlay();
      return InputCell.live(
          "IF(ABS(" + e + ")>" + play.freePlay() + "," + bearing.from(sheet) + ",0)",
          bears ? bearing.value() : 0,
          "0 while it is in its free play");
    }
    return InputCell.shown(bearing);
  }

  @Override
  public InputCell stretchPlay(Solved solved, Segment segment, NumberAt stretch) {
    Restraint hold = along(segment);
    if (hold instanceof Restraint.OneWay oneWay) {
      return InputCell.literal(oneWay.against().sign() * oneWay.gap(), GAP);
    }
    if (hold instanceof Restraint.Play play) {
      String e = stretch.from(sheet);
      return InputCell.live(
          "IF(" + e + ">0," + play.freePlay() + ",-" + play.freePlay() + ")",
          stretch.value() > 0 ? play.freePlay() : -play.freePlay(),
          "the play, on the side it moves to");
    }
    return InputCell.literal(0, NONE);
  }

  private static Restraint along(Segment segment) {
    Restraint first = segment.start().axial();
    return first.isLinear() ? segment.end().axial() : first;
  }

  @Override
  public InputCell bendingForce(Solved solved, Segment segment, NumberAt own) {
    return ((StateSolved) solved).result().isSecondOrder()
        ? InputCell.shown(own)
        : InputCell.literal(0, FIRST);
  }

  @Override
  public InputCell joint(Solved solved, Segment segment, String symbol) {
    Optional<HoldReport> report = report(solved, segment, symbol);
    boolean loose = report.map(r -> r.condition() == Condition.IN_PLAY).orElse(false);
    return loose
        ? InputCell.literal(0, STATUS)
        : InputCell.shown(segments.stiffness(segment, symbol));
  }

  @Override
  public InputCell jointPlay(Solved solved, Segment segment, String symbol) {
    Optional<HoldReport> report = report(solved, segment, symbol);
    if (report.isEmpty() || report.get().condition() == Condition.IN_PLAY) {
      return InputCell.literal(0, NONE);
    }
    return InputCell.literal(report.get().origin(), STATUS);
  }

  private static Optional<HoldReport> report(Solved solved, Segment segment, String symbol) {
    return ((StateSolved) solved)
        .joint(
            segment, symbol.charAt(symbol.length() - 1) - '0', symbol.charAt(symbol.length() - 2));
  }

  @Override
  public Loads loads(ProcedureCells stiffness, Function<Solved, Function<Segment, Integer>> row) {
    loads.writeTurns(stiffness, row);
    return loads;
  }

  @Override
  public Restraint inEffect(Solved solved, Support support, Freedom freedom) {
    Restraint restraint = support.restraint(freedom);
    boolean lifted = ((StateSolved) solved).isLifted(support);
    if (lifted && (support.freeWhenLifted() || !restraint.isLinear())) {
      return Restraint.FREE;
    }
    return restraint.engaged();
  }

  @Override
  public Optional<NumberAt> gap(Solved solved, Support support, Freedom freedom) {
    int index = segments.frame().supports().indexOf(support);
    return support.restraint(freedom) instanceof Restraint.OneWay oneWay && oneWay.gap() != 0
        ? Optional.of(nodes.gap(index))
        : Optional.empty();
  }
}
