package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.FaceRun;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.CellAddress;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Choice;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.Outcome;
import spanledger.workbook.layout.WorkedPage;

/**
 * The worked page of a kind of joint. The reviewer chooses a case; forces, the use of every check
 * and every calculation follow, each calculation of the part that is chosen beside it.
 */
final class JointPage {

  private static final String USED = "utilisation";
  private static final String CHOSEN = " ";

  private final String kind;
  private final JointCases cases;
  private final JointTables joints;
  private final JointUses uses;
  private final JointIndex index;
  private final JointChoices choices;

  JointPage(
      String kind,
      JointCases cases,
      JointTables joints,
      JointUses uses,
      JointIndex index,
      JointChoices choices) {
    this.kind = kind;
    this.cases = cases;
    this.joints = joints;
    this.uses = uses;
    this.index = index;
    this.choices = choices;
  }

  void write(LedgerSheet sheet) {
    sheet.title(
        "Joint " + kind,
        "Choose a case, a member end under a combination, in the first thick box: everything below"
            + " follows. Choose in the other boxes of which part a calculation is shown.");
    JointCases.Case first = first();
    CellAddress choice = sheet.add(new Choice("Case", index.offered(kind), first.words()));
    CellAddress chosen = writeCase(sheet, choice.fixed(), first);
    writeChecks(sheet, choice, first);
    sheet.pageBreak();
    writeForces(sheet, chosen, first);
    sheet.pageBreak();
    for (JointChoices.Block block : choices.of(kind)) {
      writeBlock(sheet, chosen, first, block);
    }
  }

  /** What was chosen, word by word; the cell with the name of the case. */
  private CellAddress writeCase(LedgerSheet sheet, String choice, JointCases.Case first) {
    String here = sheet.name();
    return sheet
        .add(
            new DataTable(
                "",
                List.of(Column.text("", 12), Column.text("chosen", 50), Column.wrapped(CHOSEN, 62)),
                List.of(
                    chosen("case", index.name(kind, choice, here), first.name()),
                    chosen("member end", index.end(kind, choice, here), first.run().end().name()),
                    chosen(
                        "combination",
                        index.combination(kind, choice, here),
                        first.run().words()))))
        .address(0, CHOSEN);
  }

  private static List<LedgerCell> chosen(String what, String formula, String words) {
    return List.of(
        LedgerCell.blank(), LedgerCell.text(what), new LedgerCell.LiveText(formula, words));
  }

  /** The case of the worst check under load. */
  private JointCases.Case first() {
    return cases.of(worst().get(0).run());
  }

  private List<JointGroups.Shown> worst() {
    List<JointGroups.Shown> checks = new ArrayList<>(uses.of(kind));
    checks.sort(
        (a, b) -> {
          int loads = Boolean.compare(b.finding().hangsOnLoads(), a.finding().hangsOnLoads());
          return loads != 0
              ? loads
              : Double.compare(b.finding().governing().value(), a.finding().governing().value());
        });
    return checks;
  }

