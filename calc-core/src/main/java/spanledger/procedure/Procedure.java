package spanledger.procedure;

import java.util.ArrayList;
import java.util.List;
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
 * @param steps the steps in order; each uses only inputs and steps before it
 */
public record Procedure(String name, String title, List<Input> inputs, List<Step> steps) {

  public Procedure {
    inputs = List.copyOf(inputs);
    steps = List.copyOf(steps);
    SymbolTable symbols = new SymbolTable(name);
    inputs.forEach(symbols::define);
    steps.forEach(symbols::define);
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
    private final SymbolTable symbols;

    private Builder(String name, String title) {
      this.name = name;
      this.title = title;
      symbols = new SymbolTable(name);
    }

    /**
     * Declares an input.
     *
     * @throws IllegalArgumentException if the symbol is taken
     */
    public Reference input(String symbol, String words, Dimension dimension, Domain domain) {
      Input input = new Input(new Reference(symbol, dimension), words, domain);
      symbols.define(input);
      inputs.add(input);
      return input.symbol();
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
      Step step = new Step(new Reference(symbol, dimension), words, formula, source);
      symbols.define(step);
      steps.add(step);
      return step.symbol();
    }

    /** Finishes the procedure. */
    public Procedure build() {
      return new Procedure(name, title, inputs, steps);
    }
  }
}
