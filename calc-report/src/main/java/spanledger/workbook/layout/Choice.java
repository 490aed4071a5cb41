package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A cell in which the reviewer chooses one of several texts from a list; worked pages follow it.
 *
 * @param what what is chosen
 * @param options the cells that hold the texts, one below the other
 * @param chosen the text chosen at first
 */
public record Choice(String what, CellRange options, String chosen) implements Block<CellAddress> {

  /** The cell with the chosen text. */
  @Override
  public CellAddress writeTo(LedgerSheet sheet) {
    int row = sheet.take(1);
    SheetCells cells = sheet.cells();
    CellAddress choice = sheet.at(row, WorkedLines.FORMULA);
    cells.text(row, WorkedLines.WORDS, CellRole.UNRULED_SYMBOL, sheet.styles(), what);
    cells.text(row, WorkedLines.FORMULA, CellRole.DRIVER, sheet.styles(), chosen);
    cells.height(row, 18);
    restrict(sheet.library(), choice);
    return choice;
  }

  private void restrict(XSSFSheet sheet, CellAddress choice) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    CellRangeAddressList cell =
        new CellRangeAddressList(choice.row(), choice.row(), choice.column(), choice.column());
    DataValidation validation =
        helper.createValidation(helper.createFormulaListConstraint(options.absolute()), cell);
    validation.setShowErrorBox(true);
    validation.createErrorBox("Not in the list", "Choose one from the list.");
    validation.setShowPromptBox(true);
    validation.createPromptBox(what, "Choose from the list; what is below follows.");
    sheet.addValidationData(validation);
  }
}
