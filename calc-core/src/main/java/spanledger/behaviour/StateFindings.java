package spanledger.behaviour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spanledger.action.LimitState;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Frame;
import spanledger.resistance.ResistanceFactors;

/**
 * What governs where combinations were solved as states. The linear search chooses patterns and
 * places; for each combination with its place that has a state, the state is the result, whether it
 * is worse than the sum over load cases or not.
 */
public final class StateFindings {

  private final Frame frame;
  private final Behaviour behaviour;
  private final ResistanceFactors factors;

  /** For the states of a frame. */
  public StateFindings(Frame frame, Behaviour behaviour, ResistanceFactors factors) {
    this.frame = frame;
    this.behaviour = behaviour;
    this.factors = factors;
  }

  /**
   * The same effects as those of the linear search, each with what governs it now.
   *
   * @param linear findings by sums over load cases; an effect of which no combination has a state
   *     stays what it is there
   */
  public Findings of(Findings linear) {
    if (behaviour.combinations().stream().noneMatch(CombinationBehaviour::byState)) {
      return linear;
    }
    return new Findings(
        strength(linear.strength()),
        deflections(linear.deflections()),
        reactions(linear.reactions()));
  }

  private List<StrengthFinding> strength(List<StrengthFinding> linear) {
    Map<String, List<StateStrength.Goal>> byMember = new LinkedHashMap<>();
    for (StrengthFinding finding : linear) {
      byMember
          .computeIfAbsent(finding.member().name(), m -> new ArrayList<>())
          .add(new StateStrength.Goal(finding, stays(finding.governing().instance())));
    }
    List<StrengthFinding> found = new ArrayList<>();
    for (List<StateStrength.Goal> goals : byMember.values()) {
      StateStrength search = new StateStrength(frame, goals, factors);
      solved(LimitState.STRENGTH).forEach(search::look);
      found.addAll(search.found());
    }
    return found;
  }

  private List<DeflectionFinding> deflections(List<DeflectionFinding> linear) {
    List<DeflectionFinding> found = new ArrayList<>();
    for (DeflectionFinding finding : linear) {
      boolean stays = stays(finding.governing().instance());
      StateDeflection search = new StateDeflection(frame, finding, stays);
      solved(LimitState.SERVICEABILITY).filter(c -> counts(c, stays)).forEach(search::look);
      found.add(search.found());
    }
    return found;
  }

  private List<ReactionFinding> reactions(List<ReactionFinding> linear) {
    List<ReactionFinding> found = new ArrayList<>();
    for (ReactionFinding finding : linear) {
      boolean stays = stays(finding.instance());
      StateReaction search = new StateReaction(finding, stays);
      solved(finding.limitState()).filter(c -> counts(c, stays)).forEach(search::look);
      found.add(search.found());
    }
    return found;
  }

  /** Whether the sum over load cases is the result for an instance. */
  private boolean stays(Instance instance) {
    return behaviour.stateOf(instance).isEmpty();
  }

  private Stream<CombinationBehaviour> solved(LimitState limitState) {
    return behaviour.combinations().stream()
        .filter(c -> c.instance().combination().template().limitState() == limitState)
        .filter(c -> c.result().isPresent());
  }

  /**
   * Whether a combination may govern: states do; sums over load cases only where the worst of them
   * had to give way to its state.
   */
  static boolean counts(CombinationBehaviour combination, boolean linearStays) {
    return combination.byState() || !linearStays;
  }
}
