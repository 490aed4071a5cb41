package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** All joints with their worst check, the cases shown of each kind, and where they are worked. */
final class JointIndex {

  private static final String CASE = "case";
  private static final String END = "member end";
  private static final String COMBINATION = "combination";
  private static final String CHOICE = "as the worked page offers it";
  private static final String USED = "utilisation";

  private final JointCases cases;
  private final DataCells listed;

  JointIndex(
      LedgerSheet sheet,
      JointJudgement judgement,
      JointGroups groups,
      JointCases cases,
      JointUses uses,
      Map<String, String> pages) {
    this.cases = cases;
    writeKinds(sheet, uses, pages);
    writeEnds(sheet, judgement, groups, uses, pages);
    listed = writeCases(sheet, pages);
  }

  private void writeKinds(LedgerSheet sheet, JointUses uses, Map<String, String> pages) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (String kind : cases.kinds()) {
      List<JointGroups.Shown> checks = uses.of(kind);
      List<String> cells = new ArrayList<>();
      double greatest = 0;
      for (JointGroups.Shown check : checks) {
        CellRange all = uses.inAllCases(check);
        cells.add(all.from(sheet.name()));
        for (JointCases.Case one : cases.of(kind)) {
          if (!check.under(one.run()).isEmpty()) {
            greatest = Math.max(greatest, uses.use(check, one).value());
          }
        }
      }
      JointGroups.Shown first = checks.get(0);
      rows.add(
          List.of(
              LedgerCell.text(kind),
              LedgerCell.text(Integer.toString(first.ends().size())),
              LedgerCell.live(greatestOf(cells), greatest),
              LedgerCell.judged("{" + USED + "}<=1", greatest <= 1, Outcome.PASS, Outcome.FAIL),
              new LedgerCell.Link("go to the page", Required.of(pages.get(kind), kind)),
              LedgerCell.text(first.finding().joint().source().citation()),
              LedgerCell.text(String.join("; ", first.ends()))));
    }
    sheet.add(
        new DataTable(
            "Kinds of joints",
            List.of(
                Column.text("kind of joint", 26),
                Column.text("how many", 22),
                Column.number(
                    USED, "greatest of all checks, of sizes and tightening too", Dimension.NONE),
                Column.text("verdict", 12),
                Column.text("worked page", 15),
                Column.wrapped("described in", 48),
                Column.wrapped("member ends", 58)),
            rows));
  }

  /** Spreadsheet programs take so many arguments at most. */
  private static String greatestOf(List<String> cells) {
    int most = 30;
    if (cells.size() <= most) {
      return "MAX(" + String.join(",", cells) + ")";
    }
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < cells.size(); from += most) {
      parts.add(
          "MAX("
              + String.join(",", cells.subList(from, Math.min(from + most, cells.size())))
              + ")");
    }
    return greatestOf(parts);
  }

  /**
   * Every member end with the worst check that loads use: live where that is in the workbook. A
   * check that no load changes stands only where there is no other.
   */
  private static void writeEnds(
      LedgerSheet sheet,
      JointJudgement judgement,
      JointGroups groups,
      JointUses uses,
      Map<String, String> pages) {
    Map<String, JointFinding> worst = new TreeMap<>();
    for (JointFinding finding : judgement.findings()) {
      worst.merge(finding.end().name(), finding, (a, b) -> worse(b, a) ? b : a);
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    worst.forEach(
        (end, finding) -> {
          Optional<NumberAt> live =
              groups.of(finding.governing()).flatMap(s -> uses.worst(finding.governing()));
          double value = finding.governing().value();
          rows.add(
              List.of(
                  LedgerCell.text(end),
                  LedgerCell.text(finding.joint().name()),
                  live.map(LedgerCell::linked).orElseGet(() -> LedgerCell.solved(value)),
                  LedgerCell.judged("{" + USED + "}<=1", value <= 1, Outcome.PASS, Outcome.FAIL),
                  new LedgerCell.Link(
                      live.isPresent() ? "worked there" : "of its kind",
                      Required.of(pages.get(finding.joint().name()), end)),
                  LedgerCell.text(finding.faceName() + ": " + finding.use().words()),
                  LedgerCell.text(finding.instance().words())));
        });
    sheet.add(
        new DataTable(
            "All joints: of every member end the check that loads use most",
            List.of(
                Column.text(END, 26),
                Column.text("kind of joint", 22),
                Column.number(USED, "formula, or found by search", Dimension.NONE),
                Column.text("verdict", 12),
                Column.text("worked page", 15),
                Column.text("governing check", 48),
                Column.text(COMBINATION, 58)),
            rows));
  }

  private static boolean worse(JointFinding a, JointFinding b) {
    return a.hangsOnLoads() == b.hangsOnLoads()
        ? a.governing().value() > b.governing().value()
        : a.hangsOnLoads();
  }

  private DataCells writeCases(LedgerSheet sheet, Map<String, String> pages) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (JointCases.Case one : cases.all()) {
      rows.add(
          List.of(
              LedgerCell.text(one.name()),
              LedgerCell.text(one.run().end().name()),
              LedgerCell.blank(),
              LedgerCell.blank(),
              new LedgerCell.Link("go to the page", Required.of(pages.get(one.kind()), one.kind())),
              LedgerCell.text(one.run().words()),
              LedgerCell.text(one.words())));
    }
    return sheet.add(
        new DataTable(
            "Cases that the workbook shows: those that govern some check",
            List.of(
                Column.text(CASE, 26),
                Column.text(END, 22),
                Column.text(" ", 12),
                Column.text("  ", 12),
                Column.text("worked page", 15),
                Column.text(COMBINATION, 48),
                Column.text(CHOICE, 58)),
            rows));
  }

  /** What the worked page of a kind offers to choose from, one below the other. */
  CellRange offered(String kind) {
    return range(kind, CHOICE);
  }

  /** A formula for the number, within its kind, of the case that a cell offers. */
  String number(String kind, String chosen, String sheet) {
    return "MATCH(" + chosen + "," + offered(kind).from(sheet) + ",0)";
  }

  /** A formula for the name of the case that a cell offers. */
  String name(String kind, String chosen, String sheet) {
    return of(kind, CASE, chosen, sheet);
  }

  /** A formula for the member end of the case that a cell offers. */
  String end(String kind, String chosen, String sheet) {
    return of(kind, END, chosen, sheet);
  }

  /** A formula for the combination of the case that a cell offers. */
  String combination(String kind, String chosen, String sheet) {
    return of(kind, COMBINATION, chosen, sheet);
  }

  private String of(String kind, String heading, String chosen, String sheet) {
    String column = range(kind, heading).from(sheet);
    return "INDEX(" + column + "," + number(kind, chosen, sheet) + ")";
  }

  private CellRange range(String kind, String heading) {
    int first = cases.all().indexOf(cases.of(kind).get(0));
    return listed
        .address(first, heading)
        .to(listed.address(first + cases.of(kind).size() - 1, heading));
  }
}
