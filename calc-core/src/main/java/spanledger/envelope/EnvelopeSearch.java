package spanledger.envelope;

import java.util.List;
import spanledger.action.Actions;
import spanledger.action.Rail;
import spanledger.analysis.FrameAnalysis;
import spanledger.frame.Frame;
import spanledger.resistance.ResistanceFactors;

/** Finds what governs every effect that the checks use. */
public final class EnvelopeSearch {

  private final Responses responses;
  private final Actions actions;
  private final List<Rail> rails;
  private final ResistanceFactors factors;

  /**
   * Solves all fixed cases and the unit loads that moving loads need.
   *
   * @param places on how many places of each segment a moving load is looked at before the worst is
   *     narrowed down, at least; at least 1
   * @throws spanledger.analysis.MechanismException if a case loads an idle turn
   */
  public EnvelopeSearch(
      FrameAnalysis analysis,
      Actions actions,
      List<Rail> rails,
      ResistanceFactors factors,
      int places) {
    if (places < 1) {
      throw new IllegalArgumentException(
          "A moving load must be tried at one place per segment at least, found " + places + ".");
    }
    this.responses = new Responses(analysis, actions, places);
    this.actions = actions;
    this.rails = List.copyOf(rails);
    this.factors = factors;
  }

  /** How well the solved cases meet equilibrium. */
  public Proof proof() {
    return responses.proof();
  }

  /** The internal forces of all members under the strength combinations, in the frame's order. */
  public List<ForceEnvelope> forces() {
    return new ForceEnvelopeSearch(responses, actions.combinations()).run();
  }

  /** Runs all searches for what checks use. */
  public Findings run() {
    Frame frame = responses.frame();
    PostBases bases = new PostBases(frame, rails);
    return new Findings(
        new StrengthSearch(responses, bases, factors).run(actions.combinations()),
        new DeflectionSearch(responses, rails).run(actions.combinations()),
        new ReactionSearch(responses).run(actions.combinations()));
  }
}
