package spanledger.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.resistance.ResistanceFactors;

/**
 * Finds the worst combination, pattern of free parts, place of a moving load and cut for every
 * strength measure of every member.
 */
final class StrengthSearch {

  private final Responses responses;
  private final PostBases bases;
  private final ResistanceFactors factors;

  StrengthSearch(Responses responses, PostBases bases, ResistanceFactors factors) {
    this.responses = responses;
    this.bases = bases;
    this.factors = factors;
  }

  List<StrengthFinding> run(List<Combination> combinations) {
    List<Combination> strength =
        combinations.stream()
            .filter(c -> c.template().limitState() == LimitState.STRENGTH)
            .toList();
    List<StrengthFinding> findings = new ArrayList<>();
    for (Member member : responses.frame().members()) {
      SectionCheck check = new SectionCheck(member, factors);
      findings.addAll(search(member, check, along(member), Optional.empty(), strength));
      Optional<Station> base = bases.of(member);
      if (base.isPresent()) {
        List<StrengthGoal> atBase =
            List.of(
                new StrengthGoal(member, StrengthFinding.Scope.POST_BASE, StrengthMeasure.BENDING),
                new StrengthGoal(
                    member, StrengthFinding.Scope.POST_BASE, StrengthMeasure.COMBINED));
        findings.addAll(search(member, check, atBase, base, strength));
      }
    }
    return findings;
  }

  private static List<StrengthGoal> along(Member member) {
    List<StrengthGoal> goals = new ArrayList<>();
    for (StrengthMeasure measure : StrengthMeasure.values()) {
      goals.add(new StrengthGoal(member, StrengthFinding.Scope.ALL, measure));
    }
    if (member.role() == MemberRole.RAIL) {
      goals.add(
          new StrengthGoal(member, StrengthFinding.Scope.GUARDRAIL, StrengthMeasure.COMBINED));
    }
    return goals;
  }

  private List<StrengthFinding> search(
      Member member,
      SectionCheck check,
      List<StrengthGoal> goals,
      Optional<Station> only,
      List<Combination> combinations) {
    MemberStrength search = new MemberStrength(responses, member, check, goals, only);
    search.run(combinations);
    return search.found();
  }
}
