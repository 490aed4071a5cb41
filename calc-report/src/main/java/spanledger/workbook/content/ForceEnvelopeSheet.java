package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import spanledger.analysis.SegmentEffect;
import spanledger.envelope.Governing;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** The greatest internal forces of members, with the cut and the combination that cause them. */
final class ForceEnvelopeSheet {

  private static final Set<SegmentEffect> FORCES =
      Set.of(SegmentEffect.AXIAL, SegmentEffect.SHEAR_Y, SegmentEffect.SHEAR_Z);

  private ForceEnvelopeSheet() {}

  static void write(LedgerWorkbook workbook, List<ShownForces.Row> rows, CutSheets cuts) {
    LedgerSheet sheet = workbook.sheet(SheetNames.FORCE_ENVELOPE);
    sheet.title(
        "Force envelope",
        "The greatest internal forces, by size, of members made alike: cut, combination, pattern and"
            + " place of the moving load.");
    sheet.note(
        "Left: the greatest of all strength combinations whose cases are in this workbook, by"
            + " formula from its cut. Right: the greatest of all strength combinations, patterns and"
            + " places of moving loads, found by search. Where the left is less than the right, the"
            + " case of the right is not in this workbook, as it governs no check; a user case with"
            + " the moving load at that place brings it in. The results file has the greatest and"
            + " the least of every member.");
    sheet.note(
        "Sums over load cases, first order, also of combinations that were solved as states: those"
            + " stand on State cuts, where they govern a check.");
    write(sheet, "Forces", Dimension.FORCE, rows, true, cuts);
    write(sheet, "Moments", Dimension.MOMENT, rows, false, cuts);
  }

  private static void write(
      LedgerSheet sheet,
      String title,
      Dimension dimension,
      List<ShownForces.Row> all,
      boolean forces,
      CutSheets cuts) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (ShownForces.Row row : all) {
      if (FORCES.contains(row.found().effect()) == forces) {
        rows.add(row(row, cuts, sheet.name()));
      }
    }
    if (!rows.isEmpty()) {
      sheet.add(new DataTable(title, columns(dimension), rows));
    }
  }

  private static List<LedgerCell> row(ShownForces.Row row, CutSheets cuts, String sheet) {
    Cut cut = row.shown();
    Governing found = row.found().governing();
    NumberAt shown = cuts.force(cut, row.found().effect().symbol());
    double greatest = Math.abs(found.value());
    TreeSet<String> alike = new TreeSet<>(row.members());
    alike.remove(cut.station().segment().member().name());
    return List.of(
        LedgerCell.text(cut.station().segment().member().name()),
        LedgerCell.text(row.found().effect().symbol()),
        LedgerCell.linked(shown),
        LedgerCell.text(Integer.toString(cuts.row(cut) + 1)),
        LedgerCell.text(cut.station().words()),
        LedgerCell.text(cut.instance().words()),
        LedgerCell.solved(greatest),
        LedgerCell.text(found.station().words()),
        LedgerCell.text(found.instance().words()),
        LedgerCell.live(
            "ABS(" + shown.from(sheet) + ")/{greatest}", Math.abs(shown.value()) / greatest),
        LedgerCell.text(String.join(", ", alike)));
  }

  private static List<Column> columns(Dimension dimension) {
    return List.of(
        Column.text("member", 22),
        Column.text("force", 8),
        Column.number("value", "from the cut", dimension),
        Column.text("cut", 8),
        Column.text("place", 26),
        Column.text("combination", 70),
        Column.number("greatest", "size, found by search", dimension),
        Column.text("its place", 26),
        Column.text("its combination", 70),
        Column.number("share", "size of value per greatest", Dimension.NONE),
        Column.wrapped("stands for", 50));
  }
}
