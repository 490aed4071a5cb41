package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import spanledger.envelope.Governing;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.PreparedMember;

/**
 * Judges the members of a frame by a member code, at the cuts of the states that govern them.
 *
 * <p>The moment diagram is taken as uniform with the moments at the cut, which is on the safe side
 * for every check that looks at its shape.
 */
public final class MemberJudge {

  private static final int FORCES = 6;

  private final MemberDesign design;
  private final FrameBucklingLengths analysed;

  /**
   * @param design the code and what it has to know of the members
   * @param analysed lengths from the buckling of the frame
   */
  public MemberJudge(MemberDesign design, FrameBucklingLengths analysed) {
    this.design = design;
    this.analysed = analysed;
  }

  /**
   * Judges every member.
   *
   * @param states the states that may govern a member
   */
  public MemberJudgement judge(Frame frame, Collection<? extends MemberForces> states) {
    List<MemberUse> uses = new ArrayList<>();
    List<MemberReadiness.Lacking> lacking = new ArrayList<>();
    for (Member member : frame.members()) {
      MemberReadiness readiness = design.prepare(member, analysed);
      if (readiness instanceof MemberReadiness.Ready ready) {
        uses.addAll(worst(ready, new MemberPlaces(frame, member), states));
      } else {
        lacking.add((MemberReadiness.Lacking) readiness);
      }
    }
    return new MemberJudgement(design.code().title(), uses, lacking);
  }

  private static List<MemberUse> worst(
      MemberReadiness.Ready ready, MemberPlaces places, Collection<? extends MemberForces> states) {
    PreparedMember prepared = ready.prepared();
    MemberEvaluator evaluator = prepared.evaluator();
    Governing[] worst = new Governing[prepared.uses().size()];
    double[] forces = new double[FORCES];
    for (MemberForces state : states) {
      List<Station> cuts = new ArrayList<>(state.cuts(ready.member()));
      cuts.addAll(places.weakened(prepared.member()));
      for (Station cut : cuts) {
        state.at(cut, forces);
        double[] effects = Effect.uniform(forces);
        effects[Effect.PLACE.ordinal()] = places.of(cut);
        evaluator.evaluate(effects);
        for (int i = 0; i < worst.length; i++) {
          double use = evaluator.use(i);
          if (worst[i] == null || !(use <= worst[i].value())) {
            worst[i] = new Governing(state.instance(), cut, use);
          }
        }
      }
    }
    List<MemberUse> uses = new ArrayList<>();
    for (int i = 0; i < worst.length; i++) {
      if (worst[i] != null) {
        uses.add(new MemberUse(ready, prepared.uses().get(i), i, worst[i]));
      }
    }
    return uses;
  }
}
