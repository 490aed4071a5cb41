package spanledger.action;

import java.util.List;
import java.util.Optional;

/**
 * A combination of load cases, possibly with free parts that may be absent one by one and with one
 * load that may stand anywhere.
 *
 * @param name unique in its job
 * @param template the rule it follows
 * @param terms the cases that always take part
 * @param options free parts: each acts or is absent, whichever is worse for an effect
 * @param moving the load that may stand anywhere, if any
 */
public record Combination(
    String name,
    CombinationTemplate template,
    List<Term> terms,
    List<Option> options,
    Optional<MovingTerm> moving) {

  public Combination {
    terms = List.copyOf(terms);
    options = List.copyOf(options);
  }

  /** A combination without free parts. */
  public Combination(
      String name, CombinationTemplate template, List<Term> terms, Optional<MovingTerm> moving) {
    this(name, template, terms, List.of(), moving);
  }

  /**
   * Cases that act together or are absent together.
   *
   * @param words what is loaded, for example a bay of a floor
   * @param terms the cases, at least one
   */
  public record Option(String words, List<Term> terms) {
    public Option {
      terms = List.copyOf(terms);
    }
  }

  /**
   * One case in a combination.
   *
   * @param loadCase the case
   * @param category the category whose factor it takes
   * @param sign 1 or -1
   */
  public record Term(LoadCase loadCase, ActionCategory category, double sign) {}

  /**
   * The moving load in a combination.
   *
   * @param load the load
   * @param category the category whose factor it takes
   * @param sign 1 or -1
   */
  public record MovingTerm(MovingLoad load, ActionCategory category, double sign) {}

  /** The factor with which a term acts, its sign included. */
  public double factor(Term term) {
    return term.sign() * template.factor(term.category());
  }

  /** The factor with which the moving load acts, its sign included. */
  public double factor(MovingTerm term) {
    return term.sign() * template.factor(term.category());
  }
}
