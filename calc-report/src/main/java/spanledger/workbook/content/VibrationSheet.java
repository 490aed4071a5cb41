package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.RuleSet;
import spanledger.job.Job;
import spanledger.quantity.Dimension;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.vibration.Vibration;
import spanledger.vibration.VibrationMode;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** The natural frequencies, and those that the checks use against their limits. */
final class VibrationSheet {

  private static final String FREQUENCY = "f";
  private static final String USED = "utilisation";

  /** What is less of a whole is only the rounding of the solver. */
  private static final double LEAST_SHARE = 1e-9;

  private final Map<String, NumberAt> used = new HashMap<>();

  private VibrationSheet() {}

  static VibrationSheet write(
      LedgerWorkbook workbook,
      Job job,
      Optional<Vibration> vibration,
      List<Verdict> verdicts,
      FigureSheet figures) {
    VibrationSheet written = new VibrationSheet();
    if (vibration.isEmpty()) {
      return written;
    }
    Vibration found = vibration.get();
    LedgerSheet sheet = workbook.sheet(SheetNames.VIBRATION);
    sheet.title(
        "Vibration",
        "Natural frequencies with the permanent loads and a share of the floor loads as mass; feet"
            + " and ties bear, play is taken up, axial forces do not soften.");
    sheet.note(
        "Frequencies are solver values: no formula in this workbook proves them. That no mode is"
            + " missed below the last line is the solver's count of eigenvalues"
            + " (docs/theory/second-order.md).");
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (VibrationMode mode : found.modes()) {
      rows.add(
          List.of(
              LedgerCell.text((rows.size() + 1) + ": " + mode.shape().words()),
              LedgerCell.solved(mode.frequency()),
              share(mode.shareX()),
              share(mode.shareY()),
              share(mode.shareZ()),
              share(mode.floorShare())));
    }
    rows.add(
        List.of(
            LedgerCell.text("no mode below this frequency but those above"),
            LedgerCell.solved(found.provedBelow()),
            LedgerCell.blank(),
            LedgerCell.blank(),
            LedgerCell.blank(),
            LedgerCell.blank()));
    DataCells modes = sheet.add(new DataTable("Modes", columns(), rows));
    written.writeChecks(sheet, job, found, verdicts, figures, modes);
    return written;
  }

  private static List<Column> columns() {
    String shares = "share of the mass that moves along ";
    return List.of(
        Column.text("mode: how it moves", 70),
        Column.number(FREQUENCY, "frequency, found by search", Dimension.FREQUENCY).withUnit("Hz"),
        Column.number("m_X", shares + "X, found by search", Dimension.NONE),
        Column.number("m_Y", shares + "Y, found by search", Dimension.NONE),
        Column.number("m_Z", shares + "Z, found by search", Dimension.NONE),
        Column.number(
            "e_floor",
            "share of the energy of floors up and down, found by search",
            Dimension.NONE));
  }

  private static LedgerCell share(double share) {
    return LedgerCell.solved(Math.abs(share) < LEAST_SHARE ? 0 : share);
  }

  private void writeChecks(
      LedgerSheet sheet,
      Job job,
      Vibration found,
      List<Verdict> verdicts,
      FigureSheet figures,
      DataCells modes) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> checks = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      boolean judged = verdict.status() == Status.PASSED || verdict.status() == Status.FAILED;
      if (verdict.group() == CheckGroup.VIBRATION && judged) {
        NumberAt frequency = modes.number(row(found, verdict.capacity()), FREQUENCY);
        boolean upright = verdict.check().contains("up and down");
        NumberAt limit =
            figures.number(upright ? RuleSet.VERTICAL_FREQUENCY : RuleSet.LATERAL_FREQUENCY);
        checks.add(verdict.check());
        rows.add(
            List.of(
                LedgerCell.text(verdict.check()),
                LedgerCell.linked(frequency),
                LedgerCell.linked(limit),
                LedgerCell.live(
                    limit.from(sheet.name()) + "/" + frequency.from(sheet.name()),
                    limit.value() / frequency.value())));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Against the limits of rule set " + job.rules().id(),
                List.of(
                    Column.text("check", 40),
                    Column.number("frequency", "", Dimension.FREQUENCY).withUnit("Hz"),
                    Column.number("limit", "at least", Dimension.FREQUENCY).withUnit("Hz"),
                    Column.number(USED, "limit per frequency", Dimension.NONE)),
                rows));
    for (int i = 0; i < checks.size(); i++) {
      used.put(checks.get(i), cells.number(i, USED));
    }
  }

  /** The row of the mode with a frequency; the last one if no mode has it. */
  private static int row(Vibration found, double frequency) {
    for (int i = 0; i < found.modes().size(); i++) {
      if (found.modes().get(i).frequency() == frequency) {
        return i;
      }
    }
    return found.modes().size();
  }

  /** How much of a limit a check uses; empty if it is not judged. */
  Optional<NumberAt> used(String check) {
    return Optional.ofNullable(used.get(check));
  }
}
