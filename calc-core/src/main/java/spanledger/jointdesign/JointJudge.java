package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spanledger.envelope.Governing;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.joint.BracketJoint;
import spanledger.jointdesign.JointJudgement.OpenCheck;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;

/** Judges the described joints of a frame under the states that govern its members. */
public final class JointJudge {

  private static final int FORCES = 6;

  private final JointDesign design;

  public JointJudge(JointDesign design) {
    this.design = design;
  }

  /**
   * Judges every member end.
   *
   * @param states the states that may govern a joint
   */
  public JointJudgement judge(Frame frame, Collection<? extends MemberForces> states) {
    List<JointFinding> findings = new ArrayList<>();
    Set<OpenCheck> open = new LinkedHashSet<>();
    List<JointEnd> undescribed = new ArrayList<>();
    for (Member member : frame.members()) {
      for (boolean start : new boolean[] {true, false}) {
        JointEnd end = new JointEnd(member, start);
        design
            .joint(member, start)
            .ifPresentOrElse(
                joint -> findings.addAll(worst(frame, end, joint, states, open)),
                () -> {
                  if (isOpen(frame, end)) {
                    undescribed.add(end);
                  }
                });
      }
    }
    return new JointJudgement(design.code().title(), findings, List.copyOf(open), undescribed);
  }

  private Collection<JointFinding> worst(
      Frame frame,
      JointEnd end,
      BracketJoint joint,
      Collection<? extends MemberForces> states,
      Set<OpenCheck> open) {
    JointCalculation calculation = new JointCalculation(design.code(), end, joint);
    Station station = end.station(frame);
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    double[] forces = new double[FORCES];
    for (MemberForces state : states) {
      state.at(station, forces);
      try {
        JointRun run = calculation.run(state.instance(), forces);
        for (FaceRun face : run.faces()) {
          face.open().forEach(what -> open.add(new OpenCheck(end.name(), what)));
          face.checks().forEach(check -> keepWorse(run, face, check, station, worst));
        }
      } catch (IllegalArgumentException e) {
        open.add(
            new OpenCheck(end.name(), "under " + state.instance().words() + ": " + e.getMessage()));
        break;
      }
    }
    return worst.values();
  }

  private static void keepWorse(
      JointRun run,
      FaceRun face,
      JointCheck check,
      Station station,
      Map<String, JointFinding> worst) {
    for (JointUse use : check.uses()) {
      double value = check.working().value(use.symbol());
      String key = face.face().name() + "|" + use.words() + "|" + use.clause();
      JointFinding known = worst.get(key);
      if (known == null || !(value <= known.governing().value())) {
        worst.put(
            key,
            new JointFinding(run, face, check, use, new Governing(run.instance(), station, value)));
      }
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
