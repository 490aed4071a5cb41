package spanledger.workbook.layout;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.procedure.Step;

/**
 * A procedure worked out once, written downwards.
 *
 * @param title over it; may be empty
 * @param procedure what is worked out
 * @param inputs in the procedure's order
 */
public record Calculation(String title, CompiledProcedure procedure, List<InputCell> inputs)
    implements Block<CalculationCells> {

  public Calculation {
    inputs = List.copyOf(inputs);
  }

  /**
   * Where the numbers stand.
   *
   * @throws IllegalArgumentException if the procedure does not accept the inputs
   */
  @Override
  public CalculationCells writeTo(LedgerSheet sheet) {
    double[] values = procedure.run(inputs.stream().mapToDouble(InputCell::value).toArray());
    if (!title.isEmpty()) {
      sheet.heading(title);
    }
    WorkedLines lines = new WorkedLines(sheet, procedure, values);
    lines.header("check");
    List<Input> declared = procedure.procedure().inputs();
    for (int i = 0; i < declared.size(); i++) {
      InputCell cell = inputs.get(i);
      String origin =
          cell instanceof InputCell.Linked linked
              ? "from " + linked.target().from(sheet.name())
              : InputSources.kind(cell);
      int row = lines.input(i, declared.get(i), origin, InputSources.source(cell));
      NumberPattern pattern = NumberPattern.of(declared.get(i).symbol().dimension(), values[i]);
      InputCells.write(sheet, row, WorkedLines.VALUE, cell, pattern);
    }
    List<Step> steps = procedure.procedure().steps();
    for (int i = 0; i < steps.size(); i++) {
      int slot = declared.size() + i;
      Step step = steps.get(i);
      lines.step(slot, step, NumberPattern.of(step.symbol().dimension(), values[slot]));
    }
    return new CalculationCells(procedure, values, lines);
  }
}
