package spanledger.envelope;

import spanledger.action.Combination;
import spanledger.action.LeadingAction;
import spanledger.analysis.InternalForces;
import spanledger.frame.Member;

/**
 * The worst of one strength measure along one member.
 *
 * @param member the member
 * @param measure what was looked for
 * @param scope the combinations that were searched
 * @param governing where the worst was found
 * @param forces the internal forces there
 */
public record StrengthFinding(
    Member member,
    StrengthMeasure measure,
    Scope scope,
    Governing governing,
    InternalForces forces) {

  /** Which strength combinations, and which cuts, a search covers. */
  public enum Scope {
    /** All strength combinations, all cuts. */
    ALL,
    /** Strength combinations led by guardrail loads, all cuts. */
    GUARDRAIL,
    /** Strength combinations led by guardrail loads, cuts beside the post's base. */
    POST_BASE;

    /** Whether a combination is looked at, if it is one of strength. */
    public boolean covers(Combination combination) {
      return this == ALL || combination.template().leading() == LeadingAction.GUARDRAIL;
    }
  }
}
