package spanledger.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A design calculation as data: inputs, then steps in order, each with its formula and source.
 *
 * <p>The same definition is evaluated in Java ({@link #compile}), written as live spreadsheet
 * formulas ({@link SpreadsheetFormula}) and printed ({@link SymbolicText}, {@link NumericText}).
 *
 * @param name a short name without spaces, unique among procedures
 * @param title what the procedure works out
 * @param inputs the inputs in order
 * @param steps the steps in order
 */
public record Procedure(String name, String title, List<Input> inputs, List<Step> steps) {

  public Procedure {
    inputs = List.copyOf(inputs);
    steps = List.copyOf(steps);
  }

  /** Starts a procedure. */
  public static Builder named(String name, String title) {
    return new Builder(name, title);
  }

  /** Prepares the procedure for fast evaluation. */
  public CompiledProcedure compile() {
    return new CompiledProcedure(this);
  }

  /**
   * The reference to an input or step.
   *
   * @throws IllegalArgumentException if there is none of that symbol
   */
  public Reference symbol(String symbol) {
    for (Input input : inputs) {
      if (input.symbol().symbol().equals(symbol)) {
        return input.symbol();
      }
    }
    for (Step step : steps) {
      if (step.symbol().symbol().equals(symbol)) {
        return step.symbol();
      }
    }
    throw new IllegalArgumentException("Procedure " + name + " has no symbol " + symbol + ".");
  }

  /** Collects inputs and steps; each call returns the reference that later formulas use. */
  public static final class Builder {
    private final String name;
    private final String title;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final Map<String, Reference> known = new HashMap<>();

    private Builder(String name, String title) {
      this.name = name;
      this.title = title;
    }

    /** Declares an input. */
    public Reference input(String symbol, String words, Dimension dimension, Domain domain) {
      Reference reference = remember(symbol, dimension);
      inputs.add(new Input(reference, words, domain));
      return reference;
    }

    /** Declares an input that may be any finite number. */
    public Reference input(String symbol, String words, Dimension dimension) {
      return input(symbol, words, dimension, Domain.ANY);
    }

    /**
     * Adds a step.
     *
     * @param dimension the dimension the author expects; a formula of another dimension is refused
     * @throws DimensionMismatchException if the formula has another dimension
     * @throws IllegalArgumentException if the symbol is taken or the formula uses an unknown symbol
     */
    public Reference step(
        String symbol, String words, Dimension dimension, Expression formula, Source source) {
      if (!formula.dimension().equals(dimension)) {
        throw new DimensionMismatchException(
            "Step "
                + symbol
                + " of "
                + name
                + " should be in "
                + dimension
                + ", but its formula "
                + SymbolicText.of(formula)
                + " is in "
                + formula.dimension()
                + ".");
      }
      References.of(formula).forEach(this::requireKnown);
      Reference reference = remember(symbol, dimension);
      steps.add(new Step(reference, words, formula, source));
      return reference;
    }

    /** Finishes the procedure. */
    public Procedure build() {
      return new Procedure(name, title, inputs, steps);
    }

    private void requireKnown(Reference reference) {
      if (!reference.equals(known.get(reference.symbol()))) {
        throw new IllegalArgumentException(
            "A step of "
                + name
                + " uses "
                + reference.symbol()
                + ", which is not defined before it.");
      }
    }

    private Reference remember(String symbol, Dimension dimension) {
      Reference reference = new Reference(symbol, dimension);
      if (known.putIfAbsent(symbol, reference) != null) {
        throw new IllegalArgumentException("Procedure " + name + " defines " + symbol + " twice.");
      }
      return reference;
    }
  }
}
