package spanledger.robustness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Actions;
import spanledger.action.Combination;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.InternalForces;
import spanledger.analysis.MechanismException;
import spanledger.analysis.Side;
import spanledger.envelope.SectionCheck;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.memberdesign.MemberPick;
import spanledger.resistance.ResistanceFactors;
import spanledger.stability.CriticalFactor;
import spanledger.stability.FrameStiffness;
import spanledger.state.Imperfections;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;

/**
 * Leaves members out one by one and solves the frame again: with the permanent loads and a share of
 * all imposed loads at their service values, out of plumb along X and Y, each way, in second order.
 * A structure must not be damaged out of proportion to what happened to it (EN 1990:2002, 2.1(4),
 * from memory, confirm against the standard).
 */
public final class RobustnessAnalysis {

  /** Critical load factors above this are of no interest. */
  public static final double FARTHEST = 100;

  /** Members whose lengths differ by less than this, mm, are cut alike. */
  private static final double ALIKE = 0.1;

  private static final Set<MemberRole> REMOVABLE =
      Set.of(MemberRole.BRACE, MemberRole.LEG, MemberRole.OTHER);

  private final Frame frame;
  private final RuleSet rules;
  private final ResistanceFactors factors;
  private final Set<String> holdRails = new HashSet<>();
  private final double share;
  private final double limit;
  private final List<LoadState> states;

  /**
   * Prepares a frame.
   *
   * @param actions its actions
   * @param rails its guardrails; members that hold them are not left out
   */
  public RobustnessAnalysis(Frame frame, Actions actions, List<Rail> rails, RuleSet rules) {
    this.frame = frame;
    this.rules = rules;
    factors = ResistanceFactors.of(rules);
    rails.forEach(rail -> rail.posts().forEach(post -> holdRails.add(post.name())));
    share = rules.find(RuleSet.ROBUSTNESS_SHARE).map(Figure::value).orElse(1.0);
    limit = rules.find(RuleSet.ROBUSTNESS_FACTOR).map(Figure::value).orElse(1.0);
    states = service(actions).map(this::states).orElse(List.of());
  }

  /** The members that may be left out: they carry neither floor nor rail. */
  public static boolean isRemovable(Member member) {
    return REMOVABLE.contains(member.role());
  }

  private static Optional<Combination> service(Actions actions) {
    return actions.combinations().stream()
        .filter(c -> c.template().limitState() == LimitState.SERVICEABILITY)
        .filter(c -> c.moving().isEmpty())
        .filter(
            c ->
                c.template().leading() == LeadingAction.FLOOR
                    ? !c.options().isEmpty()
                    : c.template().leading() == LeadingAction.NONE)
        .max(Comparator.comparingInt(c -> c.template().leading() == LeadingAction.FLOOR ? 1 : 0));
  }

  private List<LoadState> states(Combination service) {
    List<LoadState.Part> parts = new ArrayList<>();
    for (Combination.Term term : service.terms()) {
      parts.add(new LoadState.Part(term.loadCase(), service.factor(term)));
    }
    for (Combination.Option option : service.options()) {
      for (Combination.Term term : option.terms()) {
        parts.add(new LoadState.Part(term.loadCase(), share * service.factor(term)));
      }
    }
    LoadState state = new LoadState(service.template().name(), parts);
    return rules
        .find(RuleSet.NOTIONAL_SWAY)
        .map(sway -> Imperfections.everyWay(state, sway.value()))
        .orElse(List.of(state));
  }

  /**
   * Leaves out the members picked.
   *
   * @return the results; empty if no member picked can be left out, or the rules have no service
   *     combination
   */
  public Optional<RobustnessResult> run(MemberPick pick) {
    Map<String, List<BraceLoss>> kinds = new LinkedHashMap<>();
    if (states.isEmpty()) {
      return Optional.empty();
    }
    for (Member member : frame.members()) {
      if (pick.picks(member) && isRemovable(member) && !holdRails.contains(member.name())) {
        kinds.computeIfAbsent(kind(member), k -> new ArrayList<>()).add(without(member));
      }
    }
    if (kinds.isEmpty()) {
      return Optional.empty();
    }
    List<BraceLoss> worst = new ArrayList<>();
    for (List<BraceLoss> alike : kinds.values()) {
      BraceLoss one =
          alike.stream()
              .min(
                  Comparator.comparingDouble((BraceLoss l) -> l.without().criticalFactor())
                      .thenComparingDouble(l -> -l.without().use()))
              .orElseThrow();
      worst.add(
          new BraceLoss(
              one.member(), alike.stream().map(l -> l.member().name()).toList(), one.without()));
    }
    return Optional.of(
        new RobustnessResult(states.get(0).name(), share, limit, of(frame, states), worst));
  }

  private static String kind(Member member) {
    return member.section().name()
        + "|"
        + member.alloy().designation()
        + "|"
        + Math.round(member.length() / ALIKE);
  }

  private BraceLoss without(Member member) {
    ReducedFrame reduced = new ReducedFrame(frame, member);
    FrameState state;
    try {
      state = of(reduced.frame(), states.stream().map(reduced::of).toList());
    } catch (MechanismException e) {
      state = FrameState.fallen(String.valueOf(e.getMessage()));
    }
    return new BraceLoss(member, List.of(member.name()), state);
  }

  private FrameState of(Frame looked, List<LoadState> under) {
    FrameStiffness stiffness = new FrameStiffness(new FrameAnalysis(looked));
    StateAnalysis first = new StateAnalysis(stiffness, StateOptions.FIRST_ORDER);
    StateAnalysis second = new StateAnalysis(stiffness, StateOptions.SECOND_ORDER);
    double critical = FARTHEST;
    String mode = "";
    double movement = 0;
    double use = 0;
    String used = "";
    for (LoadState state : under) {
      if (!(first.solve(state) instanceof StateOutcome.Solved atRest)) {
        return FrameState.fallen("it cannot bear " + state.name());
      }
      CriticalFactor factor = first.critical(atRest.result(), FARTHEST);
      if (factor.factor() < critical) {
        critical = factor.factor();
        mode = factor.mode().words();
      }
      if (factor.factor() <= 1) {
        movement = Double.NaN;
        use = Double.NaN;
        continue;
      }
      if (!(second.solve(state) instanceof StateOutcome.Solved moved)) {
        return FrameState.fallen("it cannot bear " + state.name() + " on the moved frame");
      }
      movement = Math.max(movement, movement(moved.result(), looked));
      for (Member member : looked.members()) {
        double own = use(moved.result(), looked, member);
        if (own > use) {
          use = own;
          used = member.name();
        }
      }
    }
    return new FrameState(Optional.empty(), critical, mode, movement, use, used);
  }

  private static double movement(StateResult result, Frame looked) {
    double most = 0;
    for (Node node : looked.nodes()) {
      var shift = result.shift(node);
      most = Math.max(most, Math.hypot(shift.x(), shift.y()));
    }
    return most;
  }

  /** The greatest combined stress of a member per design strength. */
  private double use(StateResult result, Frame looked, Member member) {
    SectionCheck check = new SectionCheck(member, factors);
    double most = 0;
    for (Segment segment : looked.segmentsOf(member)) {
      BeamColumnResponse response = result.response(segment);
      for (double x : response.forceStations()) {
        for (Side side : Side.values()) {
          InternalForces f = response.at(x, side);
          check.evaluate(
              new double[] {
                f.axial(), f.shearY(), f.shearZ(), f.torque(), f.momentY(), f.momentZ()
              });
          most = Math.max(most, check.value(StrengthMeasure.COMBINED));
        }
      }
    }
    return most;
  }
}
