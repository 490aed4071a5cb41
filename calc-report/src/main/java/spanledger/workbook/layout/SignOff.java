package spanledger.workbook.layout;

import java.util.List;

/** Lines for those who answer for the calculation, to be filled in by hand. */
public record SignOff() implements Block<Integer> {

  private static final List<String> PARTS = List.of("Prepared by", "Checked by", "Approved by");
  private static final List<String> FIELDS =
      List.of("", "Name", "Licence or registration no.", "Date", "Signature");
  private static final double HEIGHT = 30;

  /** The number of lines written. */
  @Override
  public Integer writeTo(LedgerSheet sheet) {
    sheet.heading("Sign-off");
    int head = sheet.take(1);
    for (int column = 0; column < FIELDS.size(); column++) {
      sheet.cells().text(head, column, CellRole.CAPTION, sheet.styles(), FIELDS.get(column));
    }
    for (String part : PARTS) {
      int row = sheet.take(1);
      sheet.cells().height(row, HEIGHT);
      sheet.cells().text(row, 0, CellRole.FIELD, sheet.styles(), part);
      for (int column = 1; column < FIELDS.size(); column++) {
        sheet.cells().blank(row, column, sheet.styles().of(CellRole.FIELD));
      }
    }
    return PARTS.size();
  }
}
