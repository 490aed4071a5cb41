package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    Map<String, AnchorDemand> most = new LinkedHashMap<>();
    worst.over(
        place,
        place.station(frame),
        states,
        state -> FootCalculation.forces(state.reaction(place.node())),
        calculation::run,
        run -> {
          FaceRun face = run.faces().get(0);
          for (int i = 0; i < face.demands().size(); i++) {
            for (boolean tension : new boolean[] {true, false}) {
              most.merge(i + "|" + tension, demand(place, run, i, tension), FootJudge::greater);
            }
          }
        });
    // The sort keeps the order of anchors with the same force.
    most.values().stream()
        .sorted(
            Comparator.comparing(AnchorDemand::ofTension)
                .reversed()
                .thenComparing(Comparator.comparingDouble(FootJudge::size).reversed()))
        .forEach(anchors::add);
  }

  private static AnchorDemand demand(FootPlace place, JointRun run, int anchor, boolean tension) {
    Working shear = run.faces().get(0).shears().get(anchor);
    Working demand = run.faces().get(0).demands().get(anchor);
    return new AnchorDemand(
        place.node().name(),
        "anchor " + (anchor + 1),
        shear.value("y"),
        shear.value("z"),
        tension,
        run.instance(),
        demand.value("F_t"),
        demand.value("F_v"),
        shear.value("F_y"),
        shear.value("F_z"));
  }

  private static double size(AnchorDemand demand) {
    return demand.ofTension() ? demand.tension() : demand.shear();
  }

  private static AnchorDemand greater(AnchorDemand known, AnchorDemand other) {
    return size(other) > size(known) ? other : known;
  }
}
