package spanledger.workbook.layout;

import spanledger.procedure.CompiledProcedure;

/** Where the numbers of a written {@link Calculation} stand. */
public final class CalculationCells {

  private final CompiledProcedure procedure;
  private final double[] values;
  private final WorkedLines lines;

  CalculationCells(CompiledProcedure procedure, double[] values, WorkedLines lines) {
    this.procedure = procedure;
    this.values = values;
    this.lines = lines;
  }

  /** An input or step. */
  public NumberAt number(String symbol) {
    int slot = procedure.slot(symbol);
    return new NumberAt(lines.place(slot), values[slot]);
  }
}
