package spanledger.deck;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.CombinationSet;
import spanledger.action.RuleSet;
import spanledger.resistance.ResistanceFactors;

/** Decks and treads against the loads and limits of a rule set. */
public final class DeckReview {

  /** Overhangs no longer than this are none, mm. */
  private static final double NO_OVERHANG = 1;

  private DeckReview() {}

  /**
   * Every check of every use, in order.
   *
   * @throws IllegalArgumentException if the rule set has no factor on resistance, or the
   *     combinations have none for floors
   */
  public static List<DeckFinding> of(
      List<DeckUse> uses, RuleSet rules, CombinationSet combinations) {
    DeckLoads loads = new DeckLoads(rules, combinations);
    List<DeckFinding> findings = new ArrayList<>();
    for (DeckUse use : uses) {
      if (use.panel() instanceof TestedPanel panel) {
        findings.addAll(new PanelReview(loads, use, panel).findings());
      } else if (use.panel() instanceof PlankPanel plank) {
        findings.addAll(new PlankReview(loads, ResistanceFactors.of(rules), use, plank).findings());
      }
      if (use.overhang() > NO_OVERHANG) {
        findings.add(
            DeckFinding.notChecked(
                use,
                "overhang",
                "it reaches "
                    + Math.round(use.overhang())
                    + " mm beyond its outermost support;"
                    + " end beams under its edges would carry it"));
      }
    }
    return findings;
  }
}
