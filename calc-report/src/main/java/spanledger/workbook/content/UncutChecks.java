package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.quantity.Dimension;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** The tables of the summary for checks that have no cut: of the frame, decks, geometry. */
final class UncutChecks {

  private static final String USED = SummarySheet.USED;

  private final LedgerSheet sheet;

  UncutChecks(LedgerSheet sheet) {
    this.sheet = sheet;
  }

  void deck(List<DeckSheet.Judged> deck) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (DeckSheet.Judged one : deck) {
      rows.add(
          judged(
              one.finding().check(),
              one.finding().use().subject(),
              one.used(),
              one.finding().remark()));
    }
    add(CheckGroup.DECK.words(), "demand per capacity", Column.wrapped("remark", 88), rows);
  }

  void geometry(List<GeometrySheet.Judged> geometry) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (GeometrySheet.Judged one : geometry) {
      rows.add(
          judged(
              one.finding().check() + (one.finding().atMost() ? ", at most" : ", at least"),
              one.finding().subject(),
              one.used(),
              one.finding().remark()));
    }
    add(
        CheckGroup.GEOMETRY.words(),
        "size per limit, or limit per size",
        Column.wrapped("remark", 88),
        rows);
  }

  /** Checks of the frame as a whole, which have no cut. */
  void frame(Assessment assessment, StabilitySheet stability) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Verdict verdict : assessment.verdicts()) {
      boolean judged = verdict.status() == Status.PASSED || verdict.status() == Status.FAILED;
      if (verdict.group() == CheckGroup.STABILITY && judged && verdict.governing().isEmpty()) {
        rows.add(frameRow(verdict, stability));
      }
    }
    add(
        "Stability of the frame",
        "1 over the critical load factor",
        Column.wrapped("why", 88),
        rows);
  }

  void vibration(Assessment assessment, VibrationSheet vibration) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Verdict verdict : assessment.verdicts()) {
      if (verdict.group() == CheckGroup.VIBRATION) {
        vibration
            .used(verdict.check())
            .ifPresent(
                used ->
                    rows.add(judged(verdict.check(), verdict.subject(), used, verdict.remark())));
      }
    }
    add(
        CheckGroup.VIBRATION.words(),
        "limit per frequency",
        Column.wrapped("how it moves", 88),
        rows);
  }

  void whole(Assessment assessment, WholeStructureSheet whole) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Verdict verdict : assessment.verdicts()) {
      boolean judged = verdict.status() == Status.PASSED || verdict.status() == Status.FAILED;
      if (verdict.group() == CheckGroup.WHOLE_STRUCTURE && judged) {
        rows.add(
            whole
                .used(verdict.check(), verdict.subject())
                .map(used -> judged(verdict.check(), verdict.subject(), used, verdict.remark()))
                .orElseGet(() -> fallen(verdict)));
      }
    }
    add(
        CheckGroup.WHOLE_STRUCTURE.words(),
        "demand per capacity",
        Column.wrapped("remark", 88),
        rows);
  }

  /** What falls has no utilisation. */
  private List<LedgerCell> fallen(Verdict verdict) {
    return List.of(
        LedgerCell.text(verdict.check()),
        LedgerCell.text(verdict.subject()),
        LedgerCell.blank(),
        LedgerCell.judged(verdict.status() == Status.PASSED ? Outcome.PASS : Outcome.FAIL),
        LedgerCell.text(verdict.remark()));
  }

  private List<LedgerCell> frameRow(Verdict verdict, StabilitySheet stability) {
    Optional<NumberAt> factor =
        verdict.instance().flatMap(instance -> stability.factor(instance.words()));
    return List.of(
        LedgerCell.text(verdict.check()),
        LedgerCell.text(verdict.subject()),
        factor
            .map(f -> LedgerCell.live("1/" + f.from(sheet.name()), 1 / f.value()))
            .orElseGet(LedgerCell::blank),
        factor
            .map(
                f ->
                    LedgerCell.judged(
                        "{" + USED + "}<1", f.value() > 1, Outcome.PASS, Outcome.FAIL))
            .orElseGet(() -> LedgerCell.judged(Outcome.FAIL)),
        LedgerCell.text(verdict.remark()));
  }

  /** A row that passes if no more than all is used. */
  private List<LedgerCell> judged(String check, String subject, NumberAt used, String remark) {
    return List.of(
        LedgerCell.text(check),
        LedgerCell.text(subject),
        LedgerCell.linked(used),
        LedgerCell.judged("{" + USED + "}<=1", used.value() <= 1, Outcome.PASS, Outcome.FAIL),
        LedgerCell.text(remark));
  }

  private void add(String title, String used, Column last, List<List<LedgerCell>> rows) {
    if (rows.isEmpty()) {
      return;
    }
    sheet.add(
        new DataTable(
            title,
            List.of(
                Column.wrapped("check", 50),
                Column.wrapped("on", 20),
                Column.number(USED, used, Dimension.NONE),
                Column.text(SummarySheet.VERDICT, 14),
                last),
            rows));
  }
}
