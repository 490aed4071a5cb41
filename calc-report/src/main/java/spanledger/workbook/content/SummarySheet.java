package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.envelope.Governing;
import spanledger.envelope.StrengthFinding;
import spanledger.quantity.Dimension;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** Every verdict with its live utilisation, and what was not checked. */
final class SummarySheet {

  private static final List<String> PROOFS =
      List.of(
          "greatest force left over, N",
          "greatest moment left over, N·mm",
          "greatest movement of held nodes");

  static final String USED = "utilisation";
  static final String VERDICT = "verdict";

  private static final int PRINTED = 7;

  private SummarySheet() {}

  static void write(
      LedgerWorkbook workbook,
      Assessment assessment,
      Representatives shown,
      StrengthSheet strength,
      MemberCodeSheets byCode,
      JointSheets joints,
      DeflectionSheet deflection,
      StabilitySheet stability,
      VibrationSheet vibration,
      WholeStructureSheet whole,
      Optional<ModeSheet> mode,
      Optional<StateSheets> states,
      BalanceSheet balance,
      DeckSheet deck,
      List<GeometrySheet.Judged> geometry) {
    LedgerSheet sheet = workbook.sheet(SheetNames.SUMMARY);
    sheet.title("Summary", "Every check with its live result. What is not checked stands first.");
    writeOpen(sheet, assessment);
    writeProof(sheet, balance, mode, states, vibration.proof());
    UncutChecks uncut = new UncutChecks(sheet);
    for (CheckGroup group : CheckGroup.values()) {
      writeGroup(sheet, group, assessment, shown, strength, byCode, joints, deflection);
      if (group == CheckGroup.STABILITY) {
        uncut.frame(assessment, stability);
      }
      if (group == CheckGroup.VIBRATION) {
        uncut.vibration(assessment, vibration);
      }
      if (group == CheckGroup.WHOLE_STRUCTURE) {
        uncut.whole(assessment, whole);
      }
    }
    uncut.deck(deck.judged());
    uncut.geometry(geometry);
    // The names of members alike would make rows high; they stand on the screen.
    sheet.printColumns(PRINTED);
  }

