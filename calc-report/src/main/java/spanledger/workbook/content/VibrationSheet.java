package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

  private final Map<String, NumberAt> used = new HashMap<>();
  private Optional<VibrationProof> proof = Optional.empty();

  private VibrationSheet() {}

  static VibrationSheet write(
      LedgerWorkbook workbook,
      Job job,
      Optional<Vibration> vibration,
      List<Verdict> verdicts,
      VibrationProof.Ground ground) {
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
        "Eigenvalues and shapes are solver values. Vibration balance proves that they are a natural"
            + " vibration: at every node stiffness and inertia balance. That no mode is missed"
            + " below the last is the solver's count of eigenvalues (docs/theory/second-order.md),"
            + " not a formula here, as is which mode is the lowest of its kind.");
    List<VibrationMode> judged =
        Stream.of(found.firstOfFloors(), found.firstSideways())
            .flatMap(Optional::stream)
            .distinct()
            .sorted(Comparator.comparingInt(found.modes()::indexOf))
            .toList();
    if (!judged.isEmpty()) {
      written.proof = Optional.of(new VibrationProof(workbook, sheet, found, judged, ground));
    }
    NumberAt none = writeModes(sheet, found);
    written.writeChecks(sheet, job, found, verdicts, ground.figures(), none);
    return written;
  }

  /** The modes in words, and the frequency below which there are no others. */
  private static NumberAt writeModes(LedgerSheet sheet, Vibration found) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (VibrationMode mode : found.modes()) {
      String kind =
          found.isOfFloors(mode)
              ? "of the floors"
              : found.isSideways(mode) ? "of the whole platform" : "neither";
      rows.add(
          List.of(
              LedgerCell.text("mode " + (rows.size() + 1)),
              LedgerCell.text(mode.shape().words()),
              LedgerCell.text(kind),
              LedgerCell.blank()));
    }
    rows.add(
        List.of(
            LedgerCell.text("no others below"),
            LedgerCell.text("the solver's count of eigenvalues"),
            LedgerCell.blank(),
            LedgerCell.solved(found.provedBelow())));
    return sheet
        .add(
            new DataTable(
                "Modes found, lowest first",
                List.of(
                    Column.text("mode", 34),
                    Column.text("how it moves", 70),
                    Column.text("counts as", 22),
                    Column.number(
                            FREQUENCY,
                            "found by search, not proved by formula",
                            Dimension.FREQUENCY)
                        .withUnit("Hz")),
                rows))
        .number(rows.size() - 1, FREQUENCY);
  }

  private void writeChecks(
      LedgerSheet sheet,
      Job job,
      Vibration found,
      List<Verdict> verdicts,
      FigureSheet figures,
      NumberAt none) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> checks = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      boolean judged = verdict.status() == Status.PASSED || verdict.status() == Status.FAILED;
      if (verdict.group() == CheckGroup.VIBRATION && judged) {
        boolean upright = verdict.check().contains("up and down");
        NumberAt frequency =
            (upright ? found.firstOfFloors() : found.firstSideways())
                .map(mode -> proof.orElseThrow().frequency(mode))
                .orElse(none);
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

  /** How much of a limit a check uses; empty if it is not judged. */
  Optional<NumberAt> used(String check) {
    return Optional.ofNullable(used.get(check));
  }

  /** The proof of the frequencies; empty if none is judged. */
  Optional<VibrationProof> proof() {
    return proof;
  }
}
