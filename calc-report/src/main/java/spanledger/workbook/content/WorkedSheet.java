package spanledger.workbook.content;

import java.util.List;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.WorkedPage;

/** Pages that show one row of the tables in full, symbol by symbol. */
final class WorkedSheet {

  private WorkedSheet() {}

  /**
   * Writes the pages.
   *
   * @param strength the tables of the strength check, in order
   * @param cut the row shown at first in the first of them, from 0
   * @param stressRow the row shown at first in the others
   * @param byCode the tables of the member code, each with the row shown at first
   * @param deflection the tables of the deflection check
   */
  static void write(
      LedgerWorkbook workbook,
      List<ProcedureCells> strength,
      int cut,
      int stressRow,
      List<MemberCodeSheets.Row> byCode,
      List<ProcedureCells> deflection) {
    LedgerSheet sheet = workbook.sheet(SheetNames.WORKED);
    sheet.title(
        "Worked page",
        "One row of each table in full. Change the number in a thick box to see another row; every"
            + " step is worked out again here and compared with its table.");
    for (int i = 0; i < strength.size(); i++) {
      ProcedureCells table = strength.get(i);
      sheet.heading(table.procedure().procedure().title());
      sheet.add(new WorkedPage(table, i == 0 ? cut : stressRow));
    }
    for (MemberCodeSheets.Row row : byCode) {
      sheet.heading(row.table().procedure().procedure().title());
      sheet.add(new WorkedPage(row.table(), row.row()));
    }
    for (ProcedureCells table : deflection) {
      sheet.heading(table.procedure().procedure().title());
      sheet.add(new WorkedPage(table, 0));
    }
  }
}
