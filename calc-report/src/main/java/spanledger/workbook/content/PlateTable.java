package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.SectionStudy;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateDoubt;
import spanledger.section.plate.PlateKind;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** The plates of a section with their slenderness, and what the program is unsure about. */
final class PlateTable {

  private final DataCells greatest;
  private final String sheetName;

  private PlateTable(LedgerSheet sheet, SectionStudy study, Source source) {
    sheetName = sheet.name();
    List<Plate> plates = study.plates().plates();
    if (!study.plates().isSure()) {
      sheet.note(
          "UNSURE: local buckling is NOT CHECKED until the user settles what is marked below, by"
              + " naming the plates in the file.");
    }
    DataCells cells = sheet.add(plates(study, plates, source));
    for (Plate removed : study.edits().removed()) {
      sheet.note("The user took away the recognised plate " + removed.name() + ".");
    }
    for (PlateDoubt doubt : study.edits().settled()) {
      sheet.note("Settled by the user, at " + doubt.where() + ": " + doubt.because() + ".");
    }
    if (!study.plates().doubts().isEmpty()) {
      doubts(sheet, study.plates().doubts());
    }
    greatest =
        sheet.add(
            new DataTable(
                "Slenderness used",
                List.of(
                    Column.text("symbol", 8),
                    Column.text("most slender", 30),
                    Column.number("b/t", "0 if there is none", Dimension.NONE)),
                List.of(
                    used("s_web", "inner plate along z", cells, i -> inner(plates.get(i), true)),
                    used(
                        "s_flange_int",
                        "inner plate along y",
                        cells,
                        i -> inner(plates.get(i), false)),
                    used("s_flange_out", "outstand", cells, i -> outstand(plates.get(i))),
                    used(
                        "s_round",
                        "round tube",
                        cells,
                        i -> plates.get(i).kind() == PlateKind.ROUND))));
  }

  static PlateTable write(LedgerSheet sheet, SectionStudy study, Source source) {
    return new PlateTable(sheet, study, source);
  }

  private static boolean inner(Plate plate, boolean upright) {
    return plate.kind() == PlateKind.INTERNAL && plate.isUpright() == upright;
  }

  private static boolean outstand(Plate plate) {
    return plate.kind() != PlateKind.INTERNAL && plate.kind() != PlateKind.ROUND;
  }

  private static DataTable plates(SectionStudy study, List<Plate> plates, Source source) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Plate plate : plates) {
      String edited = study.edits().words(plate);
      rows.add(
          List.of(
              LedgerCell.text(plate.name()),
              LedgerCell.text(plate.kind().words()),
              LedgerCell.given(plate.width()),
              LedgerCell.given(plate.thickness()),
              LedgerCell.live("{b}/{t}", plate.slenderness()),
              LedgerCell.text(plate.start() + " to " + plate.end()),
              LedgerCell.text(plate.certainty().words()),
              LedgerCell.text(
                  edited.isEmpty()
                      ? "recognised in the outline, see the picture"
                      : edited + ", " + source.citation())));
    }
    return new DataTable(
        "Plates for local buckling",
        List.of(
            Column.text("plate", 8),
            Column.text("kind", 30),
            Column.number("b", "flat width; outer diameter", Dimension.LENGTH),
            Column.number("t", "thickness", Dimension.LENGTH),
            Column.number("b/t", "slenderness", Dimension.NONE),
            Column.text("midline from y, z to y, z", 34),
            Column.wrapped("certainty", 44),
            Column.wrapped(DataTable.SOURCE_HEADING, 34)),
        rows);
  }

  private static void doubts(LedgerSheet sheet, List<PlateDoubt> doubts) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (PlateDoubt doubt : doubts) {
      rows.add(
          List.of(
              LedgerCell.text(doubt.where().toString()),
              LedgerCell.text(doubt.because()),
              LedgerCell.judged(Outcome.NOT_CHECKED)));
    }
    sheet.add(
        new DataTable(
            "Someone has to look",
            List.of(
                Column.text("at y, z", 24),
                Column.wrapped("because", 60),
                Column.text("local buckling", 14)),
            rows));
  }

  private List<LedgerCell> used(String symbol, String words, DataCells cells, IntPredicate counts) {
    List<String> addresses = new ArrayList<>();
    double value = 0;
    for (int row = 0; row < cells.rows(); row++) {
      if (counts.test(row)) {
        NumberAt slenderness = cells.number(row, "b/t");
        addresses.add(slenderness.from(sheetName));
        value = Math.max(value, slenderness.value());
      }
    }
    String formula = addresses.isEmpty() ? "0" : "MAX(" + String.join(",", addresses) + ")";
    return List.of(
        LedgerCell.text(symbol), LedgerCell.text(words), LedgerCell.live(formula, value));
  }

  /** The greatest slenderness of a kind of plates, by the symbol of the section property. */
  NumberAt slenderness(String symbol) {
    return greatest.number(
        List.of("s_web", "s_flange_int", "s_flange_out", "s_round").indexOf(symbol), "b/t");
  }
}
