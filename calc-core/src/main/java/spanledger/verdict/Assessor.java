package spanledger.verdict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Actions;
import spanledger.action.CombinationSet;
import spanledger.action.LimitState;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.analysis.FrameAnalysis;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.BehaviourAnalysis;
import spanledger.behaviour.SecondOrder;
import spanledger.behaviour.StateFindings;
import spanledger.deck.DeckJudgement;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.geometry.GeometryFinding;
import spanledger.jointdesign.JointDesign;
import spanledger.jointdesign.JointJudge;
import spanledger.jointdesign.JointJudgement;
import spanledger.memberdesign.CriticalLengths;
import spanledger.memberdesign.FrameBucklingLengths;
import spanledger.memberdesign.MemberDesign;
import spanledger.memberdesign.MemberForces;
import spanledger.memberdesign.MemberJudge;
import spanledger.memberdesign.MemberJudgement;
import spanledger.memberdesign.SolvedInstances;
import spanledger.resistance.ResistanceFactors;

/** Runs the whole calculation of a job whose actions are planned. */
public final class Assessor {

  private final RuleSet rules;
  private final List<Rail> rails;
  private final int places;
  private final SecondOrder secondOrder;
  private final Optional<List<GeometryFinding>> geometry;
  private final Optional<MemberDesign> design;
  private final Optional<JointDesign> joints;
  private final Optional<DeckJudgement> deck;
  private final Optional<WholeStructure> whole;

  /**
   * One that judges no geometry, and members elastically only.
   *
   * @param rules loads, limits and factors
   * @param rails the guardrails
   * @param places tries per segment for moving loads, before refinement
   */
  public Assessor(RuleSet rules, List<Rail> rails, int places) {
    this(
        rules,
        rails,
        places,
        SecondOrder.AUTO,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Assessor(
      RuleSet rules,
      List<Rail> rails,
      int places,
      SecondOrder secondOrder,
      Optional<List<GeometryFinding>> geometry,
      Optional<MemberDesign> design,
      Optional<JointDesign> joints,
      Optional<DeckJudgement> deck,
      Optional<WholeStructure> whole) {
    this.rules = rules;
    this.rails = List.copyOf(rails);
    this.places = places;
    this.secondOrder = secondOrder;
    this.geometry = geometry;
    this.design = design;
    this.joints = joints;
    this.deck = deck;
    this.whole = whole;
  }

  /** One that counts loads on the displaced frame as the job asks. */
  public Assessor inOrder(SecondOrder choice) {
    return new Assessor(rules, rails, places, choice, geometry, design, joints, deck, whole);
  }

  /** One that judges the sizes of the structure against their limits, too, if they are known. */
  public Assessor withGeometry(Optional<List<GeometryFinding>> sizes) {
    return new Assessor(rules, rails, places, secondOrder, sizes, design, joints, deck, whole);
  }

  /** One that hands on what was found of decks and treads, too. */
  public Assessor withDeck(DeckJudgement found) {
    return new Assessor(
        rules, rails, places, secondOrder, geometry, design, joints, Optional.of(found), whole);
  }

  /** One that judges members by a member code, too, if there is one. */
  public Assessor byCode(Optional<MemberDesign> memberDesign) {
    return new Assessor(
        rules, rails, places, secondOrder, geometry, memberDesign, joints, deck, whole);
  }

  /** One that judges joints by a code, too, if the job describes some. */
  public Assessor withJoints(Optional<JointDesign> jointDesign) {
    return new Assessor(
        rules, rails, places, secondOrder, geometry, design, jointDesign, deck, whole);
  }

  /** One that tells how the structure stands as a whole, too, if that was looked at. */
  public Assessor withStanding(Optional<WholeStructure> found) {
    return new Assessor(rules, rails, places, secondOrder, geometry, design, joints, deck, found);
  }

  private static Collection<MemberForces> states(
      LimitState limitState,
      FrameAnalysis analysis,
      Actions actions,
      Findings linear,
      Behaviour behaviour) {
    return new SolvedInstances(analysis, limitState, actions.combinations(), linear, behaviour)
        .states();
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
    Findings linear = search.run();
    Behaviour behaviour = new BehaviourAnalysis(analysis, rules, secondOrder).run(actions, linear);
    Findings findings = new StateFindings(analysis.frame(), behaviour, factors).of(linear);
    List<Verdict> verdicts = new ArrayList<>();
    Collection<MemberForces> states =
        design.isPresent() || joints.isPresent()
            ? states(LimitState.STRENGTH, analysis, actions, linear, behaviour)
            : List.of();
    Collection<MemberForces> inUse =
        joints.filter(JointDesign::isHeldInUse).isPresent()
            ? states(LimitState.SERVICEABILITY, analysis, actions, linear, behaviour)
            : List.of();
    Collection<MemberForces> onFeet =
        joints.filter(how -> !how.feet().isEmpty()).isPresent()
            ? SolvedInstances.ofFeet(analysis, actions.combinations(), linear, behaviour).states()
            : List.of();
    Optional<MemberJudgement> members = design.map(how -> judgement(how, analysis, states));
    Optional<JointJudgement> jointed =
        joints.map(how -> new JointJudge(how).judge(analysis, states, inUse, onFeet));
    Set<String> byCode = new HashSet<>();
    members.ifPresent(
        found -> found.uses().forEach(use -> byCode.add(use.member().member().name())));
    verdicts.addAll(new StrengthVerdicts(factors).of(findings, byCode));
    members.ifPresent(found -> verdicts.addAll(MemberVerdicts.of(found)));
    jointed.ifPresent(found -> verdicts.addAll(JointVerdicts.of(found)));
    verdicts.addAll(new DeflectionVerdicts(rules, rails, analysis.frame()).of(findings));
    verdicts.addAll(new SupportVerdicts().of(findings, combinations));
    deck.ifPresent(found -> verdicts.addAll(DeckVerdicts.of(found.findings())));
    geometry.ifPresent(sizes -> verdicts.addAll(GeometryVerdicts.of(sizes)));
    verdicts.addAll(new StabilityVerdicts(behaviour).verdicts());
    verdicts.addAll(new VibrationVerdicts(rules).of(behaviour.vibration()));
    whole.ifPresent(w -> verdicts.addAll(new StandingVerdicts(w.standing()).verdicts()));
    whole
        .flatMap(WholeStructure::robustness)
        .ifPresent(r -> verdicts.addAll(RobustnessVerdicts.of(r)));
    verdicts.addAll(
        NotCovered.verdicts(
            findings,
            geometry.isPresent(),
            members.isPresent(),
            jointed,
            deck.map(DeckJudgement::unknown).orElse(List.of("any deck or stair")),
            whole.isPresent()));
    verdicts.addAll(new FormatVerdicts(combinations).of(rules, design, joints, behaviour));
    return new Assessment(
        analysis.frame(),
        actions,
        findings,
        search.forces(),
        behaviour,
        members,
        jointed,
        whole,
        search.proof(),
        verdicts);
  }

  private static MemberJudgement judgement(
      MemberDesign how, FrameAnalysis analysis, Collection<MemberForces> states) {
    FrameBucklingLengths lengths =
        how.needsFrameBuckling() ? CriticalLengths.of(analysis, states) : FrameBucklingLengths.NONE;
    return new MemberJudge(how, lengths).judge(analysis.frame(), states);
  }
}
