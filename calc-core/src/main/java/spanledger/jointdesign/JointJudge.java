package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.joint.BracketJoint;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.jointdesign.JointJudgement.Kept;
import spanledger.jointdesign.JointJudgement.OpenCheck;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.joint.JointCode;

/** Judges the described joints of a frame under the states that govern its members. */
public final class JointJudge {

  /** What judges joints where no code does. */
  private static final String TESTS_ALONE = "Tests of joints";

  private final JointDesign design;

  public JointJudge(JointDesign design) {
    this.design = design;
  }

  /**
   * Judges every member end and every foot.
   *
   * @param states the states that may govern the strength of a joint
   * @param inUse states under loads of use, for the slip of faces that friction holds
   * @param onFeet the states that may govern feet
   */
  public JointJudgement judge(
      FrameAnalysis analysis,
      Iterable<? extends MemberForces> states,
      Iterable<? extends MemberForces> inUse,
      Iterable<? extends MemberForces> onFeet) {
    Frame frame = analysis.frame();
    WorstChecks worst = new WorstChecks();
    List<MemberForces> strength = listed(states);
    List<MemberForces> use = listed(inUse);
    List<Kept> kept = new ArrayList<>();
    Map<String, SharedBrackets> shared = new HashMap<>();
    Map<String, JointStiffness> stiffness = new HashMap<>();
    List<JointEnd> undescribed = new ArrayList<>();
    for (Member member : frame.members()) {
      for (boolean start : new boolean[] {true, false}) {
        JointEnd end = new JointEnd(member, start);
        Optional<BracketJoint> joint = design.joint(member, start);
        if (joint.isPresent()) {
          Station at = end.station(frame);
          SharedBrackets brackets =
              shared.computeIfAbsent(joint.get().name(), n -> new SharedBrackets(joint.get()));
          List<WorstChecks> bounds = new ArrayList<>();
          for (SharingBound bound : SharingBound.of(joint.get())) {
            WorstChecks own = new WorstChecks();
            JointCalculation calculation =
                new JointCalculation(design.codeOfParts(), end, joint.get(), brackets, bound);
            new JointSweep(end, at, strength, calculation::run).into(own, calculation);
            if (JointCalculation.isHeldInUse(joint.get())) {
              new JointSweep(end, at, use, calculation::runInUse).into(own, calculation);
            }
            bounds.add(own);
          }
          worst.addWorst(bounds);
          review(end, stiffness, worst, kept);
        } else if (isOpen(frame, end)) {
          undescribed.add(end);
        }
      }
    }
    for (TestedEnd tested : design.tested()) {
      judge(tested, frame, states, worst);
    }
    List<AnchorDemand> anchors = new FootJudge(design, worst).judge(frame, onFeet);
    return new JointJudgement(
        design.code().map(JointCode::title).orElse(TESTS_ALONE),
        design.code().map(JointCode::figures),
        worst.findings(),
        worst.open(),
        kept,
        undescribed,
        anchors,
        design.contacts().advice(design.types()),
        design.tested());
  }

  private static void judge(
      TestedEnd tested, Frame frame, Iterable<? extends MemberForces> states, WorstChecks worst) {
    TestedCalculation calculation = new TestedCalculation(tested);
    JointEnd end = tested.end();
    calculation
        .open()
        .ifPresentOrElse(
            what -> worst.open(new OpenCheck(end.name(), what)),
            () -> worst.over(end, end.station(frame), states, calculation::run));
  }

  private static List<MemberForces> listed(Iterable<? extends MemberForces> states) {
    List<MemberForces> listed = new ArrayList<>();
    states.forEach(listed::add);
    return listed;
  }

  /** Parts that cannot be worked out are told by the checks themselves. */
  private void review(
      JointEnd end, Map<String, JointStiffness> known, WorstChecks worst, List<Kept> kept) {
    JointPlacing placing = design.placing(end.member(), end.start()).orElseThrow();
    BracketJoint joint = placing.joint();
    try {
      JointStiffness parts = known.computeIfAbsent(joint.name(), n -> DescribedStiffness.of(joint));
      for (String what : StiffnessReview.of(end, parts)) {
        placing
            .kept()
            .ifPresentOrElse(
                why -> kept.add(new Kept(end, what, why)),
                () -> worst.open(new OpenCheck(end.name(), what + StiffnessReview.REMEDY)));
      }
    } catch (IllegalArgumentException cannotBe) {
      worst.open(new OpenCheck(end.name(), "stiffness of its parts: " + cannotBe.getMessage()));
    }
  }

  /**
   * Whether a member end is joined to something by a joint that nobody described.
   *
   * <p>Where a member goes through a node, or one end is left there while all others are described,
   * that member is what the others are joined to.
   */
  private boolean isOpen(Frame frame, JointEnd end) {
    Node node = end.node();
    boolean through = false;
    int bare = 0;
    int others = 0;
    for (Member member : frame.members()) {
      if (!member.nodes().contains(node)) {
        continue;
      }
      others++;
      boolean ends = false;
      for (boolean start : new boolean[] {true, false}) {
        if (new JointEnd(member, start).node().equals(node)) {
          ends = true;
          bare += design.joint(member, start).isEmpty() ? 1 : 0;
        }
      }
      through |= !ends;
    }
    if (others > 1) {
      return through || bare > 1;
    }
    return frame.supports().stream()
        .anyMatch(s -> s.node().equals(node) && design.foot(s).isEmpty());
  }
}
