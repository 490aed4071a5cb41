package spanledger.procedure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A procedure ready to run: inputs and steps have places in a {@code double[]}, inputs first, both
 * in the procedure's order.
 *
 * <p>Immutable and safe to share between threads; {@link #evaluate} allocates nothing.
 */
public final class CompiledProcedure {

  private final Procedure procedure;
  private final Evaluator[] evaluators;
  private final Domain[] domains;
  private final Map<String, Integer> slots = new HashMap<>();

  CompiledProcedure(Procedure procedure) {
    this.procedure = procedure;
    for (Input input : procedure.inputs()) {
      slots.put(input.symbol().symbol(), slots.size());
    }
    domains = procedure.inputs().stream().map(Input::domain).toArray(Domain[]::new);
    List<Step> steps = procedure.steps();
    evaluators = new Evaluator[steps.size()];
    for (int i = 0; i < evaluators.length; i++) {
      evaluators[i] = EvaluatorCompiler.compile(steps.get(i).expression(), slots);
      slots.put(steps.get(i).symbol().symbol(), slots.size());
    }
  }

  /** The definition this was made from. */
  public Procedure procedure() {
    return procedure;
  }

  /** How many places {@link #evaluate} needs. */
  public int slotCount() {
    return slots.size();
  }

  /** A new array with a place for every input and step. */
  public double[] newSlots() {
    return new double[slotCount()];
  }

  /**
   * The place of an input or step.
   *
   * @throws IllegalArgumentException if there is none of that symbol
   */
  public int slot(String symbol) {
    Integer slot = slots.get(symbol);
    if (slot == null) {
      throw new IllegalArgumentException(
          "Procedure " + procedure.name() + " has no symbol " + symbol + ".");
    }
    return slot;
  }

  /**
   * Works out every step. A step that has no value for these inputs becomes NaN, and so do the
   * steps that need it; see {@link #run} for the checked form.
   *
   * @param values finite inputs in their places on entry, steps in theirs on return; modified
   */
  public void evaluate(double[] values) {
    int place = domains.length;
    for (Evaluator evaluator : evaluators) {
      values[place++] = evaluator.value(values);
    }
  }

  /**
   * Works out every step after checking the inputs.
   *
   * @param inputs the inputs in the procedure's order, not modified
   * @return all values by place
   * @throws OutOfDomainException naming the input that is out of its domain, or the step that has
   *     no value for these inputs
   */
  public double[] run(double... inputs) {
    if (inputs.length != domains.length) {
      throw new IllegalArgumentException(
          procedure.name() + " takes " + domains.length + " inputs, found " + inputs.length + ".");
    }
    double[] values = newSlots();
    System.arraycopy(inputs, 0, values, 0, inputs.length);
    evaluate(values);
    requireInDomain(values);
    return values;
  }

  /**
   * Checks evaluated values.
   *
   * @throws OutOfDomainException naming the input that is out of its domain, or the step that has
   *     no value for these inputs
   */
  public void requireInDomain(double[] values) {
    if (!isInDomain(values)) {
      throwOutOfDomain(values);
    }
  }

  private boolean isInDomain(double[] values) {
    for (int i = 0; i < domains.length; i++) {
      if (!domains[i].contains(values[i])) {
        return false;
      }
    }
    for (int i = domains.length; i < domains.length + evaluators.length; i++) {
      if (!Double.isFinite(values[i])) {
        return false;
      }
    }
    return true;
  }

  private void throwOutOfDomain(double[] values) {
    int place = 0;
    for (Input input : procedure.inputs()) {
      double value = values[place++];
      if (!input.domain().contains(value)) {
        throw new OutOfDomainException(
            procedure.title()
                + ": "
                + input.words()
                + " ("
                + input.symbol().symbol()
                + ") is "
                + NumberText.readable(value)
                + unit(input.symbol())
                + ", but must be "
                + input.domain().words()
                + ".");
      }
    }
    for (Step step : procedure.steps()) {
      if (!Double.isFinite(values[place++])) {
        throw new OutOfDomainException(
            procedure.title()
                + ": "
                + step.words()
                + " ("
                + step.symbol().symbol()
                + ") has no value: "
                + NumericText.of(step.expression(), r -> values[slot(r.symbol())])
                + ".");
      }
    }
  }

  private static String unit(Reference reference) {
    return reference.dimension().isNone() ? "" : " " + reference.dimension().coreUnit();
  }
}
