package spanledger.resistance.member;

import java.util.List;
import java.util.OptionalDouble;
import spanledger.procedure.CompiledProcedure;

/**
 * Checks that are worked out at every cut.
 *
 * <p>Equality is identity, as for {@link Working}.
 */
public final class CutCheck {

  private final String label;
  private final CompiledProcedure procedure;
  private final List<Feed> feeds;
  private final List<Use> uses;

  CutCheck(String label, CompiledProcedure procedure, List<Feed> feeds, List<Use> uses) {
    this.label = label;
    this.procedure = procedure;
    this.feeds = List.copyOf(feeds);
    this.uses = List.copyOf(uses);
    uses.forEach(use -> procedure.slot(use.symbol()));
  }

  /** What is checked, in words. */
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

  /** The steps that say how much is used. */
  public List<Use> uses() {
    return uses;
  }

  /** A feed of a step of this check for a later one at the same cut. */
  public Feed feed(String symbol) {
    return new Feed.Earlier(this, symbol);
  }

  /** The value of a feed that does not hang on the cut. */
  static OptionalDouble constantOf(Feed feed) {
    if (feed instanceof Feed.Given given) {
      return OptionalDouble.of(given.value());
    }
    if (feed instanceof Feed.Result result) {
      return OptionalDouble.of(result.from().value(result.symbol()));
    }
    return OptionalDouble.empty();
  }
}
