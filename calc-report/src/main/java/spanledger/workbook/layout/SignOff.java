package spanledger.workbook.layout;

import java.util.List;

/** Lines for those who answer for the calculation, to be filled in by hand. */
public record SignOff() implements Block<Integer> {

  private static final List<String> PARTS = List.of("Prepared by", "Checked by", "Approved by");
  private static final int LAST_COLUMN = 4;
  private static final double HEIGHT = 24;

  /** The number of lines written. */
  @Override
  public Integer writeTo(LedgerSheet sheet) {
    sheet.heading("Sign-off");
    for (String part : PARTS) {
      line(sheet, part, "Name", "Licence or registration no.:");
      line(sheet, "", "Date", "Signature:");
      sheet.skip(1);
    }
    return PARTS.size();
  }

  private static void line(LedgerSheet sheet, String part, String left, String right) {
    int row = sheet.take(1);
    sheet.cells().height(row, HEIGHT);
    sheet.cells().text(row, 0, CellRole.FIELD, sheet.styles(), part);
    sheet.cells().text(row, 1, CellRole.FIELD, sheet.styles(), left);
    for (int column = 2; column < LAST_COLUMN; column++) {
      sheet.cells().blank(row, column, sheet.styles().of(CellRole.FIELD));
    }
    sheet.cells().text(row, LAST_COLUMN, CellRole.FIELD, sheet.styles(), right);
  }
}
