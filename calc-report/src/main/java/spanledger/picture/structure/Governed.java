package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import spanledger.action.LimitState;
import spanledger.analysis.InternalForces;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.envelope.Governing;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.state.StateResult;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/**
 * A verdict with the solved state under the combination that governs it.
 *
 * @param verdict the verdict
 * @param governing its combination, place and cut
 * @param behaviour how the frame behaves under that combination
 * @param result the solution that the verdict rests on
 */
record Governed(
    Verdict verdict, Governing governing, CombinationBehaviour behaviour, StateResult result) {

  /** Forces of two solutions that differ by less than this share are the same. */
  private static final double SAME = 1e-6;

  /** The worst verdict on the strength of a member, guardrails among them. */
  static Optional<Governed> strength(Assessment assessment) {
    return worst(
        assessment,
        v ->
            isMember(v)
                && !v.unit().equals("mm")
                && !v.check().equals(StrengthMeasure.WALL.words())
                && limitState(v) == LimitState.STRENGTH);
  }

  /** The worst verdict on a deflection or a movement. */
  static Optional<Governed> deflection(Assessment assessment) {
    return worst(
        assessment, v -> v.unit().equals("mm") && limitState(v) == LimitState.SERVICEABILITY);
  }

  private static boolean isMember(Verdict verdict) {
    return verdict.group() == CheckGroup.MEMBER_STRENGTH
        || verdict.group() == CheckGroup.MEMBER_RESISTANCE
        || verdict.group() == CheckGroup.GUARDRAIL;
  }

  private static LimitState limitState(Verdict verdict) {
    return verdict
        .governing()
        .map(g -> g.instance().combination().template().limitState())
        .orElse(LimitState.STABILITY);
  }

  private static Optional<Governed> worst(Assessment assessment, Predicate<Verdict> among) {
    Verdict worst = null;
    for (Verdict verdict : assessment.verdicts()) {
      boolean counts =
          verdict.governing().isPresent()
              && verdict.status() != Status.DEMAND
              && Double.isFinite(verdict.utilisation())
              && among.test(verdict);
      if (counts && (worst == null || MemberUses.isWorse(verdict, worst))) {
        worst = verdict;
      }
    }
    return Optional.ofNullable(worst).flatMap(v -> of(v, assessment));
  }

  private static Optional<Governed> of(Verdict verdict, Assessment assessment) {
    Governing governing = verdict.governing().orElseThrow();
    Optional<CombinationBehaviour> behaviour = assessment.behaviour().of(governing.instance());
    return behaviour.flatMap(
        b -> solution(governing, b, assessment).map(r -> new Governed(verdict, governing, b, r)));
  }

  /** The solution that the search found the governing forces in; else the one that counts. */
  @SuppressWarnings("ReferenceEquality") // by value all loads and members would be compared
  private static Optional<StateResult> solution(
      Governing governing, CombinationBehaviour behaviour, Assessment assessment) {
    List<StateResult> results = new ArrayList<>();
    behaviour.result().ifPresent(results::add);
    behaviour.firstOrderResult().ifPresent(results::add);
    Optional<InternalForces> searched =
        assessment.findings().strength().stream()
            .filter(f -> f.governing() == governing)
            .map(StrengthFinding::forces)
            .findFirst();
    for (StateResult result : results) {
      if (searched.isPresent() && agree(searched.get(), at(result, governing))) {
        return Optional.of(result);
      }
    }
    boolean first = !behaviour.byState() && behaviour.firstOrderResult().isPresent();
    return first ? behaviour.firstOrderResult() : behaviour.result();
  }

  private static boolean agree(InternalForces one, InternalForces other) {
    double size =
        Math.max(
            Math.hypot(one.momentY(), one.momentZ()), Math.hypot(other.momentY(), other.momentZ()));
    return Math.hypot(one.momentY() - other.momentY(), one.momentZ() - other.momentZ())
        <= SAME * size;
  }

  private static InternalForces at(StateResult result, Governing governing) {
    Segment segment = governing.station().segment();
    return new SegmentShape(segment, result.movements(segment), result.response(segment))
        .forces(governing.station().x());
  }

  /** The shapes of all segments. */
  List<SegmentShape> shapes(Frame frame) {
    List<SegmentShape> shapes = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      shapes.add(new SegmentShape(segment, result.movements(segment), result.response(segment)));
    }
    return shapes;
  }

  /** The shape of the segment that governs. */
  SegmentShape shape() {
    Segment segment = governing.station().segment();
    return new SegmentShape(segment, result.movements(segment), result.response(segment));
  }

  /** Holds that do nothing in this state: feet in the air, slack ties. */
  List<HoldReport> open() {
    return behaviour.holds().stream().filter(h -> h.condition() == Condition.OPEN).toList();
  }

  /** The combination in words, with the order of the solution. */
  String words() {
    return governing.instance().words()
        + (result.isSecondOrder() ? ", second order" : ", first order");
  }
}
