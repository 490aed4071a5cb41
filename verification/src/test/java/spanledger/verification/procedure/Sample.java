package spanledger.verification.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.procedure.SpreadsheetFormula;
import spanledger.procedure.SymbolicText;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A formula over inputs {@code a}, {@code b} ... that stand in columns A, B ... of a row.
 *
 * @param inputs the values of the inputs in order
 */
record Sample(Expression formula, List<Double> inputs) {

  /** The input of a column, counted from zero. */
  static Reference input(int column) {
    return new Reference(String.valueOf((char) ('a' + column)), Dimension.NONE);
  }

  /** The column of an input, counted from zero. */
  static int column(Reference input) {
    return input.symbol().charAt(0) - 'a';
  }

  /** The value that the compiled procedure gives; NaN if none. */
  double evaluated() {
    Procedure.Builder p = Procedure.named("sample", "A sample");
    for (int i = 0; i < inputs.size(); i++) {
      Reference input = input(i);
      p.input(input.symbol(), "an input", Dimension.NONE);
    }
    p.step("result", "the result", Dimension.NONE, formula, Source.derived("nothing"));
    CompiledProcedure compiled = p.build().compile();
    double[] values = compiled.newSlots();
    for (int i = 0; i < inputs.size(); i++) {
      values[i] = inputs.get(i);
    }
    compiled.evaluate(values);
    return values[compiled.slot("result")];
  }

  /** The value and what may fairly be asked of another program; empty if nothing can be asked. */
  Optional<Estimate> estimated() {
    try {
      return Optional.of(new Estimator(inputs).of(formula));
    } catch (Estimate.UndecidedException e) {
      return Optional.empty();
    }
  }

  /** The spreadsheet formula for a row, counted from one. */
  String spreadsheetFormula(int row) {
    return SpreadsheetFormula.of(formula, r -> (char) ('A' + column(r)) + Integer.toString(row));
  }

  /**
   * Writes the inputs and, behind them, the formula. Negative zero is written as zero, as in every
   * workbook: some programs find a typed -0 less than 0.
   *
   * @return the cell of the formula
   */
  Cell write(Row row) {
    for (int i = 0; i < inputs.size(); i++) {
      row.createCell(i).setCellValue(inputs.get(i) + 0.0);
    }
    Cell cell = row.createCell(inputs.size());
    cell.setCellFormula(spreadsheetFormula(row.getRowNum() + 1));
    return cell;
  }

  boolean fitsIntoACell() {
    try {
      return !spreadsheetFormula(9999).isEmpty();
    } catch (IllegalArgumentException tooLong) {
      return false;
    }
  }

  @Override
  public String toString() {
    List<String> given = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      given.add(input(i).symbol() + " = " + inputs.get(i));
    }
    return SymbolicText.of(formula) + " for " + String.join(", ", given);
  }
}
