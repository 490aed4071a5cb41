package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.workbook.layout.InputCell;

/** Gathers the inputs of a procedure by their symbols. */
final class Inputs {

  private Inputs() {}

  /**
   * One cell per input, in the procedure's order, as {@code source} gives it for the input's
   * symbol.
   */
  static List<InputCell> of(CompiledProcedure procedure, Function<String, InputCell> source) {
    List<InputCell> cells = new ArrayList<>();
    for (Input input : procedure.procedure().inputs()) {
      cells.add(source.apply(input.symbol().symbol()));
    }
    return cells;
  }
}
