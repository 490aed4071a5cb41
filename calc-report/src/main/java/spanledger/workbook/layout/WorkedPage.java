package spanledger.workbook.layout;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import spanledger.procedure.Input;
import spanledger.procedure.Step;

/**
 * One row of a procedure's table in full, symbol by symbol. The reviewer chooses the row in one
 * cell, or it follows from what was chosen elsewhere; inputs are fetched from the table, and every
 * step is worked out again on the page and compared with the table.
 *
 * @param table the table
 * @param shownRow the row shown at first, from 0
 * @param following what the row follows from; empty if the reviewer chooses its number
 */
public record WorkedPage(ProcedureCells table, int shownRow, Optional<Following> following)
    implements Block<CellAddress> {

  /**
   * A row that follows from what was chosen elsewhere: the one whose first label is a text. If no
   * row has that label, the page says so and shows the row shown at first.
   *
   * @param label a formula for the text
   * @param found whether a row has it, as the workbook is written
   */
  public record Following(String label, boolean found) {}

  /** Two evaluations of one formula may differ by rounding only. */
  private static final String RELATIVE_TOLERANCE = "0.000000001";

  /** A page on which the reviewer chooses the row by its number. */
  public WorkedPage(ProcedureCells table, int shownRow) {
    this(table, shownRow, Optional.empty());
  }

  public WorkedPage {
    if (shownRow < 0 || shownRow >= table.rows()) {
      throw new IllegalArgumentException(
          "Row " + shownRow + " cannot be shown, the table has " + table.rows() + " rows.");
    }
  }

  /** The cell in which the reviewer chooses the row, counted from 1. */
  @Override
  public CellAddress writeTo(LedgerSheet sheet) {
    CellAddress driver =
        following.isPresent() ? writeFollowing(sheet, following.get()) : writeDriver(sheet);
    int overall = sheet.take(1);
    writeLabels(sheet, driver);
    sheet.skip(1);
    WorkedLines lines = new WorkedLines(sheet, table.procedure(), table.plan().values()[shownRow]);
    lines.header("check");
    writeInputs(sheet, lines, driver);
    int first = sheet.nextRow();
    writeSteps(lines, driver);
    writeOverall(sheet, overall, first);
    return driver;
  }

  private CellAddress writeDriver(LedgerSheet sheet) {
    SheetCells cells = sheet.cells();
    int row = sheet.take(1);
    int last = table.rows();
    CellAddress driver = sheet.at(row, WorkedLines.VALUE);
    cells.text(
        row,
        WorkedLines.WORDS,
        CellRole.UNRULED_SYMBOL,
        sheet.styles(),
        "Row of " + table.sheet() + " shown on this page");
    cells.text(
        row,
        WorkedLines.FORMULA,
        CellRole.UNRULED,
        sheet.styles(),
        "change the number in the thick box to see another, from 1 to " + last);
    cells.number(
        row,
        WorkedLines.VALUE,
        sheet.styles().of(CellRole.DRIVER, NumberPattern.WHOLE),
        shownRow + 1.0);
    cells.height(row, 18);
    String at = driver.fixed();
    String valid = "AND(" + at + ">=1," + at + "<=" + last + "," + at + "=INT(" + at + "))";
    cells.formula(
        row,
        WorkedLines.CHECK,
        CellRole.UNRULED_OUTCOME,
        sheet.styles(),
        Outcome.formula(valid, Outcome.IN_RANGE, Outcome.OUT_OF_RANGE),
        Outcome.IN_RANGE.words());
    sheet.judged(row, row, WorkedLines.CHECK);
    restrict(sheet.library(), driver, last);
    return driver;
  }

  private CellAddress writeFollowing(LedgerSheet sheet, Following row) {
    SheetCells cells = sheet.cells();
    int line = sheet.take(1);
    CellAddress driver = sheet.at(line, WorkedLines.VALUE);
    cells.text(
        line,
        WorkedLines.WORDS,
        CellRole.UNRULED_SYMBOL,
        sheet.styles(),
        "Row of " + table.sheet() + " shown here");
    cells.text(
        line,
        WorkedLines.FORMULA,
        CellRole.UNRULED,
        sheet.styles(),
        "follows from what is chosen; out of range if that has no such row");
    String match = "MATCH(" + row.label() + "," + table.labels(0).from(sheet.name()) + ",0)";
    String found = "ISNUMBER(" + match + ")";
    cells.formula(
        line,
        WorkedLines.VALUE,
        sheet.styles().of(CellRole.UNRULED_NUMBER, NumberPattern.WHOLE),
        FormulaRules.required("IF(" + found + "," + match + "," + (shownRow + 1) + ")"),
        shownRow + 1.0);
    Outcome now = row.found() ? Outcome.IN_RANGE : Outcome.OUT_OF_RANGE;
    cells.formula(
        line,
        WorkedLines.CHECK,
        CellRole.UNRULED_OUTCOME,
        sheet.styles(),
        Outcome.formula(found, Outcome.IN_RANGE, Outcome.OUT_OF_RANGE),
        now.words());
    sheet.judged(line, line, WorkedLines.CHECK);
    return driver;
  }

  private static void restrict(XSSFSheet sheet, CellAddress driver, int last) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint whole =
        helper.createIntegerConstraint(
            DataValidationConstraint.OperatorType.BETWEEN, "1", Integer.toString(last));
    CellRangeAddressList cell =
        new CellRangeAddressList(driver.row(), driver.row(), driver.column(), driver.column());
    DataValidation validation = helper.createValidation(whole, cell);
    validation.setShowErrorBox(true);
    validation.createErrorBox("No such row", "Give a whole number from 1 to " + last + ".");
    validation.setShowPromptBox(true);
    validation.createPromptBox("Row shown", "A whole number from 1 to " + last + ".");
    sheet.addValidationData(validation);
  }

  private void writeLabels(LedgerSheet sheet, CellAddress driver) {
    List<ProcedureTable.Label> labels = table.plan().table().labels();
    List<String> words = table.plan().table().rows().get(shownRow).labels();
    for (int i = 0; i < labels.size(); i++) {
      fetched(sheet, labels.get(i).heading(), index(table.labels(i), driver), words.get(i));
    }
    table
        .sources()
        .ifPresent(
            column ->
                fetched(
                    sheet,
                    "sources of this row's inputs",
                    index(column, driver),
                    table.plan().sources().ofRow(shownRow)));
  }

  /** Words of the row, fetched; joining with nothing keeps an empty text from turning into 0. */
  private static void fetched(LedgerSheet sheet, String what, String index, String words) {
    SheetCells cells = sheet.cells();
    int row = sheet.take(1);
    cells.text(row, WorkedLines.WORDS, CellRole.UNRULED, sheet.styles(), what);
    cells.formula(
        row, WorkedLines.FORMULA, CellRole.UNRULED_WRAPPED, sheet.styles(), index + "&\"\"", words);
  }

  private void writeInputs(LedgerSheet sheet, WorkedLines lines, CellAddress driver) {
    List<Input> inputs = table.procedure().procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      String formula;
      String origin;
      if (table.plan().hasColumn(i)) {
        CellRange column = table.column(inputs.get(i).symbol().symbol());
        formula = index(column, driver);
        origin =
            table.sheet()
                + ", column "
                + CellAddress.letters(column.first().column())
                + " ("
                + table.plan().sources().kind(i)
                + ")";
      } else if (table.plan().inline().isFixed(i)) {
        formula = table.plan().inline().target(i, shownRow).from(sheet.name());
        origin = "from " + formula;
      } else {
        CellRange span = table.plan().inline().span(i);
        CellRange keys = table.keys(table.plan().inline().keyIndex(i));
        formula =
            "INDEX("
                + span.from(sheet.name())
                + ","
                + index(keys, driver)
                + "-ROW("
                + span.first().from(sheet.name())
                + ")+1)";
        origin =
            "from "
                + span.first().sheet()
                + ", column "
                + CellAddress.letters(span.first().column());
      }
      String source =
          table.plan().hasColumn(i) && !table.plan().sources().differs(i)
              ? table.plan().sources().source(i)
              : "";
      int row = lines.input(i, inputs.get(i), origin, source);
      CellRole role = source.isEmpty() ? CellRole.FORMULA : CellRole.UNRULED_NUMBER;
      sheet
          .cells()
          .formula(
              row,
              WorkedLines.VALUE,
              sheet.styles().of(role, table.plan().pattern(i)),
              formula,
              table.plan().values()[shownRow][i]);
    }
  }

  private void writeSteps(WorkedLines lines, CellAddress driver) {
    List<Step> steps = table.procedure().procedure().steps();
    int inputs = table.procedure().procedure().inputs().size();
    for (int i = 0; i < steps.size(); i++) {
      int slot = inputs + i;
      int row = lines.step(slot, steps.get(i), table.plan().pattern(slot));
      String here = lines.place(slot).fixed();
      String there = index(table.column(steps.get(i).symbol().symbol()), driver);
      String close =
          "ABS("
              + here
              + "-"
              + there
              + ")<="
              + RELATIVE_TOLERANCE
              + "*MAX(ABS("
              + here
              + "),ABS("
              + there
              + "))";
      lines.judge(
          row, false, Outcome.formula(close, Outcome.AGREES, Outcome.DIFFERS), Outcome.AGREES);
    }
  }

  private static void writeOverall(LedgerSheet sheet, int row, int firstStep) {
    CellRange checks =
        sheet.at(firstStep, WorkedLines.CHECK).to(sheet.at(sheet.nextRow() - 1, WorkedLines.CHECK));
    sheet
        .cells()
        .text(
            row,
            WorkedLines.WORDS,
            CellRole.UNRULED,
            sheet.styles(),
            "All steps worked out here and in the table");
    String condition =
        "COUNTIF("
            + checks.from(sheet.name())
            + ",\""
            + Outcome.AGREES.words()
            + "\")="
            + (checks.rows() + 1) / 2;
    sheet
        .cells()
        .formula(
            row,
            WorkedLines.CHECK,
            CellRole.UNRULED_OUTCOME,
            sheet.styles(),
            Outcome.formula(condition, Outcome.AGREES, Outcome.DIFFERS),
            Outcome.AGREES.words());
    sheet.judged(row, row, WorkedLines.CHECK);
  }

  private static String index(CellRange column, CellAddress driver) {
    return "INDEX(" + column.from(driver.sheet()) + "," + driver.fixed() + ")";
  }
}