  private static void writeOpen(LedgerSheet sheet, Assessment assessment) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Verdict verdict : assessment.verdicts()) {
      if (verdict.status() == Status.NOT_CHECKED && verdict.governing().isEmpty()) {
        rows.add(
            List.of(
                LedgerCell.text(verdict.check()),
                LedgerCell.text(verdict.subject()),
                LedgerCell.blank(),
                LedgerCell.judged(Outcome.NOT_CHECKED),
                LedgerCell.text(verdict.remark())));
      }
    }
    sheet.add(
        new DataTable(
            "Not checked",
            List.of(
                Column.wrapped("check", 50),
                Column.wrapped("on", 20),
                Column.text(" ", 12),
                Column.text(VERDICT, 14),
                Column.wrapped("why", 88)),
            rows));
  }

  private static void writeProof(
      LedgerSheet sheet,
      BalanceSheet balance,
      Optional<ModeSheet> mode,
      Optional<StateSheets> states,
      Optional<VibrationProof> vibration) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int row = 0; row < PROOFS.size(); row++) {
      rows.add(
          List.of(
              LedgerCell.text(PROOFS.get(row)),
              LedgerCell.text("all nodes and cases"),
              LedgerCell.linked(balance.leftOver(row)),
              new LedgerCell.LiveText(
                  balance.verdict(row).from(sheet.name()), Outcome.BALANCED.words())));
    }
    mode.ifPresent(
        m -> {
          for (int row = 0; row < 2; row++) {
            rows.add(
                List.of(
                    LedgerCell.text(
                        (row == 0 ? "greatest force, N" : "greatest moment, N·mm")
                            + ", in the mode"),
                    LedgerCell.text("critical mode"),
                    LedgerCell.linked(m.leftOver(row)),
                    new LedgerCell.LiveText(
                        m.verdict(row).from(sheet.name()), Outcome.BALANCED.words())));
          }
        });
    states.ifPresent(
        s -> {
          for (int row = 0; row < PROOFS.size(); row++) {
            rows.add(
                List.of(
                    LedgerCell.text(PROOFS.get(row)),
                    LedgerCell.text("all nodes and states"),
                    LedgerCell.linked(s.leftOver(row)),
                    new LedgerCell.LiveText(
                        s.verdict(row).from(sheet.name()), Outcome.BALANCED.words())));
          }
        });
    vibration.ifPresent(
        v -> {
          for (int row = 0; row < PROOFS.size(); row++) {
            rows.add(
                List.of(
                    LedgerCell.text(PROOFS.get(row)),
                    LedgerCell.text("modes of vibration"),
                    LedgerCell.linked(v.leftOver(row)),
                    new LedgerCell.LiveText(
                        v.verdict(row).from(sheet.name()), Outcome.BALANCED.words())));
          }
        });
    sheet.add(
        new DataTable(
            "Proof of the solution",
            List.of(
                Column.wrapped("equilibrium", 50),
                Column.text("of", 20),
                Column.number("left over", "", Dimension.NONE),
                Column.text(VERDICT, 14)),
            rows));
  }

  private static void writeGroup(
      LedgerSheet sheet,
      CheckGroup group,
      Assessment assessment,
      Representatives shown,
      StrengthSheet strength,
      MemberCodeSheets byCode,
      JointSheets joints,
      DeflectionSheet deflection) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (Verdict verdict : assessment.verdicts()) {
      Set<String> covered =
          verdict
              .governing()
              .map(governing -> covered(governing, shown, byCode, joints))
              .orElse(Set.of());
      if (verdict.group() == group && verdict.status() != Status.DEMAND && !covered.isEmpty()) {
        NumberAt used = used(verdict, shown, strength, byCode, joints, deflection);
        rows.add(row(verdict, used, covered));
        values.add(used.value());
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    List<Column> columns =
        List.of(
            Column.wrapped("check", 50),
            Column.wrapped("on", 20),
            Column.number(USED, "demand per capacity", Dimension.NONE),
            Column.text(VERDICT, 14),
            Column.wrapped("combination", 88),
            Column.wrapped("cut", 24),
            Column.wrapped("remark", 16),
            Column.wrapped("worst of these, made alike", 110));
    DataCells cells = sheet.add(new DataTable(group.words(), columns, rows));
    double greatest = values.stream().mapToDouble(v -> v).max().orElse(0);
    sheet.add(
        new DataTable(
            "",
            List.of(
                Column.text("greatest of " + group.words().toLowerCase(java.util.Locale.ROOT), 50),
                Column.text("", 20).withWords(""),
                Column.number(USED, "", Dimension.NONE)),
            List.of(
                List.of(
                    LedgerCell.text("all checks above"),
                    LedgerCell.blank(),
                    LedgerCell.live(
                        "MAX(" + cells.column(USED).from(sheet.name()) + ")", greatest)))));
  }

  private static List<LedgerCell> row(Verdict verdict, NumberAt used, Set<String> covered) {
    Governing governing = verdict.governing().orElseThrow();
    boolean open = verdict.status() == Status.NOT_CHECKED;
    return List.of(
        LedgerCell.text(verdict.check()),
        LedgerCell.text(verdict.subject()),
        LedgerCell.linked(used),
        LedgerCell.judged(
            "{" + USED + "}<=1",
            used.value() <= 1,
            open ? Outcome.NOT_CHECKED : Outcome.PASS,
            open ? Outcome.NOT_CHECKED : Outcome.FAIL),
        LedgerCell.text(governing.instance().words()),
        LedgerCell.text(governing.station().words()),
        LedgerCell.text(verdict.remark()),
        LedgerCell.text(covered.size() == 1 ? "" : String.join(", ", covered)));
  }

  private static Set<String> covered(
      Governing governing, Representatives shown, MemberCodeSheets byCode, JointSheets joints) {
    Set<String> members = shown.covered(governing);
    if (!members.isEmpty()) {
      return members;
    }
    Set<String> cases = byCode.covered(governing);
    return cases.isEmpty() ? joints.covered(governing) : cases;
  }

  private static NumberAt used(
      Verdict verdict,
      Representatives shown,
      StrengthSheet strength,
      MemberCodeSheets byCode,
      JointSheets joints,
      DeflectionSheet deflection) {
    Governing governing = verdict.governing().orElseThrow();
    Optional<NumberAt> use = byCode.use(governing).or(() -> joints.use(governing));
    if (use.isPresent()) {
      return use.get();
    }
    Optional<StrengthFinding> stress = shown.strength(governing);
    if (stress.isPresent()) {
      return strength.number(DeflectionSheet.cut(governing), stress.get().measure().symbol());
    }
    return deflection.utilisation(
        Required.of(
            shown.deflection(governing).orElse(null), "The finding on " + verdict.subject()));
  }
}
