package spanledger.verification.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.CombinationSet;
import spanledger.action.LeadingAction;
import spanledger.action.RuleSet;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.overturning.StandingResult;
import spanledger.overturning.StandingStructure;
import spanledger.overturning.TippingCase;

/**
 * The moments about a line by another way: the reactions that the frame analysis gives of the feet
 * off the line, times their levers. All feet are level, so their level reactions have no lever.
 */
class ReactionAgreementTest {

  private static final RuleSet LOADS = Table.rules(0.002, 1500, 0.3, 500, 0.01);

  @Test
  void whatHoldsAndTipsIsWhatTheFarFeetCarry() {
    Table table = new Table(3000, 1000, 500, 1000, 1000, 0.0004, 0);
    StandingStructure structure = table.structure(LOADS);
    StandingResult result =
        table.stands(LOADS, Table.standing(0.5), Table.rule(LeadingAction.GUARDRAIL, false));
    Actions actions =
        ActionPlanner.plan(
            structure.frame(),
            structure.floors(),
            structure.rails(),
            List.of(),
            LOADS,
            new CombinationSet("case", "case", List.of()));
    List<CategorisedCase> cases = new ArrayList<>(actions.cases());
    List<CaseResult> solved =
        new FrameAnalysis(structure.frame())
            .solve(cases.stream().map(CategorisedCase::loads).toList())
            .results();
    for (TippingCase one : result.tipping()) {
      double permanent =
          moment(one, structure, solved, "self-weight")
              + moment(one, structure, solved, "finishes top");
      assertThat(one.permanent().holding() - one.permanent().tipping())
          .isCloseTo(permanent, within(1e-7 * permanent));
    }
    TippingCase north =
        result.tipping().stream()
            .filter(one -> one.edge().outward().y() > 0.9)
            .findFirst()
            .orElseThrow();
    // The rail line load alone lifts the far feet: their pull times their lever.
    assertThat(north.variableMoment())
        .isCloseTo(-1.5 * moment(north, structure, solved, "rail line rail outward"), within(1e-3));
  }

  private static double moment(
      TippingCase about, StandingStructure structure, List<CaseResult> solved, String name) {
    CaseResult result =
        solved.stream().filter(r -> r.loadCase().name().equals(name)).findFirst().orElseThrow();
    return structure.frame().supports().stream()
        .mapToDouble(
            s -> -about.edge().beyond(s.node().place()) * result.reaction(s.node()).force().z())
        .sum();
  }
}
