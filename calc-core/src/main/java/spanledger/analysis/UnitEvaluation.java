package spanledger.analysis;

import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * The matrix of a procedure that is linear in some of its inputs, found by evaluating it with each
 * of them set to 1 in turn and the others to 0. The formula stays in the procedure alone.
 */
final class UnitEvaluation {

  private final CompiledProcedure procedure;
  private final int[] inputs;
  private final int[] results;

  UnitEvaluation(CompiledProcedure procedure, List<String> inputs, List<String> results) {
    this.procedure = procedure;
    this.inputs = inputs.stream().mapToInt(procedure::slot).toArray();
    this.results = results.stream().mapToInt(procedure::slot).toArray();
  }

  /**
   * The matrix, row by row: a row per result, a column per input.
   *
   * @param slots places of the procedure with all its other inputs set; modified
   */
  double[] matrix(double[] slots) {
    double[] matrix = new double[results.length * inputs.length];
    for (int input : inputs) {
      slots[input] = 0;
    }
    for (int column = 0; column < inputs.length; column++) {
      slots[inputs[column]] = 1;
      procedure.evaluate(slots);
      slots[inputs[column]] = 0;
      for (int row = 0; row < results.length; row++) {
        matrix[row * inputs.length + column] = slots[results[row]];
      }
    }
    return matrix;
  }
}
