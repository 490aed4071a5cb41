package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.envelope.Governing;
import spanledger.frame.Frame;
import spanledger.memberdesign.MemberJudgement;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;
import spanledger.workbook.layout.ProcedureCells;

/** Member resistance by a code: what does not hang on loads, the checks at cuts, the worst. */
final class MemberCodeSheets {

  /** A row of a table. */
  record Row(ProcedureCells table, int row) {}

  /** Uses that differ by less are the same but for rounding. */
  private static final double ROUNDED_DOWN = 0.999999999;

  private static final String USED = "utilisation";

  private final MemberGroups groups;
  private final IdentityHashMap<Governing, NumberAt> uses = new IdentityHashMap<>();
  private final List<Row> worked = new ArrayList<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  private MemberCodeSheets(MemberGroups groups) {
    this.groups = groups;
  }

  static MemberCodeSheets write(
      LedgerWorkbook workbook,
      Optional<MemberJudgement> judgement,
      MemberGroups groups,
      Frame frame,
      SectionSheet sections,
      SegmentSheets segments,
      CutSheets cuts) {
    MemberCodeSheets sheets = new MemberCodeSheets(groups);
    if (judgement.isEmpty() || groups.groups().isEmpty()) {
      return sheets;
    }
    String code = judgement.get().title();
    LedgerSheet given = workbook.sheet(SheetNames.MEMBER_INPUTS);
    given.title(
        "Member inputs",
        code + ": members made and held alike are one case; what its checks are given.");
    sheets.writeCases(given);
    MemberNumbers numbers = new MemberNumbers(given, groups.groups(), frame.members(), sections);
    LedgerSheet resistance = workbook.sheet(SheetNames.MEMBER_RESISTANCE);
    resistance.title(
        "Member resistance",
        code + ": classes, effective sections and resistances, before any load.");
    MemberWorkings workings = new MemberWorkings(resistance, groups.groups(), numbers);
    LedgerSheet checks = workbook.sheet(SheetNames.MEMBER_CHECKS);
    checks.title(
        "Member checks",
        code + ": checks at the cuts that govern them. A utilisation above 1 fails.");
    MemberCutTables cutTables =
        new MemberCutTables(checks, groups.groups(), frame, cuts, segments, workings);
    LedgerSheet uses = workbook.sheet(SheetNames.MEMBER_USE);
    uses.title("Member utilisation", code + ": the worst of each check, by formula.");
    sheets.writeUses(uses, cutTables);
    sheets.tables.addAll(workings.tables());
    sheets.tables.addAll(cutTables.tables());
    MemberGroups.Group worst = groups.worst();
    sheets.worked.addAll(workings.rowsOf(worst));
    sheets.worked.addAll(cutTables.rowsOf(worst));
    return sheets;
  }

  private void writeCases(LedgerSheet sheet) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (MemberGroups.Group group : groups.groups()) {
      for (BucklingMode mode : BucklingMode.values()) {
        BucklingLength length = group.prepared().member().lengths().get(mode);
        if (length != null) {
          rows.add(
              List.of(
                  LedgerCell.text(group.name()),
                  LedgerCell.text(mode.words()),
                  LedgerCell.given(length.length()),
                  LedgerCell.text(length.reason()),
                  LedgerCell.text(length.source().citation()),
                  LedgerCell.text(String.join(", ", group.members()))));
        }
      }
      for (String remark : group.prepared().remarks()) {
        rows.add(
            List.of(
                LedgerCell.text(group.name()),
                LedgerCell.text("remark"),
                LedgerCell.blank(),
                LedgerCell.text(remark),
                LedgerCell.blank(),
                LedgerCell.blank()));
      }
    }
    sheet.add(
        new DataTable(
            "Cases and their buckling lengths",
            List.of(
                Column.text("case", 20),
                Column.text("mode", 30),
                Column.number("length", "", Dimension.LENGTH),
                Column.wrapped("reason", 50),
                Column.wrapped(DataTable.SOURCE_HEADING, 30),
                Column.wrapped("members", 60)),
            rows));
  }

  private void writeUses(LedgerSheet sheet, MemberCutTables cutTables) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<Governing> governing = new ArrayList<>();
    for (MemberGroups.Group group : groups.groups()) {
      for (MemberGroups.Shown shown : group.uses()) {
        String symbol = shown.use().symbol();
        CellRange range = cutTables.uses(group, symbol);
        double greatest = 0;
        for (Cut cut : group.cuts()) {
          greatest = Math.max(greatest, cutTables.use(group, cut, symbol).value());
        }
        String of = range.from(sheet.name());
        rows.add(
            List.of(
                LedgerCell.text(group.name()),
                LedgerCell.text(shown.use().words()),
                LedgerCell.text(shown.use().clause()),
                LedgerCell.live("MAX(" + of + ")", greatest),
                LedgerCell.judged("{" + USED + "}<=1", greatest <= 1, Outcome.PASS, Outcome.FAIL),
                combination(sheet, cutTables, group, symbol, of, greatest)));
        governing.add(shown.governing());
      }
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "The worst of each check",
                List.of(
                    Column.text("case", 20),
                    Column.text("check", 40),
                    Column.text("clause", 14),
                    Column.number(USED, "demand per resistance", Dimension.NONE),
                    Column.text("verdict", 16),
                    Column.wrapped("combination", 56)),
                rows));
    for (int i = 0; i < governing.size(); i++) {
      uses.put(governing.get(i), cells.number(i, USED));
    }
  }

  /** The first combination that uses as much as any but for rounding, by formula. */
  private static LedgerCell combination(
      LedgerSheet sheet,
      MemberCutTables cutTables,
      MemberGroups.Group group,
      String symbol,
      String all,
      double greatest) {
    StringBuilder formula = new StringBuilder();
    List<Cut> cuts = group.cuts();
    String words = "";
    for (int i = 0; i < cuts.size(); i++) {
      NumberAt use = cutTables.use(group, cuts.get(i), symbol);
      if (words.isEmpty() && use.value() >= ROUNDED_DOWN * greatest) {
        words = cuts.get(i).instance().words();
      }
      String label = cutTables.combination(group, cuts.get(i), symbol).from(sheet.name());
      if (i + 1 < cuts.size()) {
        formula.append("IF(").append(use.from(sheet.name())).append(">=");
        formula.append(ROUNDED_DOWN).append("*MAX(").append(all).append("),");
        formula.append(label).append(',');
      } else {
        formula.append(label).append(")".repeat(i));
      }
    }
    return new LedgerCell.LiveText(formula.toString(), words);
  }

  /** The live utilisation that a verdict rests on, if it is shown. */
  Optional<NumberAt> use(Governing governing) {
    return Optional.ofNullable(uses.get(governing));
  }

  /** The members that a verdict stands for, by name; empty if it is not shown. */
  Set<String> covered(Governing governing) {
    return groups.of(governing).map(MemberGroups.Group::members).orElse(Set.of());
  }

  /** The tables in order, each with its first row of the case that is used most. */
  List<Row> worked() {
    return worked;
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
