package spanledger.procedure;

/** A formula with its references resolved to places. */
@FunctionalInterface
interface Evaluator {
  double value(double[] slots);
}
