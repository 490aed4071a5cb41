package spanledger.behaviour;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.action.RuleSet;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.stability.CriticalFactor;
import spanledger.stability.FrameStiffness;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/**
 * Looks at combinations as states: all fixed ones, and those with a moving load where the search
 * over places found that they govern.
 */
public final class BehaviourAnalysis {

  /** Critical load factors above this are of no interest. */
  public static final double FARTHEST = 100;

  /** Where a rule set does not say from when first order suffices, it never does. */
  private static final double NEVER_ENOUGH = Double.POSITIVE_INFINITY;

  private final RuleSet rules;
  private final boolean linear;
  private final double limit;
  private final SecondOrder choice;
  private final StateAnalysis firstOrder;
  private final StateAnalysis secondOrder;

  /**
   * Prepares a frame.
   *
   * @param rules may say from which critical load factor first order suffices
   * @param choice when second order is asked for
   */
  public BehaviourAnalysis(FrameAnalysis analysis, RuleSet rules, SecondOrder choice) {
    this.linear = analysis.frame().isLinear();
    this.choice = choice;
    this.rules = rules;
    this.limit = rules.find(RuleSet.CRITICAL_FACTOR).map(f -> f.value()).orElse(NEVER_ENOUGH);
    firstOrder = new StateAnalysis(new FrameStiffness(analysis), StateOptions.FIRST_ORDER);
    secondOrder = new StateAnalysis(new FrameStiffness(analysis), StateOptions.SECOND_ORDER);
  }

  /** Looks at all fixed combinations, and at what governs. */
  public Behaviour run(Actions actions, Findings findings) {
    List<CombinationBehaviour> all = new ArrayList<>();
    for (Instance instance : instances(actions, findings)) {
      all.add(behaviour(instance));
    }
    return new Behaviour(
        all, choice, limit, linear, FrameVibration.of(firstOrder.frame(), actions, rules));
  }

  private static Collection<Instance> instances(Actions actions, Findings findings) {
    Map<String, Instance> instances = new LinkedHashMap<>();
    for (Combination combination : actions.combinations()) {
      if (combination.moving().isEmpty()) {
        // All that may act together is nearest to buckling; other patterns come with findings.
        Instance all = new Instance(combination, combination.options(), Optional.empty());
        instances.put(all.words(), all);
      }
    }
    Consumer<Instance> add = i -> instances.putIfAbsent(i.words(), i);
    findings.strength().forEach(f -> add.accept(f.governing().instance()));
    findings.deflections().forEach(f -> add.accept(f.governing().instance()));
    findings.reactions().forEach(f -> add.accept(f.instance()));
    return instances.values();
  }

  private CombinationBehaviour behaviour(Instance instance) {
    LoadState state = state(instance);
    StateOutcome first = firstOrder.solve(state);
    if (!(first instanceof StateOutcome.Solved solved)) {
      return new CombinationBehaviour(instance, first, Optional.empty(), Optional.empty(), true);
    }
    StateResult result = solved.result();
    CriticalFactor critical = firstOrder.critical(result, FARTHEST);
    boolean asked =
        switch (choice) {
          case ALWAYS -> true;
          case AUTO -> critical.factor() < limit;
          case NEVER -> false;
        };
    Optional<StateOutcome> second =
        asked ? Optional.of(secondOrder.solve(state)) : Optional.empty();
    return new CombinationBehaviour(
        instance, first, Optional.of(critical), second, asked || !linear);
  }

  /** The loads of a combination with its moving load standing somewhere. */
  public static LoadState state(Instance instance) {
    Combination combination = instance.combination();
    List<LoadState.Part> parts = new ArrayList<>();
    for (Combination.Term term : instance.terms()) {
      parts.add(new LoadState.Part(term.loadCase(), combination.factor(term)));
    }
    instance
        .standing()
        .ifPresent(
            s ->
                parts.add(
                    new LoadState.Part(
                        new LoadCase(s.words(), List.of(), s.placed()),
                        instance.standingFactor())));
    return new LoadState(instance.words(), parts);
  }
}
