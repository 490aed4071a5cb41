package spanledger.overturning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.RuleSet;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * Looks at a structure as one body: at tipping about every line of its feet and at sliding every
 * way, under every rule, with the variable loads where they are worst.
 */
public final class StandingAnalysis {

  private final StandingStructure structure;
  private final Standing standing;
  private final List<EquilibriumRule> rules;
  private final PermanentLoads permanent;
  private final LeadingLoads loads;
  private final double sway;
  private final List<Wind.Exposure> exposures;

  /**
   * Prepares a structure.
   *
   * @param rules by which it must not tip or slide; the job's own factors are put in
   * @throws IllegalArgumentException if the rule set lacks the load on floors
   */
  public StandingAnalysis(
      StandingStructure structure, Standing standing, List<EquilibriumRule> rules) {
    this.structure = structure;
    this.standing = standing;
    this.rules = rules.stream().map(rule -> rule.with(standing.factors())).toList();
    permanent = PermanentLoads.of(structure, standing);
    loads = new LeadingLoads(structure);
    sway = structure.rules().find(RuleSet.NOTIONAL_SWAY).map(Figure::value).orElse(0.0);
    exposures =
        standing
            .wind()
            .map(w -> w.exposures(structure.frame(), structure.floors(), structure.rails()))
            .orElse(List.of());
  }

  /** Looks at all lines and rules. */
  public StandingResult run() {
    List<Node> feet = FootHull.feet(structure.frame());
    List<TippingEdge> edges = FootHull.edges(structure.frame(), structure.plates());
    List<TippingCase> tipping = new ArrayList<>();
    for (TippingEdge edge : edges) {
      PermanentMoments moments = permanent.about(edge);
      for (EquilibriumRule rule : rules) {
        tipping(edge, moments, rule).ifPresent(tipping::add);
      }
    }
    List<SlidingCase> sliding = new ArrayList<>();
    rules.forEach(rule -> sliding(rule).ifPresent(sliding::add));
    return new StandingResult(
        standing, feet, structure.plates(), edges, permanent, tipping, sliding);
  }

  private Optional<TippingCase> tipping(
      TippingEdge edge, PermanentMoments moments, EquilibriumRule rule) {
    double level = rule.withNotionalSway() ? sway : 0;
    List<VariableLoad> beside = beside(rule, level, edge);
    Optional<TippingCase> worst = Optional.empty();
    for (LeadingLoads.Alternative one : alternatives(rule, w -> moment(w, edge))) {
      List<VariableLoad> acting =
          new ArrayList<>(
              LeadingLoads.factor(rule)
                  .map(f -> tips(one.acting(), f, level, edge))
                  .orElse(List.of()));
      if (rule.leading() == LeadingAction.GUARDRAIL || rule.leading() == LeadingAction.WIND) {
        acting.addAll(beside);
      }
      TippingCase found = new TippingCase(edge, rule, one.words(), acting, moments, level);
      if (worst.isEmpty() || found.destabilising() > worst.get().destabilising()) {
        worst = Optional.of(found);
      }
    }
    return worst;
  }

  private static double moment(List<PlacedForce> forces, TippingEdge edge) {
    return forces.stream().mapToDouble(force -> force.about(edge)).sum();
  }

  /** The imposed loads that make tipping worse, where the rule has any. */
  private List<VariableLoad> beside(EquilibriumRule rule, double level, TippingEdge edge) {
    return imposed(rule).map(f -> tips(loads.imposed(), f, level, edge)).orElse(List.of());
  }

  private static Optional<Figure> imposed(EquilibriumRule rule) {
    return Optional.ofNullable(rule.factors().get(ActionCategory.IMPOSED));
  }

  private static List<VariableLoad> tips(
      List<Acting> acting, Figure factor, double level, TippingEdge edge) {
    List<VariableLoad> tipping = new ArrayList<>();
    for (Acting one : acting) {
      VariableLoad load = new VariableLoad(one, factor, level);
      if (load.moment(edge) > 0) {
        tipping.add(load);
      }
    }
    return tipping;
  }

  /**
   * What may lead a rule; a wind from any side blows where an effect of its forces is greatest.
   *
   * @param effect of wind forces
   */
  private List<LeadingLoads.Alternative> alternatives(
      EquilibriumRule rule, ToDoubleFunction<List<PlacedForce>> effect) {
    List<LeadingLoads.Alternative> all = new ArrayList<>(loads.alternatives(rule));
    if (rule.leading() == LeadingAction.FLOOR && hasImposed()) {
      all.add(0, new LeadingLoads.Alternative("imposed loads where they tip", loads.imposed()));
    }
    if (rule.leading() == LeadingAction.WIND && !exposures.isEmpty()) {
      double angle = WorstDirection.of(a -> effect.applyAsDouble(wind(WorstDirection.at(a))));
      String words =
          String.format(Locale.ROOT, "wind towards %.1f deg from X", Math.toDegrees(angle));
      all.add(new LeadingLoads.Alternative(words, List.copyOf(wind(WorstDirection.at(angle)))));
    }
    return all;
  }

  private boolean hasImposed() {
    return !loads.imposed().isEmpty();
  }

  private List<PlacedForce> wind(Vector along) {
    Wind wind = standing.wind().orElseThrow();
    return exposures.stream().map(e -> wind.force(e, along)).toList();
  }

  private Optional<SlidingCase> sliding(EquilibriumRule rule) {
    double level = rule.withNotionalSway() ? sway : 0;
    SlidingCase bare =
        new SlidingCase(
            rule, "", List.of(), permanent.level(), permanent.weight(), level, standing.ground());
    Figure factor = LeadingLoads.factor(rule).orElse(rule.overturning());
    Optional<SlidingCase> worst = Optional.empty();
    for (LeadingLoads.Alternative one :
        alternatives(rule, forces -> with(bare, "", forces, factor).friction())) {
      boolean free = rule.leading() == LeadingAction.FLOOR;
      SlidingCase found =
          free
              ? worsened(with(bare, one.words(), List.of(), factor), one.acting(), factor)
              : with(bare, one.words(), one.acting(), factor);
      if (rule.leading() == LeadingAction.GUARDRAIL || rule.leading() == LeadingAction.WIND) {
        Optional<Figure> beside = imposed(rule);
        if (beside.isPresent()) {
          found = worsened(found, loads.imposed(), beside.get());
        }
      }
      if (worst.isEmpty() || found.friction() > worst.get().friction()) {
        worst = Optional.of(found);
      }
    }
    return worst;
  }

  /** With those free loads added, one by one, that ask for more friction. */
  private static SlidingCase worsened(SlidingCase from, List<Acting> free, Figure factor) {
    SlidingCase worst = from;
    for (Acting one : free) {
      SlidingCase tried = with(worst, worst.leading(), List.of(one), factor);
      if (tried.friction() > worst.friction()) {
        worst = tried;
      }
    }
    return worst;
  }

  /** With more level and upward forces; what weighs on floors would only help. */
  private static SlidingCase with(
      SlidingCase from, String words, List<? extends Acting> more, Figure factor) {
    List<VariableLoad> variable = new ArrayList<>(from.variable());
    for (Acting one : more) {
      if (one instanceof PlacedForce) {
        variable.add(new VariableLoad(one, factor, from.sway()));
      }
    }
    return new SlidingCase(
        from.rule(),
        words,
        variable,
        from.permanentLevel(),
        from.weight(),
        from.sway(),
        from.ground());
  }
}
