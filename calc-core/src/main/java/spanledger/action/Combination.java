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

  /**
   * Leaves out combinations that others cover: another of the same leading action and limit state
   * has the same cases with the same factors, and free parts beside that may all be absent.
   */
  static List<Combination> withoutCovered(List<Combination> all) {
    return all.stream().filter(one -> all.stream().noneMatch(one::isCoveredBy)).toList();
  }

  private boolean isCoveredBy(Combination other) {
    return options.isEmpty()
        && !other.options.isEmpty()
        && template.limitState() == other.template.limitState()
        && template.leading() == other.template.leading()
        && terms.size() == other.terms.size()
        && moving.isPresent() == other.moving.isPresent()
        && sameTerms(other)
        && moving.map(m -> other.moving.map(o -> same(m, o, other)).orElse(false)).orElse(true);
  }

  private boolean sameTerms(Combination other) {
    for (int i = 0; i < terms.size(); i++) {
      if (!terms.get(i).loadCase().name().equals(other.terms.get(i).loadCase().name())
          || factor(terms.get(i)) != other.factor(other.terms.get(i))) {
        return false;
      }
    }
    return true;
  }

  private boolean same(MovingTerm one, MovingTerm two, Combination other) {
    return one.load().name().equals(two.load().name()) && factor(one) == other.factor(two);
  }
}