  private void writeForces(LedgerSheet sheet, CellAddress chosen, JointCases.Case first) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    String at = chosen.fixed();
    fetch(rows, sheet, at, first.run().forces(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
    for (BracketRun bracket : first.run().brackets()) {
      fetch(rows, sheet, at, bracket.share(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
    }
    for (FaceRun face : first.run().faces()) {
      fetch(rows, sheet, at, face.forces(), "N", "V_y", "V_z", "T", "M_y", "M_z");
      for (int i = 0; i < face.shears().size(); i++) {
        fetch(rows, sheet, at, face.shears().get(i), "F_y", "F_z");
        fetch(rows, sheet, at, face.tensions().get(i), "F_t");
      }
      face.keys().forEach(key -> fetch(rows, sheet, at, key, "B"));
    }
    sheet.add(
        new DataTable(
            "Forces of the member end, the faces, bolts and keys under the chosen case",
            List.of(
                Column.text("symbol", 12),
                Column.wrapped("of", 50),
                Column.wrapped("what", 62),
                Column.number("value", "", Dimension.FORCE).withUnit(""),
                Column.text("unit", 10)),
            rows));
  }

  private void fetch(
      List<List<LedgerCell>> rows,
      LedgerSheet sheet,
      String chosen,
      Working working,
      String... symbols) {
    for (String symbol : symbols) {
      JointWords.Said said = JointWords.of(working, symbol);
      rows.add(
          List.of(
              LedgerCell.text(symbol),
              LedgerCell.text(joints.row(working).part()),
              LedgerCell.text(said.words()),
              LedgerCell.live(
                  joints.fetched(working, symbol, chosen, sheet.name()), working.value(symbol)),
              LedgerCell.text(said.unit())));
    }
  }

  private void writeChecks(LedgerSheet sheet, CellAddress chosen, JointCases.Case first) {
    String number = index.number(kind, chosen.fixed(), sheet.name());
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (JointGroups.Shown check : uses.of(kind)) {
      CellRange all = uses.inAllCases(check);
      String cell = "INDEX(" + all.from(sheet.name()) + "," + number + ")";
      boolean here = !check.under(first.run()).isEmpty();
      double use = here ? uses.use(check, first).value() : 0;
      rows.add(
          List.of(
              LedgerCell.count(rows.size() + 1),
              LedgerCell.text(check.words()),
              LedgerCell.text(check.finding().use().clause()),
              LedgerCell.live(cell, use),
              LedgerCell.judged("{" + USED + "}<=1", use <= 1, Outcome.PASS, Outcome.FAIL)));
    }
    sheet.add(
        new DataTable(
            "Checks under the chosen case, each at its worst part; 0 where the case has no such check",
            List.of(
                Column.text("no.", 12),
                Column.text("check", 50),
                Column.text("clause", 62),
                Column.number(USED, "", Dimension.NONE),
                Column.text("verdict", 10)),
            rows));
  }

  private void writeBlock(
      LedgerSheet sheet, CellAddress chosen, JointCases.Case first, JointChoices.Block block) {
    sheet.heading(block.title());
    JointRows.Row shown = shown(block, first);
    CellAddress part = sheet.add(new Choice("Part", choices.parts(block), shown.part()));
    String scope =
        shown.loaded()
            ? chosen.fixed() + "&\": \"&"
            : shown.scope().isEmpty() ? "" : "\"" + shown.scope().replace("\"", "\"\"") + ": \"&";
    boolean found = !shown.loaded() || shown.at().name().equals(first.name());
    sheet.add(
        new WorkedPage(
            block.table().cells(),
            block.table().rows().indexOf(shown),
            Optional.of(new WorkedPage.Following(scope + part.fixed(), found))));
  }

  /** The row shown at first: on the way to the worst check, else the first in its case. */
  private JointRows.Row shown(JointChoices.Block block, JointCases.Case first) {
    Set<String> wanted = new LinkedHashSet<>();
    for (JointGroups.Shown check : worst()) {
      way(JointUses.part(check).working(), block, wanted, new HashSet<>());
      if (!wanted.isEmpty()) {
        break;
      }
    }
    List<JointRows.Row> own =
        block.rows().stream()
            .filter(row -> wanted.isEmpty() || wanted.contains(row.part()))
            .toList();
    return own.stream()
        .filter(row -> row.loaded() && row.at().name().equals(first.name()))
        .findFirst()
        .or(
            () ->
                block.rows().stream()
                    .filter(row -> row.loaded() && row.at().name().equals(first.name()))
                    .findFirst())
        .orElse(own.get(0));
  }

  /** Each run on the way is looked at once, however many others it feeds. */
  private void way(
      Working working, JointChoices.Block block, Set<String> parts, Set<Working> seen) {
    if (!seen.add(working)) {
      return;
    }
    JointRows.Row row = joints.row(working);
    if (block.rows().contains(row)) {
      parts.add(row.part());
    }
    for (Feed feed : row.working().feeds()) {
      if (feed instanceof Feed.Result result) {
        way(result.from(), block, parts, seen);
      }
    }
  }

  /** The pages' sheets by kind of joint. */
  static Map<String, String> names(JointCases cases) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String kind : cases.kinds()) {
      int number = names.size() + 1;
      names.put(kind, LedgerWorkbook.nameOfSheet("Joint " + number + " " + kind));
    }
    return names;
  }
}
