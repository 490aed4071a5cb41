package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Frame;
import spanledger.frame.Support;
import spanledger.jointdesign.JointJudgement.OpenCheck;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.member.Working;

/** Judges the described feet of a frame and gathers what their anchors must carry. */
final class FootJudge {

  private final JointDesign design;
  private final WorstChecks worst;
  private final List<AnchorDemand> anchors = new ArrayList<>();

  FootJudge(JointDesign design, WorstChecks worst) {
    this.design = design;
    this.worst = worst;
  }

  /** Judges every foot; whether checks cannot be made goes to the worst checks, too. */
  List<AnchorDemand> judge(Frame frame, Iterable<? extends MemberForces> states) {
    for (Support support : frame.supports()) {
      Optional<FootPlacing> placing = design.foot(support);
      if (placing.isPresent()) {
        FootPlace place = new FootPlace(support);
        try {
          FootCalculation calculation =
              FootCalculation.of(
                  design.codeOfParts(), place, placing.get(), StandingOn.of(frame, support));
          judge(frame, place, calculation, states);
        } catch (IllegalArgumentException cannotBe) {
          worst.open(new OpenCheck(place.name(), String.valueOf(cannotBe.getMessage())));
        }
      }
    }
    return anchors;
  }

  private void judge(
      Frame frame,
      FootPlace place,
      FootCalculation calculation,
      Iterable<? extends MemberForces> states) {
    AnchorDemand[] most = new AnchorDemand[2];
    worst.over(
        place,
        place.station(frame),
        states,
        state -> FootCalculation.forces(state.reaction(place.node())),
        calculation::run,
        run -> {
          for (Working anchor : run.faces().get(0).demands()) {
            AnchorDemand demand =
                new AnchorDemand(
                    place.node().name(),
                    anchor.label(),
                    run.instance(),
                    anchor.value("F_t"),
                    anchor.value("F_v"));
            if (most[0] == null || demand.tension() > most[0].tension()) {
              most[0] = demand;
            }
            if (most[1] == null || demand.shear() > most[1].shear()) {
              most[1] = demand;
            }
          }
        });
    for (AnchorDemand demand : most) {
      if (demand != null) {
        anchors.add(demand);
      }
    }
  }
}
