package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Support;
import spanledger.joint.JointType;
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
  List<AnchorDemand> judge(FrameAnalysis analysis, Iterable<? extends MemberForces> states) {
    for (Support support : analysis.frame().supports()) {
      Optional<JointType> foot = design.foot(support);
      if (foot.isPresent()) {
        List<JointEnd> ends = ends(analysis.frame(), support);
        if (ends.size() == 1) {
          judge(analysis, support, ends.get(0), foot.get(), states);
        } else {
          worst.open(
              new OpenCheck(
                  support.node().name(),
                  ends.size()
                      + " member ends, or a member that goes through, meet at this foot; let one"
                      + " post stand on it, or check it by hand"));
        }
      }
    }
    return anchors;
  }

  private static List<JointEnd> ends(Frame frame, Support support) {
    List<JointEnd> ends = new ArrayList<>();
    for (Member member : frame.members()) {
      if (member.nodes().contains(support.node())) {
        JointEnd start = new JointEnd(member, true);
        JointEnd end = new JointEnd(member, false);
        if (start.node().equals(support.node())) {
          ends.add(start);
        } else if (end.node().equals(support.node())) {
          ends.add(end);
        } else {
          ends.add(start);
          ends.add(end);
        }
      }
    }
    return ends;
  }

  private void judge(
      FrameAnalysis analysis,
      Support support,
      JointEnd end,
      JointType foot,
      Iterable<? extends MemberForces> states) {
    SegmentModel model = analysis.model(end.station(analysis.frame()).segment());
    FootCalculation calculation =
        new FootCalculation(design.code(), end, model.axisX(), model.axisY(), model.axisZ(), foot);
    AnchorDemand[] most = new AnchorDemand[2];
    worst.over(
        end,
        end.station(analysis.frame()),
        states,
        (instance, forces) -> {
          JointRun run = calculation.run(instance, forces);
          for (Working anchor : run.faces().get(0).demands()) {
            AnchorDemand demand =
                new AnchorDemand(
                    support.node().name(),
                    anchor.label(),
                    instance,
                    anchor.value("F_t"),
                    anchor.value("F_v"));
            if (most[0] == null || demand.tension() > most[0].tension()) {
              most[0] = demand;
            }
            if (most[1] == null || demand.shear() > most[1].shear()) {
              most[1] = demand;
            }
          }
          return run;
        });
    for (AnchorDemand demand : most) {
      if (demand != null) {
        anchors.add(demand);
      }
    }
  }
}
