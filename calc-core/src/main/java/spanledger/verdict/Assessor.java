package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Actions;
import spanledger.action.CombinationSet;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.geometry.GeometryFinding;
import spanledger.resistance.ResistanceFactors;

/** Runs the whole calculation of a job whose actions are planned. */
public final class Assessor {

  private final RuleSet rules;
  private final List<Rail> rails;
  private final int places;
  private final Optional<List<GeometryFinding>> geometry;

  /**
   * @param rules loads, limits and factors
   * @param rails the guardrails
   * @param places tries per segment for moving loads, before refinement
   * @param geometry the sizes of the structure against their limits, if they are known
   */
  public Assessor(
      RuleSet rules, List<Rail> rails, int places, Optional<List<GeometryFinding>> geometry) {
    this.rules = rules;
    this.rails = List.copyOf(rails);
    this.places = places;
    this.geometry = geometry;
  }

  /** One for a structure whose geometry is not known beyond its frame. */
  public Assessor(RuleSet rules, List<Rail> rails, int places) {
    this(rules, rails, places, Optional.empty());
  }

  /**
   * Searches and judges.
   *
   * @throws spanledger.analysis.MechanismException if a case loads a turn that nothing holds
   * @throws IllegalArgumentException if the rule set lacks a figure that every check needs
   */
  public Assessment assess(FrameAnalysis analysis, Actions actions, CombinationSet combinations) {
    ResistanceFactors factors = ResistanceFactors.of(rules);
    EnvelopeSearch search = new EnvelopeSearch(analysis, actions, rails, factors, places);
    Findings findings = search.run();
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.addAll(new StrengthVerdicts(factors).of(findings));
    verdicts.addAll(new DeflectionVerdicts(rules, rails, analysis.frame()).of(findings));
    verdicts.addAll(new SupportVerdicts().of(findings, combinations));
    geometry.ifPresent(sizes -> verdicts.addAll(GeometryVerdicts.of(sizes)));
    verdicts.addAll(NotCovered.verdicts(findings, geometry.isPresent()));
    return new Assessment(analysis.frame(), actions, findings, search.proof(), verdicts);
  }
}
