package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Freedom;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.provenance.Source;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** What lifts, slackens or slips in every state, and whether movements and forces agree with it. */
final class StateHoldSheet {

  private static final String MOVEMENT = "movement";
  private static final String FORCE = "force";
  private static final String PLAY = "play";
  private static final Source GIVEN = Source.declared("gap, slack or slip of the job file");

  /** Rounding of a foot's movement, mm, and force, N. */
  private static final double FOOT = 1e-4;

  /** Rounding of a joint's turn, rad, and moment, N·mm. */
  private static final double TURN = 1e-9;

  private static final double MOMENT = 1e-1;

  private final LedgerSheet sheet;
  private final SegmentSheets segments;
  private final MovementSheet movements;
  private final BalanceSheet balance;
  private final BarTables bars;

  private StateHoldSheet(
      LedgerSheet sheet,
      SegmentSheets segments,
      MovementSheet movements,
      BalanceSheet balance,
      BarTables bars) {
    this.sheet = sheet;
    this.segments = segments;
    this.movements = movements;
    this.balance = balance;
    this.bars = bars;
  }

  static void write(
      LedgerWorkbook workbook,
      List<StateSolved> states,
      SegmentSheets segments,
      MovementSheet movements,
      BalanceSheet balance,
      BarTables bars) {
    LedgerSheet sheet = workbook.sheet("State holds");
    sheet.title(
        "What lifts, slackens or slips",
        "What every foot, one-way member and joint with play does in each state. A foot that bears"
            + " must press up, one that has lifted must be above the ground. A joint in its play"
            + " must turn less than that; one that has taken it up must have turned as far, to the"
            + " side on which it bears.");
    StateHoldSheet holds = new StateHoldSheet(sheet, segments, movements, balance, bars);
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (StateSolved state : states) {
      state.result().holds().forEach(report -> rows.add(holds.row(state, report)));
    }
    if (!rows.isEmpty()) {
      sheet.add(
          new DataTable(
              "",
              List.of(
                  Column.text("state", 12),
                  Column.wrapped("hold", 60),
                  Column.text("what it does", 22),
                  Column.mixed(PLAY, "mm or rad").withWidth(14).withSource(GIVEN),
                  Column.mixed(MOVEMENT, "mm or rad, found by search; of joints by formula")
                      .withWidth(18),
                  Column.mixed(FORCE, "N or N·mm, found by search; of joints by formula")
                      .withWidth(18),
                  Column.text("verdict", 16)),
              rows));
    }
  }

  private List<LedgerCell> row(StateSolved state, HoldReport report) {
    List<LedgerCell> row =
        new ArrayList<>(
            List.of(
                LedgerCell.text(state.name()),
                LedgerCell.text(report.name()),
                LedgerCell.text(report.condition().words()),
                LedgerCell.given(play(report))));
    if (report.where() instanceof HoldReport.Where.OfJoint joint) {
      addJoint(state, report, joint, row);
    } else {
      row.add(LedgerCell.solved(report.movement()));
      row.add(LedgerCell.solved(report.force()));
      row.add(foot(state, report));
    }
    return row;
  }

  private double play(HoldReport report) {
    return play(restraint(report.where()));
  }

  private static double play(Restraint restraint) {
    if (restraint instanceof Restraint.Play play) {
      return play.freePlay();
    }
    return restraint instanceof Restraint.OneWay oneWay ? oneWay.gap() : 0;
  }

  private Restraint restraint(HoldReport.Where where) {
    if (where instanceof HoldReport.Where.OfJoint joint) {
      MemberEnd end = joint.joint() < 2 ? joint.segment().start() : joint.segment().end();
      return joint.joint() % 2 == 0 ? end.aboutY() : end.aboutZ();
    }
    if (where instanceof HoldReport.Where.OfAxis axis) {
      Restraint first = axis.segment().start().axial();
      return first.isLinear() ? axis.segment().end().axial() : first;
    }
    HoldReport.Where.OfSupport at = (HoldReport.Where.OfSupport) where;
    return segments.frame().supports().stream()
        .filter(support -> support.node().name().equals(at.node().name()))
        .findFirst()
        .map(support -> support.restraint(at.freedom()))
        .orElseThrow();
  }

  private void addJoint(
      StateSolved state, HoldReport report, HoldReport.Where.OfJoint joint, List<LedgerCell> row) {
    Segment segment = joint.segment();
    char axis = joint.joint() % 2 == 0 ? 'y' : 'z';
    int end = joint.joint() < 2 ? 1 : 2;
    Sums turn = bars.jointTurn(state, segment, axis, end, sheet.name());
    NumberAt moment = bars.endForce(state, segment, "M_" + axis + end);
    double play = play(report);
    row.add(turn.cell());
    row.add(LedgerCell.linked(moment));
    if (report.condition() == Condition.IN_PLAY) {
      row.add(
          LedgerCell.judged(
              "AND(ABS({"
                  + MOVEMENT
                  + "})<={"
                  + PLAY
                  + "}+"
                  + TURN
                  + ",ABS({"
                  + FORCE
                  + "})<="
                  + MOMENT
                  + ")",
              Math.abs(turn.value()) <= play + TURN && Math.abs(moment.value()) <= MOMENT,
              Outcome.AGREES,
              Outcome.DIFFERS));
      return;
    }
    NumberAt side = bars.endForce(state, segment, "j_" + axis + end);
    String at = side.from(sheet.name());
    boolean agrees =
        turn.value() * Math.signum(side.value()) >= play - TURN
            && moment.value() * Math.signum(side.value()) >= -MOMENT;
    row.add(
        LedgerCell.judged(
            "AND({" + MOVEMENT + "}*SIGN(" + at + ")>={" + PLAY + "}-" + TURN + ",{" + FORCE
                + "}*SIGN(" + at + ")>=-" + MOMENT + ")",
            agrees,
            Outcome.AGREES,
            Outcome.DIFFERS));
  }

  /** A foot that bears must not pull, one in the air must not be in the ground. */
  private LedgerCell foot(StateSolved state, HoldReport report) {
    for (Support support : segments.frame().supports()) {
      Optional<HoldReport> own = state.hold(support, Freedom.SHIFT_Z);
      if (own.isPresent() && own.get().name().equals(report.name())) {
        boolean lifted = state.isLifted(support);
        NumberAt up =
            lifted
                ? movements.number(state, support.node(), Freedom.SHIFT_Z)
                : balance.reaction(state, support.node(), Freedom.SHIFT_Z);
        double gap = lifted ? play(support.restraint(Freedom.SHIFT_Z)) : 0;
        return LedgerCell.judged(
            up.from(sheet.name()) + ">=-" + (gap + FOOT),
            up.value() >= -(gap + FOOT),
            Outcome.AGREES,
            Outcome.DIFFERS);
      }
    }
    return LedgerCell.blank();
  }
}
