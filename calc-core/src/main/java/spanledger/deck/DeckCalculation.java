package spanledger.deck;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;

/** A procedure worked out for one use of a panel under one load. */
public final class DeckCalculation {

  private final DeckUse use;
  private final DeckLoad load;
  private final CompiledProcedure compiled;
  private final List<DeckInput> inputs;
  private final double[] slots;

  private DeckCalculation(
      DeckUse use, DeckLoad load, CompiledProcedure compiled, List<DeckInput> inputs) {
    this.use = use;
    this.load = load;
    this.compiled = compiled;
    this.inputs = List.copyOf(inputs);
    this.slots = compiled.run(inputs.stream().mapToDouble(DeckInput::value).toArray());
  }

  /** Gives each input of a procedure by its symbol. */
  @FunctionalInterface
  interface Inputs {
    DeckInput of(String symbol);
  }

  /**
   * Works a procedure out.
   *
   * @throws spanledger.procedure.OutOfDomainException if it has no result for these inputs
   */
  static DeckCalculation of(DeckUse use, DeckLoad load, Procedure procedure, Inputs inputs) {
    List<DeckInput> all = new ArrayList<>();
    procedure.inputs().forEach(input -> all.add(inputs.of(input.symbol().symbol())));
    return new DeckCalculation(use, load, procedure.compile(), all);
  }

  /** For which use of a panel. */
  public DeckUse use() {
    return use;
  }

  /** Under which load. */
  public DeckLoad load() {
    return load;
  }

  /** What is worked out. */
  public CompiledProcedure procedure() {
    return compiled;
  }

  /** The inputs in the procedure's order. */
  public List<DeckInput> inputs() {
    return inputs;
  }

  /** The value of an input or step, in core units. */
  public double value(String symbol) {
    return slots[compiled.slot(symbol)];
  }
}
