package spanledger.deck;

import java.util.List;
import spanledger.action.CombinationSet;
import spanledger.action.RuleSet;

/**
 * What the checks of all decks and treads found.
 *
 * @param findings the checks
 * @param unknown the decks, floors and flights of which no panel is named
 */
public record DeckJudgement(List<DeckFinding> findings, List<String> unknown) {
  public DeckJudgement {
    findings = List.copyOf(findings);
    unknown = List.copyOf(unknown);
  }

  /**
   * Judges uses of panels.
   *
   * @throws IllegalArgumentException as {@link DeckReview#of}
   */
  public static DeckJudgement of(DeckUses uses, RuleSet rules, CombinationSet combinations) {
    return new DeckJudgement(DeckReview.of(uses.uses(), rules, combinations), uses.unknown());
  }
}
