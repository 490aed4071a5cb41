package spanledger.joint.sharing;

import java.util.function.Function;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;

/** A procedure of one part of a face, and what a unit of each of its last three inputs gives. */
final class FaceModel {

  private final CompiledProcedure compiled;

  FaceModel(Procedure procedure) {
    compiled = procedure.compile();
  }

  /** The values of named steps for the given inputs. */
  Function<String, Double> run(double... inputs) {
    double[] values = compiled.run(inputs);
    return symbol -> values[compiled.slot(symbol)];
  }

  /**
   * What a step that grows in proportion to the movement gains by a unit of each movement.
   *
   * @param step symbol of the step
   * @param given the inputs before the three movements
   */
  double[] perMovement(String step, double... given) {
    double[] gain = new double[3];
    double[] inputs = new double[given.length + 3];
    System.arraycopy(given, 0, inputs, 0, given.length);
    for (int i = 0; i < 3; i++) {
      inputs[given.length + i] = 1;
      gain[i] = run(inputs).apply(step);
      inputs[given.length + i] = 0;
    }
    return gain;
  }
}
