package spanledger.resistance.member;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.provenance.Source;

/**
 * One run of a procedure: a row of its table.
 *
 * <p>Equality is identity: a result feeds others from this very run.
 */
public final class Working {

  private final String label;
  private final CompiledProcedure procedure;
  private final List<Feed> feeds;
  private final double[] values;

  private Working(String label, CompiledProcedure procedure, List<Feed> feeds, double[] values) {
    this.label = label;
    this.procedure = procedure;
    this.feeds = List.copyOf(feeds);
    this.values = values;
  }

  /** Starts a run; the label says which row of the procedure's table it is. */
  public static Feeding of(CompiledProcedure procedure, String label) {
    return new Feeding(procedure, label);
  }

  /** A run whose values are known already, as {@link MemberEvaluator} makes them. */
  static Working done(
      CompiledProcedure procedure, String label, List<Feed> feeds, double[] values) {
    return new Working(label, procedure, feeds, values.clone());
  }

  /** Which row it is, in words. */
  public String label() {
    return label;
  }

  public CompiledProcedure procedure() {
    return procedure;
  }

  /** Where each input comes from, in the procedure's order. */
  public List<Feed> feeds() {
    return feeds;
  }

  /** The value of an input or step. */
  public double value(String symbol) {
    return values[procedure.slot(symbol)];
  }

  /** All values by place, as a copy. */
  public double[] values() {
    return values.clone();
  }

  /** A feed of a result of this run. */
  public Feed feed(String symbol) {
    return new Feed.Result(this, symbol);
  }

  /** Collects the inputs of a run by symbol. */
  public static final class Feeding {
    private final CompiledProcedure procedure;
    private final String label;
    private final Map<String, Feed> bySymbol = new HashMap<>();

    private Feeding(CompiledProcedure procedure, String label) {
      this.procedure = procedure;
      this.label = label;
    }

    public Feeding with(String symbol, Feed feed) {
      procedure.slot(symbol);
      bySymbol.put(symbol, feed);
      return this;
    }

    public Feeding given(String symbol, double value, String origin, Source source) {
      return with(symbol, new Feed.Given(value, origin, source));
    }

    public Feeding given(String symbol, Figured figured) {
      return with(symbol, new Feed.Given(figured.value(), figured.origin(), figured.source()));
    }

    /** Takes results of the same symbols from an earlier run. */
    public Feeding same(Working earlier, String... symbols) {
      for (String symbol : symbols) {
        with(symbol, earlier.feed(symbol));
      }
      return this;
    }

    /** Takes a result of another symbol from an earlier run. */
    public Feeding from(Working earlier, String symbol, String symbolThere) {
      return with(symbol, earlier.feed(symbolThere));
    }

    /** Takes effects at the cut, for a {@link CutCheck}. */
    public Feeding atCut(Effect... effects) {
      for (Effect effect : effects) {
        with(effect.symbol(), new Feed.AtCut(effect));
      }
      return this;
    }

    /**
     * Works it out.
     *
     * @throws IllegalArgumentException if an input has no feed, or one that needs a cut
     * @throws spanledger.procedure.OutOfDomainException naming the input or step that has no value
     */
    public Working run() {
      List<Feed> feeds = ordered();
      double[] inputs = new double[feeds.size()];
      for (int i = 0; i < inputs.length; i++) {
        inputs[i] = CutCheck.constantOf(feeds.get(i)).orElseThrow(() -> needsCut());
      }
      return new Working(label, procedure, feeds, procedure.run(inputs));
    }

    /** A check that is worked out anew at every cut. */
    public CutCheck check(Use... uses) {
      return new CutCheck(label, procedure, ordered(), List.of(uses));
    }

    private IllegalArgumentException needsCut() {
      return new IllegalArgumentException(
          procedure.procedure().name() + " needs effects at a cut; make a check of it.");
    }

    private List<Feed> ordered() {
      List<Feed> feeds = new ArrayList<>();
      for (Input input : procedure.procedure().inputs()) {
        feeds.add(
            Optional.ofNullable(bySymbol.get(input.symbol().symbol()))
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            procedure.procedure().name()
                                + ": nothing feeds "
                                + input.symbol().symbol()
                                + ".")));
      }
      return feeds;
    }
  }
}
