package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spanledger.envelope.Governing;
import spanledger.quantity.Dimension;
import spanledger.resistance.joint.JointCheck;
import spanledger.workbook.layout.CellRange;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** How much of each check each case uses, and the worst of each check. */
final class JointUses {

  private static final String USED = "utilisation";

  /** A check's row in the table of its kind of joint. */
  private record Row(DataCells cells, int row, List<JointCases.Case> cases) {}

  private final JointGroups groups;
  private final JointCases cases;
  private final JointTables joints;
  private final IdentityHashMap<JointGroups.Shown, Row> rows = new IdentityHashMap<>();
  private final IdentityHashMap<Governing, NumberAt> worst = new IdentityHashMap<>();

  JointUses(JointGroups groups, JointCases cases, JointTables joints) {
    this.groups = groups;
    this.cases = cases;
    this.joints = joints;
  }

  void write(LedgerSheet sheet) {
    for (String kind : cases.kinds()) {
      writeKind(sheet, kind);
    }
    writeWorst(sheet);
  }

  private void writeKind(LedgerSheet sheet, String kind) {
    List<JointCases.Case> own = cases.of(kind);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("no.", 6));
    columns.add(Column.text("check", 46));
    columns.add(Column.text("clause", 40));
    for (JointCases.Case one : own) {
      columns.add(Column.number("case " + one.number(), one.run().end().name(), Dimension.NONE));
    }
    List<List<LedgerCell>> table = new ArrayList<>();
    List<JointGroups.Shown> checks = of(kind);
    for (JointGroups.Shown check : checks) {
      List<LedgerCell> line = new ArrayList<>();
      line.add(LedgerCell.count(table.size() + 1));
      line.add(LedgerCell.text(check.words()));
      line.add(LedgerCell.text(check.finding().use().clause()));
      own.forEach(one -> line.add(use(sheet, check, one)));
      table.add(line);
    }
    DataCells cells =
        sheet.add(
            new DataTable(kind + ": the greatest use of each check in each case", columns, table));
    for (int i = 0; i < checks.size(); i++) {
      rows.put(checks.get(i), new Row(cells, i, own));
    }
  }

  /**
   * The greatest use of a check among all parts of its face; nothing if a case has no such part.
   */
  private LedgerCell use(LedgerSheet sheet, JointGroups.Shown check, JointCases.Case one) {
    Set<String> parts = new LinkedHashSet<>();
    double greatest = Double.NEGATIVE_INFINITY;
    for (JointCheck part : check.under(one.run())) {
      NumberAt use = joints.number(part.working(), check.finding().use().symbol());
      parts.add(use.from(sheet.name()));
      greatest = Math.max(greatest, use.value());
    }
    return parts.isEmpty()
        ? LedgerCell.blank()
        : LedgerCell.live("MAX(" + String.join(",", parts) + ")", greatest);
  }

  private void writeWorst(LedgerSheet sheet) {
    List<List<LedgerCell>> table = new ArrayList<>();
    for (JointGroups.Shown one : groups.shown()) {
      JointCases.Case at = cases.of(one.run());
      NumberAt use = use(one, at);
      JointTables.Place place = joints.place(part(one).working());
      table.add(
          List.of(
              LedgerCell.text(one.joint()),
              LedgerCell.text(one.words()),
              LedgerCell.text(one.finding().use().clause()),
              LedgerCell.linked(use),
              LedgerCell.judged("{" + USED + "}<=1", use.value() <= 1, Outcome.PASS, Outcome.FAIL),
              new LedgerCell.LiveText(
                  place.table().label(place.row(), 0).from(sheet.name()),
                  joints.row(part(one).working()).label()),
              new LedgerCell.LiveText(
                  place.table().label(place.row(), 1).from(sheet.name()),
                  joints.row(part(one).working()).combination())));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "The worst of each check",
                List.of(
                    Column.text("joint", 26),
                    Column.text("check", 46),
                    Column.text("clause", 40),
                    Column.number(USED, "demand per resistance", Dimension.NONE),
                    Column.text("verdict", 16),
                    Column.text("part", 46),
                    Column.text("combination", 60)),
                table));
    for (int i = 0; i < table.size(); i++) {
      worst.put(groups.shown().get(i).finding().governing(), cells.number(i, USED));
    }
  }

  /** The part that uses most of a check in the case in which it is shown. */
  static JointCheck part(JointGroups.Shown one) {
    String symbol = one.finding().use().symbol();
    @Nullable JointCheck worst = one.host().equals(one.finding()) ? one.finding().check() : null;
    for (JointCheck check : one.under(one.run())) {
      if (worst == null || check.working().value(symbol) > worst.working().value(symbol)) {
        worst = check;
      }
    }
    return Required.of(worst, "A check of a joint");
  }

  /** The checks of a kind of joint. */
  List<JointGroups.Shown> of(String kind) {
    return groups.shown().stream().filter(one -> one.joint().equals(kind)).toList();
  }

  /** The use of a check in a case that has it. */
  NumberAt use(JointGroups.Shown check, JointCases.Case one) {
    Row row = Required.of(rows.get(check), "A check of a joint");
    return row.cells().number(row.row(), "case " + one.number());
  }

  /** The use of a check in all cases of its kind, side by side. */
  CellRange inAllCases(JointGroups.Shown check) {
    Row row = Required.of(rows.get(check), "A check of a joint");
    int last = row.cases().size();
    return row.cells()
        .address(row.row(), "case 1")
        .to(row.cells().address(row.row(), "case " + last));
  }

  /** The live utilisation that a verdict rests on, if it is shown. */
  Optional<NumberAt> worst(Governing governing) {
    return Optional.ofNullable(worst.get(governing));
  }
}
